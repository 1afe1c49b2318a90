### Ce qu’est un nombre d’un livret, dans le tableau qui le donne pour chaque taille, par le nom que son message a pour la valeur.
### $name (texte) : ce nom. $kind (texte) : de quelle sorte est le nombre.

number-is = { $name ->
    [above] hauteur au-dessus
    [across] en ligne droite
    [after] depuis le précédent
    [air-far] distance de l’air chaud
    [all-loops] nombre de brides
    [along] le long de l’arc
    [apart] écart
    [around] tout autour
    [at] du coin à un repère
    [back] derrière
    [bar] longueur de la bride
    [bar-in] la barrette, depuis son bord
    [basting] point de bâti
    [before] depuis le devant
    [begins] début
    [behind] part derrière
    [below] distance au-dessous
    [beneath] le bout du dessous
    [beside] distance à côté
    [beyond] distance au-delà
    [bobbin-thread] fil des canettes
    [bobbins] combien de canettes
    [bone-length] longueur de la baleine
    [both-sides] les deux côtés ensemble
    [broad] bout large
    [button] largeur du bouton
    [button-in] le bouton, depuis le bord
    [buttonhole] longueur de la boutonnière
    [by] de combien plus long
    [casing] la coulisse, tout autour
    [catch] longueur prise
    [channel] largeur de la coulisse
    [channels] nombre de passages
    [clear] distance à garder
    [clip-short] jusqu’à la piqûre
    [clips] d’un cran à l’autre
    [close] à côté du bord
    [cloth] { $kind ->
    [shorter] de combien plus court
    [snip] profondeur d’un cran
    [snips] d’un cran à l’autre
        [weight] poids du tissu
       *[other] tissu à plat
     }
    [cloth-part] tissu à plat d’un repère à l’autre
    [copies] combien de pareils
    [cord-long] longueur du cordon
    [corner] de la piqûre, au coin
    [count] combien
    [cover] au-delà de la piqûre
    [cross] la croix, depuis le bout
    [cut] longueur à couper
    [cut-depth] hauteur à couper
    [deep] hauteur
    [deepest] endroit le plus profond
    [degrees] angle en degrés
    [depth] hauteur
    [diagonal] les deux diagonales
    [dots] points par rang
    [down] distance vers le bas
    [drawn] { $kind ->
        [length] resserré
       *[other] combien sont dessinés
     }
    [drawn-in] resserré
    [ease] trop court en tout
    [edge] depuis le bord
    [edge-off] tolérance du bord
    [edge-stitch] depuis le pli
    [end] rentré à chaque bout
    [ends] aux bouts
    [every] de l’un à l’autre
    [fall] longueur depuis la couture
    [far] jusqu’au coin éloigné
    [farthest] dernier centre, au-delà du bord
    [fast] pour le bout fixe
    [fell] largeur du repli
    [finish] pour finir un bout
    [first] le premier
    [first-row] premier rang depuis le bord
    [first-turn] premier repli
    [flat] à plat
    [fold] à replier
    [foot] au bas
    [from-edge] depuis le bord
    [from-fold] depuis le pli
    [from-seam] depuis la couture
    [front] devant
    [gap] l’ouverture
    [gap-end] fin de l’ouverture
    [gap-from] début de l’ouverture
    [gap-to] fin de l’ouverture
    [gives] longueur de la bande
    [gores] nombre de lés
    [grams] poids en grammes
    [half] la moitié
    [half-apart] du bout au premier
    [half-back] des deux côtés derrière
    [half-fast] replié au bout
    [half-finish] chaque repli du bout
    [half-front] des deux côtés devant
    [half-hem] chaque repli du bout
    [half-over] étiré, à plat
    [half-shown] la moitié de ce qui se voit
    [hangs] ce qui pend au-dessous
    [heading] la tête
    [hem] à l’ourlet
    [high] hauteur
    [hole] le trou
    [hook-in] le crochet, depuis son bord
    [in-at-foot] en retrait au bas
    [inner] l’arc intérieur
    [inside] du bord, en deçà de la ligne
    [intake] pris par chacune
    [joins] nombre de raccords
    [knot] le nœud, depuis le bord
    [label-tape] ruban de l’étiquette
    [lap] le recouvrement
    [layer-deep] hauteur d’une épaisseur
    [layers-over] les épaisseurs, en plus
    [left] ce qui reste
    [lefts] chaque ruban, relevé
    [leg] chaque côté jusqu’à la pointe
    [length] longueur le long du bord
    [letters] hauteur des lettres
    [lies] le bord tel qu’il est coupé
    [line] la ligne, au-dessus du bord
    [lines] nombre de bandes
    [lining-over] la doublure, en plus
    [liquid] quantité de liquide
    [long] longueur
    [long-stitch] grand point
    [longest] la plus longue ligne
    [loop] boucle d’élastique
    [loops] nombre de brides
    [lower] le long du bord inférieur
    [many] combien parmi eux
    [margin] depuis les bords
    [mark] jusqu’au repère { $which }
    [marks] du début à chaque repère
    [middle] du bout au milieu
    [more] { $kind ->
        [length] en plus
       *[other] combien de plus
     }
    [narrow] bout étroit
    [near] jusqu’au coin proche
    [near-fold] à côté du pli
    [needed] longueur qui se coud
    [next] le suivant
    [now] l’ouverture telle qu’elle est
    [number] lequel
    [on-line] d’un repère à l’autre sur la ligne de couture
    [open] ce qui est ouvert
    [open-at-hem] ouvert au-dessus de l’ourlet
    [opening] l’ouverture
    [others] combien d’autres
    [out] relâché à
    [outer] l’arc extérieur
    [over] étiré à
    [overlap] le recouvrement
    [panels] nombre de lés
    [part] d’un repère à l’autre
    [patch-left] ce qui reste du carré
    [parts] nombre de parties
    [past] au-delà
    [patch] côté du renfort
    [per-run] parties par passage
    [pins] épingles, environ
    [places] nombre d’endroits
    [pleats] nombre de plis
    [plies] nombre d’épaisseurs
    [quarter] un quart
    [radius] rayon
    [ratio] tissu pour bord
    [reach] jusqu’au bouton
    [rest] distance de la couture qui suit
    [ribbon-length] longueur du ruban
    [rings] nombre d’anneaux
    [roll] épaisseur du roulotté
    [round] tout autour
    [round-top] tour du haut
    [row] le rang, depuis le bord
    [rows] nombre de rangs
    [run] depuis le côté
    [run-out] où cela finit
    [runs] nombre de passages
    [seam-stitch] point de couture
    [seam-width] largeur de couture
    [second] second repli
    [second-row] second rang depuis le bord
    [second-turn] second repli
    [seconds] secondes
    [segment] tronçon { $which }
    [sewn] longueur cousue
    [shift] déplacement du centre
    [short] { $kind ->
        [length] bord froncé
       *[other] petit point
     }
    [short-part] chaque partie, froncée
    [shortest] la plus courte ligne
    [shown] ce qui se voit de chacun
    [shows] ce qui se voit
    [side] aux côtés
    [slant] le long du biais
    [slit] la fente
    [slots] d’une boutonnière à l’autre
    [space] intervalle
    [spacing] d’une épingle à l’autre
    [spare] pour l’essayer
    [stacked] combien en tout
    [stay] le rang qui soutient
    [stitch] point
    [stitched] longueur cousue
    [stitches] nombre de points
    [stop] l’arrêt, sous le bord
    [stretch] longueur laissée
    [tail] bout de fil
    [taken] ce qui est pris
    [tape-length] longueur du ruban
    [tape-each] longueur de chaque ruban
    [tapes] nombre de rubans
    [thick] épaisseur
    [times] combien de fois
    [to-come] marge qui suit
    [tie-long] longueur du lien
    [to-hem] du bord supérieur à l’ourlet
    [top] en haut
    [trial] bande d’essai
    [trial-short] l’essai, resserré
    [triangle] côté du triangle
    [trim] marge qui reste
    [tucks] nombre de plis religieuse
    [turn] le repli
    [turn-width] largeur repliée
    [twice] jusqu’à la seconde ligne
    [under] rentré
    [understitch] à côté de la couture
    [united-states] au plus aux États-Unis
    [up] remonté de
    [upper] le long du bord supérieur
    [waist] la taille
    [whole] la longueur raccordée
    [wide] largeur
    [width] largeur
    [zigzag-long] longueur du zigzag
    [zigzag-wide] largeur du zigzag
   *[other] { number-of-kind }
 }
# Là où un nombre n’a pas de nom à lui.
number-of-kind = { $kind ->
    [stitch] longueur de point
    [count] combien
    [share] part
    [ratio] rapport
    [weight] poids
    [volume] volume
    [money] prix
   *[length] longueur
 }
