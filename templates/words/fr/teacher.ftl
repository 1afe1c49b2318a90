### Les feuilles pour qui mène une classe : séances, avancement, étiquettes, fiche de mesures, pièces d’essai.

teacher-skip = Aller aux séances
teacher-for = feuilles pour qui mène { $whose }
teacher-keep = Ces feuilles portent des noms et des notes. Les garder pour soi ; chaque personne a son propre guide.

## Les séances

teacher-lessons = Les séances
# $length : d’une séance.
teacher-lessons-are = Séances de { $length }, au rythme de l’atelier. Chaque personne s’arrête au dernier endroit où l’ouvrage peut être rangé.
# $lessons (nombre) : avec les tours à ce que la salle possède.
teacher-lessons-in-turns = Chacun son tour aux machines et aux fers de la salle, le tout prend { $lessons } séances.
teacher-lessons-fewer = Là où il y a moins de machines ou de fers qu’une séance n’en demande, passer chacun son tour ; avec leur nombre dans le fichier de l’atelier (`machines`, `overlockers`, `irons`), les séances sont comptées ainsi.
teacher-lesson = Séance { $number }
teacher-pile = La pile de pièces coupées
teacher-letter = Lettre
teacher-work = Travail
teacher-pupil = Personne
teacher-each = Qui fait quoi. Qui manque cette séance fait sa propre ligne avant la suivante.
teacher-everybody = tout le monde
teacher-letters = Lettres
teacher-stands = Où en est l’ouvrage ensuite
# $first, $last : des lettres.
teacher-range = { $one ->
    [yes] { $first }
   *[no] de { $first } à { $last }
 }
# $work (une liste) : des lettres avec leurs titres.
teacher-new = Personne ne l’a encore fait, donc le montrer d’abord : { $work }.
# $machines (une liste)
teacher-machines = À tenir prêt, pour que personne n’attende : { $machines }.
# Dite seulement dans le message ci-dessus. $count (nombre)
teacher-machine = { $set-up ->
    [straight] { $count } x machine à coudre réglée au point droit
    [zigzag] { $count } x machine à coudre réglée au point zigzag
    [overlocker] { $count } x surjeteuse
    [attachment] { $count } x machine à coudre avec le plisseur
   *[iron] { $count } x fer avec sa planche
 }
# $has, $lessons (nombres) : ce que la salle possède ; les séances que celle-ci prend alors.
teacher-turns = { $place ->
    [machines] Machines à coudre dans la salle : { $has }. Y passer chacun son tour, et prévoir { $lessons } séances pour celle-ci.
    [overlockers] Surjeteuses dans la salle : { $has }. Y passer chacun son tour, et prévoir { $lessons } séances pour celle-ci.
   *[irons] Fers dans la salle : { $has }. Y passer chacun son tour, et prévoir { $lessons } séances pour celle-ci.
 }

## Les feuilles

teacher-progress = Avancement
teacher-progress-are = Cocher une lettre quand son travail est fait et que chaque vérification est bonne. Un tiret : ce guide n’a pas ce travail.
teacher-marks = Notes
teacher-marks-are = Les mêmes lettres, pour ce qui se voit en examinant l’ouvrage.
teacher-labels = Étiquettes pour les piles
teacher-labels-are = Découper les étiquettes et en poser une sur chaque pile. Chacune dit ce qui doit se trouver dessous.
teacher-form = Fiche de mesures
teacher-form-are = Mesurer par-dessus ce qui est porté sous le vêtement. Le mètre ruban est à plat, sans tirer. Prendre chaque mesure deux fois.
teacher-practice = Savoir-faire et pièces d’essai
teacher-way = Façon de travailler
# $ways, $strips (nombres)
teacher-practice-are = Chacune des { $ways } façons de travailler est essayée avant d’être cousue sur le vêtement : { $strips } bandes de { $length } x { $depth } par personne et par façon. Acheter pour cela { $bought } de plus du tissu ({ $cloth }).
# De qui n’était pas là à la coupe, ou n’y est plus.
teacher-later = Coupé plus tard
teacher-later-are = Quelqu’un est arrivé, parti ou a été mesuré de nouveau après la première coupe. Ce qui est coupé reste ; seul ce qui est nommé ici se coupe à nouveau, dans les sections prévues plus tard.
# $cloths (une liste) : ce qui se coupe plus tard de chaque tissu ; ses sections suivent celles de la première coupe.
teacher-later-buy = Avoir pour cela, outre ce qui a été acheté d’abord{ "\u00A0" }: { $cloths }.
# Dit seulement dans le message ci-dessus.
teacher-later-cloth = { $length } du tissu ({ $cloth })
teacher-later-stays = Reste comme il est coupé :
teacher-later-anew = À couper à nouveau :
teacher-later-spare = Plus nécessaire ; ôter l’étiquette :
teacher-later-sewn = À coudre à nouveau, si c’était déjà cousu :
# $mark : le numéro d’une pièce. $count (nombre)
teacher-later-piece = { $mark } { $piece }, { $count } x { $length } x { $depth }

## Billets

handout-all = Billets des séances
handout-for = billets des séances, { $whose }
handout-are = Découper les billets et remettre chacun au début de sa séance. Les lettres sont celles du guide. Un billet manqué se rattrape avant la séance suivante.
# $stands : une phrase entière.
handout-stop = S’arrêter après { $letter }. Alors : { $stands }
