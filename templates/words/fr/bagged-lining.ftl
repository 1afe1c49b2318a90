### Coudre une pièce et sa doublure ensemble tout autour et les retourner.
### $outer : la pièce ; $lining : sa doublure. Elles se retournent par une ouverture, ou par le bord supérieur.

bagged-lining-title = Doubler { PIECE($outer) } par retournement
    .number = { $seam-width }
bagged-lining-aim-gap = Tous les bords sont enfermés entre tissu et doublure.
bagged-lining-aim-top = Tous les bords sauf celui du haut sont enfermés entre tissu et doublure.

## Piquer

bagged-lining-lay = Poser { PIECE($outer) } et { PIECE($lining) } endroit contre endroit, bord à bord, et les { pin }.
bagged-lining-mark = Marquer une ouverture de { $gap } au milieu du bord inférieur : elle reste ouverte.
bagged-lining-sew-gap = Piquer à { $seam-width } du bord, d’un bout de l’ouverture à l’autre en faisant le tour, { $length } en tout, { $stitch }. Pivoter à chaque coin, l’aiguille piquée. Faire un point d’arrêt aux deux bouts.
    .check = Tous les coins sont d’équerre, et l’ouverture est libre.
    .remedy = Découdre un coin arrondi jusqu’aux deux côtés droits, et le repiquer.
bagged-lining-sew-top = Piquer à { $seam-width } du bord, en descendant un côté, le long du bas et en remontant l’autre côté, { $length } en tout, { $stitch }. Pivoter aux deux coins, l’aiguille piquée. Faire un point d’arrêt aux deux bouts, et laisser tout le bord supérieur ouvert.
    .check = Les deux coins sont d’équerre.
    .remedy = { bagged-lining-sew-gap.remedy }

## Retourner

bagged-lining-trim = Couper en biais chaque coin cousu, à { $corner } des points.
bagged-lining-turn-gap = Retourner l’ouvrage sur l’endroit par l’ouverture et pousser les coins avec une baguette à bout rond.
bagged-lining-turn-top = Retourner l’ouvrage sur l’endroit par le haut et pousser les coins avec une baguette à bout rond.
bagged-lining-roll = Rouler la couture entre les doigts jusqu’au bord et la repasser côté doublure, la doublure un cheveu en retrait.
    .check = L’ouvrage mesure { $wide } sur { $deep }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Le remettre à l’envers ; là où il est petit, la couture est trop large, là où il est grand, trop étroite.
bagged-lining-close = Rentrer les marges de l’ouverture. À la main, fermer les { $gap } au point invisible.
    .check = Les points ne se voient pas.
    .remedy = Couper le point qui se voit et le refaire à l’intérieur de la pliure.
