### La page d’une classe ou d’une gamme de tailles, et les pages de la coupe pour toutes.

## Sommaire

class-skip-to-guides = Aller aux guides
class-contents = Sur cette page
class-guides = Les guides
class-missing = Pas faits
class-chart = Le tableau des tailles
class-order = Une commande pour tous
class-cutting = Coupe pour tous

## Les guides

class-guides-are = Le numéro vient en tête sur l’étiquette de chaque pièce coupée pour tous.
class-number = N°
class-for = Pour
class-cloth = Tissu
class-time = Temps
# Ce qui est invisible est lu à haute voix derrière. $whose : un nom, un numéro ou une taille.
class-guide = Guide
    .unseen = pour { $whose }
class-pdf = PDF
    .unseen = pour { $whose }
# $number : du fichier, quand un seul ne peut tenir tous les guides.
class-print-file = Tous les guides en un fichier, pour imprimer recto verso ({ $number })
class-print-guides-alone = Ces fichiers ne contiennent que les guides. La coupe pour tous s’imprime à part : les liens sont sous « { class-cutting } ».
class-missing-are = Aucun guide n’a pu être fait pour ceux-ci. Le message affiché nomme la ligne à corriger.

# À qui est la page, là où son fichier ne le dit pas.
class-every-size = toutes les tailles
class-orders = Commandes
class-of = une classe de { $number }
# À la place d’un nom qui n’a pas pu être lu.
class-line = ligne { $line } du fichier

## Le tableau des tailles

class-chart-are = { $rounding ->
    [none] Les cotes de coupe ne sont pas arrondies et comprennent toutes les marges.
   *[other] Les cotes de coupe sont arrondies au multiple supérieur de { $rounding } et comprennent toutes les marges.
 }
class-chart-sizes = Tableau des tailles, { $sizes }
class-size = Taille

## La commande

class-apart = Le même acheté par chacun seul.
class-material = Matériau
class-together = Ensemble
class-alone = Chacun seul
class-cost = Ensemble : { $cost }, soit { $head } par tête en partageant également.
class-cost-alone = Chacun seul : { $cost }, soit { $head } par tête.
class-saved = Ensemble, on épargne { $saved }, soit { $share } %.
# $materials (une liste)
class-unpriced = Sans prix, et hors de ces sommes : { $materials }.
# $reels (nombre) : combien une machine en prend à la fois.
class-reels = { $reels ->
    [one] Les bobines sont comptées pour tout le fil ensemble. Des machines qui cousent en même temps demandent une bobine chacune.
   *[other] Les bobines sont comptées pour tout le fil ensemble. Des postes où l’on coud en même temps demandent jusqu’à { $reels } bobines chacun.
 }
class-shopping-file = La liste pour le magasin
class-materials-file = Les matériaux en tableau
# Dans le tableau des matériaux pour programmes.
class-garments = vêtements qui en prennent
class-to-order = à commander
class-order-cost = coût de la commande
class-mean = { $garments ->
    [one] moyenne de { $garments } vêtement
   *[other] moyenne de { $garments } vêtements
 }

## Coupe pour tous

class-cutting-are = Toutes les pièces sont sur un seul rouleau de chaque tissu, chaque étiquette avec le numéro de la personne en tête.
class-cutting-file = Le plan de coupe pour tous, avec ses étapes
class-cutting-print = Le plan de coupe à imprimer
# $part, $parts (nombres) : de ce qui se coupe l’un après l’autre.
class-cutting-file-part = Le plan de coupe pour tous, partie { $part }, avec ses étapes
class-cutting-print-part = Le plan de coupe à imprimer, partie { $part }
# En tête des pages de coupe pour tous, là où un guide dit pour qui il est.
class-cutting-for = coupe pour { $whose }
class-cutting-for-part = coupe pour { $whose }, partie { $part } sur { $parts }
class-cutting-about = Toutes les pièces dans un seul rouleau de chaque tissu. L’étiquette de chaque pièce commence par le numéro de la personne à qui elle est destinée : { $example } est l’exemplaire a de la pièce { $piece } pour le numéro { $number }. La page des guides dit à qui sont les numéros. À mesure de la coupe, faire une pile pour les pièces de chaque numéro.
# Là où la coupe se fait en parties.
class-cutting-parts-are = Couper les parties dans leur ordre : chacune continue sur le rouleau là où la précédente s’est arrêtée. Un tissu lavé en entier n’est pas lavé de nouveau.
# De ceux qui ont des pièces dans une partie. $numbers (une liste), $count (nombre) : combien.
class-cutting-piles-whole = { $count ->
    [one] Avec cette partie, la pile du numéro { $numbers } est complète.
   *[other] Avec cette partie, les piles des numéros { $numbers } sont complètes.
 }
class-cutting-piles-go-on = { $count ->
    [one] La pile du numéro { $numbers } continue dans une partie suivante : la laisser là où l’on peut encore y poser des pièces.
   *[other] Les piles des numéros { $numbers } continuent dans une partie suivante : les laisser là où l’on peut encore y poser des pièces.
 }
# $example : une étiquette avec son étoile. Prévue pour qui est parti depuis, ou a été mesuré de nouveau.
class-cutting-spare = Une étoile sur une étiquette, comme { $example }, marque une pièce dont plus personne n’a besoin : quelqu’un est parti, ou a été mesuré de nouveau. Si son coupon n’est pas encore coupé, la couper avec les autres et la mettre de côté comme chute.
class-cutting-parts = Parties de la coupe
class-cutting-part = Partie { $part }
# $joins (nombre)
class-joins = { $joins ->
    [one] { $joins } raccord sur tous les exemplaires
   *[other] { $joins } raccords sur tous les exemplaires
 }
class-whole = entière

## Pied

class-end = Les règles locales et l’avis des professionnels agréés passent d’abord. Page de la classe { $key }.
