### Ce que toutes les techniques disent de même. EDGE, PIECE et les longueurs demandent leurs mots à ces messages.
### Les étapes sont à l’infinitif, les contrôles sont des constats. Le nom d’une pièce, tel que son auteur l’écrit, ne
### s’accorde jamais : il se tient derrière le mot porteur « la pièce ».

## Pièces et bords

# $label (texte) : le nom que l’auteur donne à la pièce, tel que « volant ». $letter : sa lettre au plan de coupe.
# $form : bare où aucune phrase ne l’entoure, short à la deuxième mention dans une phrase.
# $case : of pour « de la pièce 2 », to pour « à la pièce 2 ».
piece = { $form ->
    [bare] { $label }
    [short] { piece-short }
   *[full] { $numbered ->
        [yes] { piece-short } ({ $label })
       *[no] { piece-short }
    }
 }
# Dits seulement dans le message ci-dessus. Sans plan de coupe, la pièce n’a pas de numéro.
piece-short = { $case ->
    [of] de la { piece-name }
    [to] à la { piece-name }
   *[nominative] la { piece-name }
 }
piece-name = { $numbered ->
    [yes] pièce { $mark }
   *[no] pièce « { $label } »
 }
piece-alone = { PIECE($piece, form: "bare") }
# $pieces (texte) : « de la pièce 2 », ou plusieurs. $count : combien. $case comme à `piece`.
edge = { $count ->
    [one] { $case ->
        [of] du { edge-side } { $pieces }
        [to] au { edge-side } { $pieces }
       *[nominative] le { edge-side } { $pieces }
    }
   *[other] { $case ->
        [of] des { edge-side } { $pieces }
        [to] aux { edge-side } { $pieces }
       *[nominative] les { edge-side } { $pieces }
    }
 }
# Dit seulement dans le message ci-dessus.
edge-side = { $count ->
    [one] { $side ->
        [top] bord supérieur
        [bottom] bord inférieur
        [start] bord de début
       *[end] bord de fin
    }
   *[other] { $side ->
        [top] bords supérieurs
        [bottom] bords inférieurs
        [start] bords de début
       *[end] bords de fin
    }
 }
# Des épaisseurs travaillées comme un seul bord, par le nom que l’auteur leur a donné ; dans un guide en une autre langue
# que la sienne ($named est no), par leurs pièces.
stack = { $named ->
    [yes] { $form ->
        [bare] { $name }
       *[full] { $case ->
            [of] du bord réuni « { $name } »
            [to] au bord réuni « { $name } »
           *[nominative] le bord réuni « { $name } »
        }
    }
   *[no] { $form ->
        [bare] bord réuni { $pieces }
       *[full] { $case ->
            [of] du bord réuni { $pieces }
            [to] au bord réuni { $pieces }
           *[nominative] le bord réuni { $pieces }
        }
    }
 }
stack-layers-of = { $named ->
    [yes] { $form ->
        [bare] épaisseurs du bord réuni « { $name } »
       *[full] { $case ->
            [of] des épaisseurs du bord réuni « { $name } »
            [to] aux épaisseurs du bord réuni « { $name } »
           *[nominative] les épaisseurs du bord réuni « { $name } »
        }
    }
   *[no] { $form ->
        [bare] épaisseurs du bord réuni { $pieces }
       *[full] { $case ->
            [of] des épaisseurs du bord réuni { $pieces }
            [to] aux épaisseurs du bord réuni { $pieces }
           *[nominative] les épaisseurs du bord réuni { $pieces }
        }
    }
 }
side-seam = { $seam ->
    [bright] la couture de côté au fil vif
   *[plain] la couture de côté
 }
# Une couture dans une phrase de l’auteur, à la place de {seam}.
own-seam = la couture { PIECE($pieces, case: "of") }

# Des nombres qui se suivent : 5–8.
number-range = { $from }–{ $to }

## Nombres et unités

unit = { $unit ->
    [mm] { $number } mm
    [cm] { $number } cm
    [m] { $number } m
    [yd] { $number } yd
    [ml] { $number } ml
    [l] { $number } l
   *[in] { $number } po
 }
stitch-inches = point de { $number } mm ({ $per-inch } au pouce)
stitch = point de { $number } mm
share = { $number } %
money = { $amount }{ "\u00A0" }{ $currency }
# Plusieurs choses l’une derrière l’autre, comme dans un tableau, et plusieurs constats.
row = { $before }, { $after }
clauses = { $before } ; { $after }
then = { $before }, puis { $after }

# Combien de temps quelque chose prend.
duration = { $hours ->
    [0] { $minutes } min
   *[other] { $minutes ->
        [0] { $hours } h
       *[other] { $hours } h { $minutes } min
    }
 }

## Travail sur des pièces semblables

# Derrière le titre d’un travail sur plusieurs pièces : $copies.
all-of-it = { $copies ->
    [2] { $runs ->
        [yes] Faire les deux : une phrase sur les deux, puis la suivante ; là où c’est écrit, plusieurs sur l’une, puis sur l’autre.
       *[no] Faire les deux : exécuter chaque phrase à cases a et b sur l’une, puis sur l’autre, avant la phrase suivante.
    }
   *[other] { $runs ->
        [yes] Faire les { $copies } : une phrase marquée de a à { $last } sur toutes, puis la suivante ; là où c’est écrit, plusieurs sur l’une, puis sur la suivante.
       *[no] Faire les { $copies } : exécuter chaque phrase marquée de a à { $last } sur l’une après l’autre, avant la phrase suivante.
    }
 }
# Le remède d’une phrase, mot pour mot celui d’une phrase précédente de la même opération.
remedy-again = Comme au { $sentence }.
# Derrière la première de plusieurs phrases qui se font toutes sur une pièce avant la suivante.
run-of-sentences = { $copies ->
    [2] phrases { $first } à { $last } sur l’une, puis sur l’autre
   *[other] phrases { $first } à { $last } sur l’une, puis sur la suivante
 }
# Derrière une étape qui se fait à chaque raccord entre les tronçons d’une bande.
chain-joins = { $joins ->
    [one] { $joins } raccord
   *[other] { $joins } raccords
 }

## Ce qui tient les bords

pin = { $hold ->
    [clips] pincer
   *[pins] épingler
 }
pin-start = { $hold ->
    [clips] Pincer
   *[pins] Épingler
 }

## Deux bords cousus l’un à l’autre

# Dit seulement dans d’autres messages : une pièce évasée est plus étroite ou plus large au bord coupé que sur la ligne de couture.
marks-on-line = { $flared ->
    [yes] { " " }Sur la ligne de couture, cela fait { $on-line }.
   *[no] { "" }
 }
# $marked : l’un des deux bords.
mark-parts-ring = { $parts ->
    [8] Marquer les huitièmes { EDGE($marked, case: "of") } sur les deux faces, tous les { $part }, le premier repère à { side-seam }.{ marks-on-line }
   *[4] Marquer les quarts { EDGE($marked, case: "of") } sur les deux faces, tous les { $part }, le premier repère à { side-seam }.{ marks-on-line }
 }
mark-parts-flat = { $parts ->
    [8] Marquer les huitièmes { EDGE($marked, case: "of") } sur les deux faces, tous les { $part }.{ marks-on-line }
   *[4] Marquer les quarts { EDGE($marked, case: "of") } sur les deux faces, tous les { $part }.{ marks-on-line }
 }
# Dit seulement dans d’autres messages : où les deux bords se rejoignent d’abord.
match-places = { $places ->
    [bright] les coutures de côté, celles au fil vif, et les repères
    [some] les coutures de côté, celle au fil vif là où il y en a une, et les repères
    [ends] les deux bouts et les repères
   *[plain] les coutures de côté et les repères
 }
# « 12 épingles », autant qu’un bord en demande.
pins-needed = { $hold ->
    [clips] { $pins ->
        [one] { $pins } pince à tissu
       *[other] { $pins } pinces à tissu
    }
   *[pins] { $pins ->
        [one] { $pins } épingle
       *[other] { $pins } épingles
    }
 }
# $on-top : le bord qui est dessus à la machine ; c’est là que les épingles se retirent.
match-and-pin = { $copies ->
    [one] Faire coïncider { match-places } et { pin } d’abord à ces endroits, du côté { PIECE($on-top, case: "of") }. Puis { pin } tous les { $spacing } entre eux : { pins-needed } environ en tout.
   *[other] Faire coïncider { match-places } et { pin } d’abord à ces endroits, du côté { PIECE($on-top, case: "of") }. Puis { pin } tous les { $spacing } entre eux : { pins-needed } environ pour chaque bord.
 }

## Bouts qu’une couture ferme en rond

# $pieces : les étages que la couture traverse ; $tiers : s’il y en a plusieurs.
close-fold = { $tiers ->
    [yes] Plier { PIECE($pieces) } { faces-together }, haut contre haut, de sorte que les bouts se rejoignent, et les { pin } sur { $length }. { tiers-meet }
   *[no] Plier { PIECE($pieces) } { faces-together }, haut contre haut, de sorte que les deux bouts se rejoignent, et les { pin } sur { $length }.
 }
    .check = Rien n’est vrillé : la bande repose à plat.
    .remedy = Si elle est vrillée, détacher un bout et le retourner.
# Où pend un lé.
gore-place = { $place ->
    [front] devant
    [back] dos
   *[side] côté
 }
# Dit seulement dans le message suivant : un lé avec son numéro dans le rang.
close-row-gore = nº { $number } { gore-place }
# Des lés qui ont chacun leur place. $at-side : si la couture est sur le côté à toute hauteur.
close-row = Poser les { $copies } pièces { PIECE($pieces, case: "of") } côte à côte, endroit dessus, bouts étroits loin de soi, de gauche à droite : { $order }.
    .check = La dernière se coud à la première.
close-row-seam = { $at-side ->
    [yes] Écrire à la craie sur chacune son numéro à côté de son nom. La couture entre le nº { $after } et le nº { $next } est la couture de côté, à gauche de la personne qui porte le vêtement.
   *[no] Écrire à la craie sur chacune son numéro à côté de son nom. La couture entre le nº { $after } et le nº { $next } est la plus proche du côté gauche de la personne qui porte le vêtement : tout se mesure à partir d’elle.
 }
# Des lés dont les côtés qui se rencontrent sont de longueurs inégales.
close-unlike-by = le lé { $longer ->
    [front] du devant
    [back] du dos
   *[side] de côté
 }, { $by } au-delà de celui { $shorter ->
    [front] du devant
    [back] du dos
   *[side] de côté
 }
close-unlike-trim = Au bord inférieur dépassent, leurs côtés étant plus obliques : { $unlike }. Couper à ras du voisin, en mourant à { $run } du côté.
    .check = Tous les hauts sont au même niveau, et plus rien ne dépasse en bas.
close-unlike-ease = Plus un côté est oblique, plus il est long : { $unlike }. Épingler d’abord hauts et ourlets au même niveau, puis répartir l’aisance entre les deux.
    .check = Hauts et ourlets sont au même niveau, et aucun pli n’est épinglé.
# $copies lés forment un seul rond.
close-panels = { $copies ->
    [2] { $tiers ->
        [yes] Poser les deux lés { PIECE($pieces, case: "of") } { faces-together }, haut contre haut, et { pin } les deux bords de côté, sur { $length } chacun. { tiers-meet }
       *[no] Poser les deux exemplaires { PIECE($pieces, case: "of") } { faces-together }, haut contre haut, et { pin } les deux bords de côté, sur { $length } chacun.
    }
   *[other] { $tiers ->
        [yes] Poser chaque lé { PIECE($pieces, case: "of") } sur le suivant, { faces-together } et haut contre haut, et le dernier sur le premier. { pin-start } les { $copies } paires de côtés, sur { $length } chacune. { tiers-meet }
       *[no] Poser chaque exemplaire { PIECE($pieces, case: "of") } sur le suivant, { faces-together } et haut contre haut, et le dernier sur le premier. { pin-start } les { $copies } paires de côtés, sur { $length } chacune.
    }
 }
    .check = Tous les bords supérieurs sont du même côté et rien n’est vrillé.
    .remedy = Détacher celui qui est à contresens et le retourner.
# Dits seulement dans d’autres messages.
faces-together = { $faces ->
    [wrong] envers contre envers
   *[right] endroit contre endroit
 }
tiers-meet = Faire coïncider exactement les coutures entre les étages, marges vers le haut, et commencer par { pin } là.

## La machine

# En mm dans tous les ateliers, comme les machines sont graduées.
zigzag-set = Régler la machine au point zigzag, { $zigzag-wide } mm de large et { $zigzag-long } mm de long.

## L’étiquette qui met en garde contre le feu

# Les mots sont ceux de la loi, dans la langue du pays où le vêtement se porte.
fire-label-write = Écrire TENIR ÉLOIGNÉ DU FEU en deux lignes sur { $label-tape } de ruban de coton, en capitales rouges d’au moins { $letters } de haut, avec un feutre qui ne part pas au lavage. Laisser libre, d’un doigt, le bout qui sera cousu.

## Rangs de points longs que l’on tire

rows-set-machine = Régler la machine pour froncer : le point le plus long, { $long-stitch } mm environ, et la tension du fil supérieur un chiffre au-dessous de celui des coutures. Garder noté le chiffre des coutures.
# Dit seulement dans d’autres messages. $per-run : sur combien des parties marquées va une section.
rows-runs = { $in-runs ->
    [yes] { $per-run ->
        [one] Le piquer en { $runs } sections, de repère en repère. Sans point d’arrêt ; laisser pendre { $tail } de fil aux deux bouts de chaque section.
       *[other] { $parts ->
            [8] Le piquer en { $runs } sections de { $per-run } huitièmes chacune, de repère à repère. Sans point d’arrêt ; laisser pendre { $tail } de fil aux deux bouts de chaque section.
           *[4] Le piquer en { $runs } sections de { $per-run } quarts chacune, de repère à repère. Sans point d’arrêt ; laisser pendre { $tail } de fil aux deux bouts de chaque section.
        }
    }
   *[no] Le piquer d’un seul trait. Sans point d’arrêt ; laisser pendre { $tail } de fil aux deux bouts.
 }
rows-wind-tails = { $in-runs ->
    [yes] À un bout de chaque section, piquer une épingle en travers et enrouler les bouts de fil autour, en huit.
   *[no] À un bout du rang, piquer une épingle en travers et enrouler les bouts de fil autour, en huit.
 }
rows-set-back = Remettre le point à { $seam-stitch } mm et la tension du fil supérieur au chiffre noté.
# Les rangs se voient : leurs bouts de fil passent sur l’envers.
rows-tails-under = { $in-runs ->
    [yes] Ôter les épingles qui tiennent les bouts de fil. Aux deux bouts de chaque section, tirer les fils supérieurs sur l’envers, nouer chacun à son fil de canette, et couper les bouts à { $knot }.
   *[no] Ôter les épingles qui tiennent les bouts de fil. Aux deux bouts, tirer les fils supérieurs sur l’envers, nouer chacun à son fil de canette, et couper les bouts à { $knot }.
 }
## Bouts de fil, une fois que les épingles tiennent le bord

tails-off-machine = { $in-runs ->
    [yes] Ôter les épingles qui tiennent les bouts de fil. Aux deux bouts de chaque section, nouer chaque fil supérieur à son fil de canette, et couper les bouts à { $knot }.
   *[no] Ôter les épingles qui tiennent les bouts de fil. Aux deux bouts de chaque rang, nouer chaque fil supérieur à son fil de canette, et couper les bouts à { $knot }.
 }
tails-off-hand = { $in-runs ->
    [yes] Ôter les épingles qui tiennent les bouts de fil. Aux deux bouts de chaque section, nouer les fils ensemble, et couper les bouts à { $knot }.
   *[no] Ôter les épingles qui tiennent les bouts de fil. Aux deux bouts des rangs, nouer les fils ensemble, et couper les bouts à { $knot }.
 }

## Tissu coupé en forme

# $fall : du bord supérieur du rond, comme il pend, à son bord inférieur brut.
ring-drop-worn = Suspendre le vêtement par la taille toute une nuit : un tissu coupé en forme s’allonge. Mesurer { $fall } sous la couture supérieure { PIECE($ring-piece, case: "of") }, tout autour, et couper ce qui pend plus bas.
    .check = { EDGE($ring-edge, at: "start") } tombe d’aplomb.
# Il n’est encore cousu à rien.
ring-drop-alone = Suspendre { PIECE($ring-piece) } par son bord supérieur toute une nuit : un tissu coupé en forme s’allonge. Mesurer { $fall } sous ce bord, tout autour, et couper ce qui pend plus bas.
    .check = { ring-drop-worn.check }
## Le fer

# $own (texte) : le mot de l’auteur pour une fibre qui n’en a pas ici.
fibre = { $fibre ->
    [cotton] coton
    [linen] lin
    [wool] laine
    [silk] soie
    [polyester] polyester
    [viscose] viscose
    [nylon] nylon
    [acetate] acétate
    [own] { $own }
   *[unknown] fibre inconnue
 }
# Dit seulement dans les messages ci-dessous. $supply : ce dont personne n’a dit la fibre.
iron-unknown = inconnue, celle de ce matériau : { $supply }
# La chaleur est celle d’une garniture, d’une fermeture ou d’un autre tissu, non du tissu repassé.
iron-fibre-of = { $fibre }, de ce matériau : { $supply }, qui supporte ici le moins de chaleur
# Points des étiquettes d’entretien : ISO 3758.
iron-set-three-dots = Régler le fer pour cette fibre ({ $fibre }) : trois points, 200 °C, avec vapeur. L’essayer d’abord sur une chute.
iron-set-two-dots = Régler le fer pour cette fibre ({ $fibre }) : deux points, 150 °C, sous une pattemouille. L’essayer d’abord sur une chute.
iron-set-one-dot = Régler le fer pour cette fibre ({ $fibre }) : un point, 110 °C, sans vapeur, sous une pattemouille sèche. L’essayer d’abord sur une chute.

## Le fil vif, qui distingue une couture verticale des autres

# Dit seulement dans d’autres phrases : la couture qui porte une ouverture ou le fil voyant.
seam-named = { $which ->
    [numbered] la couture entre le nº { $after } et le nº { $next }
    [any] l’une des coutures
   *[only] la couture
 }
tag-seam = { $opened ->
    [yes] Sur l’endroit, nouer un fil vif dans la couture qui porte l’ouverture, au-dessous de celle-ci, à { $down } du bord supérieur : c’est la couture de côté d’où partent toutes les mesures.
   *[no] { $which ->
        [numbered] Sur l’endroit, nouer un fil vif dans la couture entre le nº { $after } et le nº { $next }, à { $down } sous son bout supérieur : c’est la couture de côté d’où partent toutes les mesures.
        [any] Sur l’endroit, nouer un fil vif dans l’une de ces coutures, à { $down } sous son bout supérieur : c’est la couture de côté d’où partent toutes les mesures.
       *[only] Sur l’endroit, nouer un fil vif dans cette couture, à { $down } sous son bout supérieur : c’est la couture de côté d’où partent toutes les mesures.
    }
 }
    .check = { $low ->
        [yes] Il est là où la couture est piquée, son nœud sur l’endroit.
       *[no] Il est plus près du bord supérieur que du bord inférieur, son nœud sur l’endroit : on pourra l’en retirer plus tard.
     }

## Une ouverture décousue dans une couture verticale

open-seam-press = Ouvrir au fer la couture verticale qui a fermé le rond { PIECE($band, case: "of") }.
# $opened : entre les deux piqûres d’une coulisse, ou entre la pliure et la piqûre.
open-seam = { $opened ->
    [rows] Choisir la moitié qui sera à l’intérieur et y épingler une étiquette. Dans cette moitié, ouvrir au découseur la couture verticale qui a fermé le rond { PIECE($band, case: "of") }, entre les deux piqûres et nulle part ailleurs.
   *[row] Dans la moitié de la coulisse qui est à l’intérieur, ouvrir au découseur la couture verticale { PIECE($band, case: "of") } entre la pliure et la piqûre, { $channel }, et nulle part ailleurs.
 }
    .check = Une épingle à nourrice y entre et trouve son chemin dans la coulisse. La couture de la moitié extérieure est entière.
    .remedy = Si elle s’est ouverte davantage, la refermer à la main jusqu’aux piqûres.
open-seam-bars = Faire à la main trois points en travers de la couture à chaque bout de l’ouverture, tout contre les piqûres.
    .check = En tirant, on ne l’ouvre pas davantage.

## Les trous pour les bouts d’un cordon

# Dits seulement dans d’autres messages.
cord-holes = { $kind ->
    [buttonholes] boutonnières
    [worked-eyelets] œillets
   *[metal-eyelets] œillets
 }
cord-hole = { $kind ->
    [buttonholes] une boutonnière
    [worked-eyelets] un œillet
   *[metal-eyelets] un œillet
 }

## Une ligne en travers d’une pièce, mesurée depuis un bord tel qu’il est maintenant

# Seulement dans d’autres messages.
line-place = { $line-from ->
    [top-seam] { $from-edge } sous la couture du haut
    [top-cut] { $from-edge } sous le bord supérieur coupé
    [bottom-seam] { $from-edge } au-dessus de la couture du bas
    [bottom-cut] { $from-edge } au-dessus du bord inférieur coupé
   *[bottom] { $from-edge } au-dessus de son bord inférieur
 }
line-across = Tracer une ligne sur l’endroit { PIECE($on, case: "of") }, à { line-place }.
    .check = Mesurée à chaque largeur de main, la distance est de { $from-edge }.
    .tolerance = { $level-off } de plus ou de moins
    .remedy = Effacer ce qui s’écarte et retracer.
