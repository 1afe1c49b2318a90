### Couper des lés qui s’élargissent vers le bas, deux dans chaque rectangle par une ligne en biais.

figure-gores-head = Le rectangle
figure-gores-top = haut
figure-gores-hem = ourlet
figure-gores-alt = { $paired ->
    [yes] Un rectangle de { $wide } sur { $high } avec une ligne en biais de { $narrow } sur le bord supérieur à { $broad } sur le bord inférieur : deux lés tête-bêche.
   *[no] Un rectangle de { $wide } sur { $high } avec une ligne en biais de { $narrow } sur le bord supérieur au coin inférieur droit : un lé.
 }
figure-gores-caption = Les lés dans leur rectangle.
