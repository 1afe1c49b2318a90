### Froncer un volant sous son bord, pour qu’une tête se dresse au-dessus des rangs, et le coudre à travers eux.

ruched-heading-title = Coudre { PIECE($flounce) } avec une tête au-dessus de la couture
    .number = { $cloth } → { $length }
ruched-heading-aim = { $cloth } de tissu tiennent sur { $length } : { $ratio } pour 1.

## Marquer

ruched-heading-mark-ring = { $parts ->
    [8] Marquer les huitièmes { EDGE($edge, case: "of") } sur les deux faces, tous les { $cloth-part }, le premier repère à { side-seam }.
   *[4] Marquer les quarts { EDGE($edge, case: "of") } sur les deux faces, tous les { $cloth-part }, le premier repère à { side-seam }.
 }
ruched-heading-mark-flat = { $parts ->
    [8] Marquer les huitièmes { EDGE($edge, case: "of") } sur les deux faces, tous les { $cloth-part }.
   *[4] Marquer les quarts { EDGE($edge, case: "of") } sur les deux faces, tous les { $cloth-part }.
 }

## Froncer

ruched-heading-first-row = Faire un rang de fronces à { $heading } sous { EDGE($edge) }. { rows-runs }
ruched-heading-second-row = Piquer de même un second rang, à { $apart } sous le premier.
    .check = Les deux rangs courent côte à côte.
ruched-heading-pull = { $parts ->
    [8] À l’autre bout, tirer ensemble les deux fils de canette jusqu’à ce que chaque huitième mesure { $part }. Enrouler aussi ces bouts de fil autour d’une épingle.
   *[4] À l’autre bout, tirer ensemble les deux fils de canette jusqu’à ce que chaque quart mesure { $part }. Enrouler aussi ces bouts de fil autour d’une épingle.
 }
    .check = La ligne froncée mesure { $length } ; la tête au-dessus est libre.
    .tolerance = jusqu’à { $ease } trop court : l’embu se résorbe
    .remedy = Plus de { $ease } trop court : relâcher les fronces. Trop long : resserrer.

## Coudre

ruched-heading-mark-line = Tracer sur l’endroit une ligne à { $lap } au-dessus { EDGE($to, case: "of") }.
ruched-heading-lay = Poser { PIECE($flounce) } sur l’endroit { PIECE($to, case: "of") }, endroit dessus, le rang supérieur sur la ligne et repère sur repère. { pin-start } là, puis tous les { $spacing }.
ruched-heading-sew-ring = Piquer sur les deux rangs de fronces depuis l’endroit, { $length } tout autour chacun, { $stitch }. Finir chacun en repiquant trois points sur son début.
    .check = La tête se dresse de { $heading } au-dessus de la couture sur toute la longueur.
    .tolerance = { $frill-off } de plus ou de moins
    .remedy = Découdre là où la piqûre a quitté les fronces et repiquer.
ruched-heading-sew-flat = Piquer sur les deux rangs de fronces depuis l’endroit, { $length } chacun, { $stitch }, point d’arrêt aux deux bouts.
    .check = { ruched-heading-sew-ring.check }
    .tolerance = { ruched-heading-sew-ring.tolerance }
    .remedy = { ruched-heading-sew-ring.remedy }
