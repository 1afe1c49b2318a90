### Comment un guide appelle les mesures d’un corps et les nombres d’un fichier, par les noms qu’ils y ont.
### $own (texte) : le nom tel qu’il est dans le fichier, là où ce n’est aucun de ceux-ci.

name-body = { $name ->
    [waist-girth] tour de taille
    [hip-girth] tour de hanches
    [chest-girth] tour de poitrine
    [neck-girth] tour de cou
    [waist-height] hauteur de taille
    [hip-height] hauteur de hanches
    [hip-depth] hauteur de la taille aux hanches
    [knee-height] hauteur du genou
    [height] stature
   *[own] { $own }
 }
# Les longueurs et les nombres d’une étape, d’une pièce, d’un matériau, et du vêtement entier.
name-number = { $name ->
    [above-hem] distance à l’ourlet
    [back] dos
    [behind] derrière
    [below-top] distance au bord supérieur
    [channel] coulisse
    [edge-stitch] piqûre de bord
    [pins] d’épingle en épingle
    [count] nombre
    [cut-area] surface de coupe
    [cut-depth] hauteur de coupe
    [cut-length] longueur de coupe
    [depth] hauteur
    [ease] aisance
    [ends] bouts
    [fell] rabat
    [first-seam] première couture
    [first-turn] premier repli
    [fold-ends] repli à chaque bout
    [from-edge] distance au bord
    [from-start] distance au début
    [front] devant
    [fullness-to-hem] ampleur jusqu’à l’ourlet
    [gap] ouverture
    [gap-below-top] ouverture à partir du haut
    [open-at-hem] ouverture au-dessus du bas
    [open] ouverture sous le haut
    [gathered-strips] bandes froncées
    [gathers] fronces
    [heading] tête
    [hem] ourlet
    [hole] trou
    [apart] écart
    [button] bouton
    [channels] passages
    [let-out] rallonger
    [takes] ml par gramme
    [hem-layers] épaisseurs à l’ourlet
    [front-hem] ourlet du lé devant
    [back-hem] ourlet d’un lé dos
    [backs] lés dos
    [each] anneaux par ruban
    [every] d’un anneau à l’autre
    [long] longueur d’une pince
    [tapes] rubans
    [up] relevé de
    [hems-together] ourlets ensemble
    [inset] retrait
    [lap] recouvrement
    [length] longueur
    [most-joins] nombre maximal de raccords
    [over] passage
    [overlap] croisure
    [price] prix
    [reel] bobine
    [roll] roulotté
    [rounding] arrondi
    [rows] rangs
    [seam] couture
    [second-seam] seconde couture
    [second-turn] second repli
    [selvedge] lisière
    [shortest] tronçon le plus court
    [shrinkage] rétrécissement
    [bending-length] longueur de flexion
    [side] côté
    [slit] fente
    [sold-by] vendu par
    [space] espace
    [spacing] écart
    [spare] réserve
    [stitch] point
    [stretch] extension
    [top-to-hem] du haut à l’ourlet
    [trim-to] recoupé à
    [turn] repli
    [turn-under] rentré
    [turn-up] relevé
    [weight] poids
    [width] largeur
   *[own] { $own }
 }
