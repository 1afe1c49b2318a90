### Couper des lés qui s’élargissent vers le bas, tête-bêche dans des rectangles.

figure-gores-head = Le rectangle
figure-gores-top = haut
figure-gores-hem = ourlet
figure-gores-alt = { $paired ->
    [yes] Un rectangle de { $wide } sur { $high } avec une ligne en biais de { $narrow } sur le bord supérieur à { $broad } sur le bord inférieur : deux lés tête-bêche.
   *[no] Un rectangle de { $wide } sur { $high } avec une ligne en biais de { $narrow } sur le bord supérieur au coin inférieur droit : un lé.
 }
figure-gores-row-head = { $times ->
    [one] Un rectangle, { $count ->
        [one] un lé
       *[other] { $count } lés
    }
   *[other] { $times } rectangles, { $count ->
        [one] un lé
       *[other] { $count } lés
    } chacun
 }
figure-gores-diagonal = les deux diagonales { $diagonal }
figure-gores-row-alt = Un rectangle de { $wide } sur { $high }, les deux diagonales { $diagonal }, avec des lignes en biais du bord supérieur au bord inférieur, depuis la gauche : { $lines }. Entre elles, les lés sont tête-bêche.
figure-gores-caption = Les lés dans leur rectangle.
