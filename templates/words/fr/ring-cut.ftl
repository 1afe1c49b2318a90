### Couper une pièce entre deux arcs, pour qu’elle tombe en godets sans fronces.

ring-cut-title = Couper { PIECE($piece) } en forme
    .number = { $radius }
ring-cut-aim = Rayon { $radius }, { $degrees } degrés : { $top } en haut, { $hem } en bas.

## Tracer

ring-cut-lay = Poser à plat le rectangle { PIECE($piece, case: "of") }, { $wide } de large et { $high } de haut.
ring-cut-centre = Tracer la ligne médiane verticale du rectangle. Y marquer le centre, à { $outer } au-dessus du bord inférieur.
# Le centre est au-delà du tissu.
ring-cut-centre-beyond = Tracer la ligne médiane verticale du rectangle, et la prolonger au-delà sur du papier collé à la table. Y marquer le centre, à { $outer } au-dessus du bord inférieur et à { $beyond } au-delà du bord supérieur.
ring-cut-outer = Tenir un mètre ruban au centre et tracer l’arc extérieur à { $outer }.
    .check = L’arc touche tout juste le bord inférieur.
    .tolerance = { $arc-off } de plus ou de moins
    .remedy = Vérifier que le 0 du mètre ruban est au centre et retracer.
ring-cut-inner = Tracer l’arc intérieur à { $inner }.
# Dit seulement dans les messages ci-dessous.
ring-cut-end-lines = { $has-seam ->
    [yes] Mesurer { $along } le long de l’arc extérieur, de la ligne médiane vers les deux côtés, et tracer une ligne droite de chaque repère au centre, puis une seconde ligne { $ends } à l’extérieur de celle-ci pour la couture.
   *[no] Mesurer { $along } le long de l’arc extérieur, de la ligne médiane vers les deux côtés, et tracer une ligne droite de chaque repère au centre.
 }
ring-cut-ends = { ring-cut-end-lines }
    .check = Les repères sont à { $across } l’un de l’autre en ligne droite.
    .tolerance = { $across-off } de plus ou de moins
    .remedy = Mesurer à nouveau le long de l’arc, le mètre ruban sur la tranche.
# Presque un demi-cercle ou plus : l’angle se dit mieux que la ligne droite.
ring-cut-ends-wide = { ring-cut-end-lines }
    .check = Les lignes sont à { $whole-degrees } degrés l’une de l’autre.
    .tolerance = 1 degré de plus ou de moins
    .remedy = { ring-cut-ends.remedy }

# Seulement dans les messages ci-dessous.
ring-cut-move = { $on-paper ->
    [yes] Avancer le centre de { $shift } sur la ligne du milieu ; le dernier est à { $farthest } au-delà du bord supérieur, sur du papier collé à la table. Tracer de là encore une fois les deux arcs et les bouts droits.
   *[no] Avancer le centre de { $shift } sur la ligne du milieu, en s’éloignant du bord inférieur, et tracer de là encore une fois les deux arcs et les bouts droits.
 }
# Plusieurs pièces dans un rectangle, l’une au-dessus de l’autre ; $short : le dernier rectangle n’en contient que $last.
ring-cut-next = { $short ->
    [yes] { ring-cut-move } Continuer jusqu’à ce que { $stacked } pièces tiennent dans le rectangle, { $last } dans le dernier.
   *[no] { ring-cut-move } Continuer jusqu’à ce que { $stacked } pièces tiennent dans le rectangle.
 }
    .check = Chaque nouvel arc extérieur passe au-dessus de l’arc intérieur de la pièce précédente, au plus près aux deux bouts, sans le croiser.
    .remedy = Mesurer à nouveau { $shift }, depuis le dernier centre utilisé.

## Couper et soutenir

ring-cut-cut = Couper sur les deux arcs et sur les lignes droites les plus à l’extérieur.
# Dit seulement dans les messages ci-dessous.
ring-cut-stay-row = Piquer aussitôt un rang à { $stay } de l’arc intérieur, { $stitch }, sans l’étirer. Ce rang reste dans la couture.
ring-cut-stay = { ring-cut-stay-row }
    .check = L’arc intérieur mesure { $top } entre les coutures des bouts.
    .tolerance = { $top-off } de plus ou de moins
    .remedy = Trop long : resserrer un peu le rang. Trop court : cranter la marge jusqu’au rang.
# Une couture ou un repli ultérieur prend quelque chose à l’arc intérieur.
ring-cut-stay-above = { ring-cut-stay-row }
    .check = La ligne de la couture à venir, à { $above } du bord coupé, mesure { $top } entre les coutures des bouts.
    .tolerance = { ring-cut-stay.tolerance }
    .remedy = { ring-cut-stay.remedy }
ring-cut-hang = Ne pas l’ourler encore. La pièce pend d’abord toute une nuit, et ce qui s’est allongé est recoupé d’aplomb.
