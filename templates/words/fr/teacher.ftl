### Les feuilles pour qui mène une classe : séances, avancement, étiquettes, fiche de mesures, pièces d’essai.

teacher-skip = Aller aux séances
teacher-for = feuilles pour qui mène { $whose }
teacher-keep = Ces feuilles portent des noms et des notes. Les garder pour soi ; chaque personne a son propre guide.

## Les séances

teacher-lessons = Les séances
# $length : d’une séance.
teacher-lessons-are = Séances de { $length }, au rythme de l’atelier. Chaque personne s’arrête au dernier endroit où l’ouvrage peut être rangé.
teacher-lesson = Séance { $number }
teacher-pile = La pile de pièces coupées
teacher-letter = Lettre
teacher-work = Travail
teacher-pupil = Personne
teacher-stops = Où chaque personne s’arrête : après cette lettre.
# $machines (une liste)
teacher-machines = À tenir prêt, pour que personne n’attende : { $machines }.
# Dite seulement dans le message ci-dessus. $count (nombre)
teacher-machine = { $set-up ->
    [straight] { $count } x machine à coudre réglée au point droit
    [zigzag] { $count } x machine à coudre réglée au point zigzag
    [overlocker] { $count } x surjeteuse
    [attachment] { $count } x machine à coudre avec le plisseur
   *[iron] { $count } x fer avec sa planche
 }
# $first, $last : lettres. $time : de toute la séance.
teacher-absent = Qui manque cette séance rattrape de { $first } à { $last } avant la suivante : environ { $time }.

## Les feuilles

teacher-progress = Avancement
teacher-progress-are = Cocher une lettre quand son travail est fait et que chaque vérification est bonne. Un tiret : ce guide n’a pas ce travail.
teacher-marks = Notes
teacher-marks-are = Les mêmes lettres, pour ce qui se voit en examinant l’ouvrage.
teacher-labels = Étiquettes pour les piles
teacher-labels-are = Découper les étiquettes et en poser une sur chaque pile. Chacune dit ce qui doit se trouver dessous.
teacher-form = Fiche de mesures
teacher-form-are = Mesurer par-dessus ce qui est porté sous le vêtement. Le mètre ruban est à plat, sans tirer. Prendre chaque mesure deux fois.
teacher-practice = Pièces d’essai
# $ways, $strips (nombres)
teacher-practice-are = Chacune des { $ways } façons de travailler est essayée avant d’être cousue sur le vêtement : { $strips } bandes de { $length } x { $depth } par personne et par façon. Acheter pour cela { $bought } de plus du tissu ({ $cloth }).
