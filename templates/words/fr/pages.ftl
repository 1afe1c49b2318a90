### Les mots fixes d’un guide : sa page, son PDF, son Markdown et son JSON.
### Les valeurs sont des textes finis, sauf si une note dit autre chose.

## Tête et aides de la page

page-skip-to-steps = Aller aux étapes
# À qui est le guide, là où c’est une taille et non une personne.
page-size = taille { $size }
page-aids = Aides à la lecture
# Links to the guides of the other sizes, where several are made together.
page-sizes = Tailles
page-every-size = Toutes les tailles
page-languages = Langues
page-large-print = Gros caractères
page-dark = Sombre
page-progress = Avancement
page-steps-done = Étapes faites
# $done, $steps (nombres)
page-done = { $done } sur { $steps } faites
page-next = Prochaine à faire
page-go-to-step = Aller à l’étape
# Se tient dans le champ vide pour le numéro d’une étape.
page-step-number = F3
# One sentence with its drawing at a time, for the sewing table.
page-one-step = Une étape à la fois
page-step-back = Retour
page-step-on = Étape suivante
page-all-steps = Toutes les étapes
page-larger = Agrandir le dessin
page-close = Fermer
page-go = Aller
# Pied d’une feuille de papier. $sheet, $sheets : son numéro, et combien il y en a.
page-sheet = { $sheet } sur { $sheets }

## Titres des parties

# Ce qu'une liseuse dit du fichier à qui le veut lu à voix haute ou en grand.
page-book-read = Chaque dessin est aussi décrit en mots, avec les chiffres qu’il montre. La table des matières, les titres et les tableaux guident la lecture, et rien n’y bouge, n’y clignote ni n’y sonne.
page-contents = Dans ce guide
page-garment = Le vêtement
page-measurements = Mesures
page-cautions = Attention
page-tools = Outils
page-materials = Matériaux
page-cutting = Coupe
page-proved = Ce qui a été prouvé avant la coupe
# Le même dans le sommaire.
page-proved-short = Ce qui a été prouvé
page-notes = Notes de l’auteur
page-reasons = D’où viennent les nombres

## The first pages

page-glance = En un coup d’œil
# $sittings (number)
page-plan = { $sittings ->
    [1] Le travail : la coupe et une séance
   *[other] Le travail : la coupe et { $sittings } séances
 }
page-plan-left = { $sittings ->
    [1] Le travail qui reste{ "\u00A0" }: une séance
   *[other] Le travail qui reste{ "\u00A0" }: { $sittings } séances
 }
page-begin = Avant de commencer
page-measure = Prendre ses mesures
# $whose: a size or a wearer.
page-measure-told = Sur des vêtements fins, le mètre à l’horizontale et sans serrer, une autre personne lisant. Les nombres de ce guide sont pour { $whose } : si les tiens s’en écartent de plus d’un travers de doigt, fais-le refaire.
# Over the empty lines of the form.
page-yours = à soi
page-choose-size = Choisir sa taille
page-whole = Tout le travail en un tableau
page-whole-told = Pour qui l’a déjà cousu. La lettre mène aux phrases et à leurs dessins.
page-what = quoi
page-the-number = le nombre
page-time = temps
page-on-sheet = page
page-pieces = Les pièces
page-words = Vocabulaire
page-kept = Entretien
page-hint-new = Première fois ? Aller de la première lettre à la dernière. Chaque phrase est à côté de son dessin ; la cocher quand c’est fait. Le vocabulaire et les signes des dessins sont expliqués à la fin.
page-hint-done = Déjà cousu ? Un tableau montre tout le travail : une lettre, un nombre, un temps.
page-hint-lost = Où en étais-tu ? Les lettres au bas de chaque page montrent où l’on est. G3 est la phrase 3 de G.
# $claims (number)
page-proved-line = { $claims ->
    [one] Prouvé avant la coupe, pour ces mesures : { $claims } affirmation. Elle est dans le guide à l’écran, avec ses nombres.
   *[other] Prouvé avant la coupe, pour ces mesures : { $claims } affirmations. Elles sont dans le guide à l’écran, avec leurs nombres.
 }

## Mesures

page-rounded = { $rounding ->
    [none] Les cotes de coupe ne sont pas arrondies.
   *[other] Les cotes de coupe sont arrondies au multiple supérieur de { $rounding }.
 }
# $units : celles du fichier de l’auteur, là où le guide en parle d’autres.
page-reasons-units = { $units ->
    [inches] Les raisons sont calculées en pouces.
   *[cm] Les raisons sont calculées en cm.
 }
page-numbers-units = { $units ->
    [inches] Les nombres sont calculés en pouces.
   *[cm] Les nombres sont calculés en cm.
 }
# $reasons : le titre de cette partie, comme lien.
page-reasons-told = La partie « { $reasons } » est vers la fin.
page-measurement = Mesure
page-length = Longueur
page-comes-from = D’où elle vient

## Pourquoi un nombre est ce qu’il est

# $numbers : un nombre ou une liste. Ce qui est invisible est lu à haute voix derrière.
page-why = Pourquoi { $numbers }
    .unseen = pour la pièce « { $piece } »
# $told : d’où vient le nombre, comme une somme.
page-then-rounded = { $told }, puis arrondi au-dessus
page-told-above = voir plus haut
page-told-by-name = à demander par son nom

## Mises en garde

# Les mots en tête d’une mise en garde.
page-kind = { $kind ->
    [needle] Aiguilles et épingles
    [blade] Lames
    [heat] Fer chaud
    [flame] Flamme
    [steam] Vapeur
    [aerosol] Bombe
    [dye] Teinture
    [chemical] Produits chimiques
    [trip] Ourlets longs
    [child] Enfants
   *[other] Attention
 }
page-kind-head = { page-kind }.

## Matériaux

page-materials-are = Ce qu’il faut acheter, et combien sert vraiment.
page-material = Matériau
page-buy = Acheter
# Dans le guide d’une classe, qui achète ensemble.
page-given = À prendre
page-given-are = Ce qui est remis à chaque personne, et ce qui se trouve dans sa pile.
page-cost = Coût
page-need = Besoin
page-need-amount = besoin : { $amount }
page-for = Pour
page-for-use = Pour : { $use }

## Coupe

page-cut-sizes-are = Les cotes de coupe comprennent toutes les marges : ne rien ajouter. Les cotes finies sont ce qui se voit. Sur son étiquette, une pièce a son numéro d’ici et une lettre pour chaque exemplaire : 1a, 1b. Quand un exemplaire est coupé en tronçons, 1a·2 est le deuxième tronçon de 1a.
page-letter = Lettre
page-piece-number = N°
page-piece = Pièce
page-cloth = Tissu
page-cut = Couper
page-depth = Hauteur
page-finished = Finie
page-note = Note
page-cut-size = { $length } de long, { $depth } de haut

## Étapes

page-check = Contrôle
page-tolerance = Tolérance
# $place: the letter and number of a sentence that a drawing of the same stands beside, such as C2.
page-drawn-at = Comme le dessin en { $place }.
page-remedy = Sinon
# Entre une tête et ce qui suit sur la même ligne.
page-colon = { "\u00A0" }:

## Pied

page-end = Les règles locales et l’avis des professionnels agréés passent d’abord. Guide { $key }.
