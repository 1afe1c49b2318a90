### Ce qu’il faut acheter : quantités, descriptions, et où va chaque matériau.

## Quantités

buy-volume = { $amount } ml
# Une poudre, à peser.
buy-mass = { $amount } g
# $length : du fil d’une bobine.
buy-reels = { $reels ->
    [one] { $reels } bobine de { $length }
   *[other] { $reels } bobines de { $length }
 }
# Ce qui se pose à l’unité : fermetures, œillets, boutons.
buy-pieces = { $pieces ->
    [one] { $pieces } pièce
   *[other] { $pieces } pièces
 }

## Descriptions : ce qui se dit d’un matériau derrière son nom

buy-long = { $length } de long
buy-wide = { $width } de large
# Of thread whose colour the spec does not say.
buy-colour-as = de la couleur du tissu ({ $cloth })
buy-stretches = s’étire de { $stretch } ou plus
# $class : ce que prennent les fibres ; any là où aucune sorte de teinture ne convient à toutes. $fibres (une liste)
buy-dye = { $class ->
    [acid] teinture acide, pour { $fibres }
    [disperse] teinture dispersée, pour { $fibres }
    [reactive] teinture réactive, pour { $fibres }
    [direct] teinture directe, pour { $fibres }
   *[any] teinture pour { $fibres }
 }

# Une fermeture que la fiche ne nomme pas. $kind
fastener = { $kind ->
    [hook-and-bar] crochet et barrette
    [hook-and-eye] crochet et œillet
    [snap] bouton-pression
    [flat-button] bouton plat
   *[button] bouton
 }

## Où il va

# Le fil.
use-seams = toutes les coutures
# Dit derrière l’usage du fil.
use-reels-at-once = { $sewing ->
    [0] la surjeteuse prend { $reels } bobines à la fois
   *[other] la surjeteuse prend { $reels } bobines à la fois, et la machine à coudre une de plus à côté
 }
use-bobbins = { $bobbins ->
    [one] remplir d’abord { $bobbins } canette
   *[other] remplir d’abord { $bobbins } canettes
 }
use-trim = galon { PIECE($piece, case: "of") }
use-binding = bordure { PIECE($piece, case: "of") }
use-ribbon = ruban dans { PIECE($piece) }
use-zip = l’ouverture
use-fastening = la taille
use-opening = l’ouverture sous la taille
use-elastic-end = le bout de l’élastique
use-interfacing = entoilage { PIECE($piece, case: "of") }
use-petersham = la taille
use-sewn-elastic = le bord qu’il resserre
use-hang-loops = brides de suspension
use-bustle-tape = rubans de relevage
use-bustle-rings = anneaux de relevage
use-bustle-cord = cordons de relevage
use-channel = coulisse sur { PIECE($piece) }
use-hoop = cerceau dans { PIECE($piece) }
use-shirring = fronces élastiques { PIECE($piece, case: "of") }
use-elastic = élastique dans { PIECE($piece) }
use-cord = cordon dans { PIECE($piece) }
use-piping = passepoil { PIECE($piece, case: "of") }
use-holes = trous du cordon dans { PIECE($piece) }
use-dye = teindre { PIECE($piece) }
use-dye-trim = teindre le galon ({ $trim })
use-starch = amidonner { PIECE($piece) }
use-agent = traiter contre le feu { PIECE($piece) }
# Une façon de travailler que l’auteur décrit lui-même, par son nom.
use-own = { $name }

## Le tableau des matériaux pour les programmes

bom-width = largeur { $amount }
bom-length = longueur { $amount }
bom-weight = poids { $amount }
bom-stretch = extension { $amount }
bom-reel = bobine { $amount }
# Le titre anglais d’un fil de coton.
bom-count = Ne { $amount }
# Les titres des colonnes.
bom-name = nom
bom-code = référence
bom-consumption = consommation par vêtement
bom-supplier = fournisseur
bom-cost = coût
bom-specification = description
bom-colour = couleur
bom-size = taille
bom-placement = emploi
# Les fermetures sont comptées.
bom-pieces = pièces
