### Froncer un rang sous son bord et le coudre sur une ligne en travers d’une pièce, une tête au-dessus des piqûres.

headed-row-title = Coudre { PIECE($row) } à tête sur { PIECE($on) }
headed-row-aim = { $cloth } de tissu tiennent sur { $length } : { $ratio } pour 1.

headed-row-mark-ring = { $parts ->
    [8] Marquer les huitièmes { EDGE($edge, case: "of") } sur les deux faces, tous les { $cloth-part }, et ceux de la ligne, tous les { $part }, les premiers repères à { side-seam }.
   *[4] Marquer les quarts { EDGE($edge, case: "of") } sur les deux faces, tous les { $cloth-part }, et ceux de la ligne, tous les { $part }, les premiers repères à { side-seam }.
 }
headed-row-mark-flat = { $parts ->
    [8] Marquer les huitièmes { EDGE($edge, case: "of") } sur les deux faces, tous les { $cloth-part }, et ceux de la ligne, tous les { $part }.
   *[4] Marquer les quarts { EDGE($edge, case: "of") } sur les deux faces, tous les { $cloth-part }, et ceux de la ligne, tous les { $part }.
 }

headed-row-first-row = Faire un rang de fronces à { $heading } sous { EDGE($edge) }. { rows-runs }
headed-row-second-row = Piquer de même un second rang, à { $apart } sous le premier.
    .check = Les deux rangs courent côte à côte.
headed-row-pull = { $parts ->
    [8] À l’autre bout, tirer ensemble les deux fils de canette jusqu’à ce que chaque huitième mesure { $part }. Enrouler aussi ces bouts de fil autour d’une épingle.
   *[4] À l’autre bout, tirer ensemble les deux fils de canette jusqu’à ce que chaque quart mesure { $part }. Enrouler aussi ces bouts de fil autour d’une épingle.
 }
    .check = La ligne froncée mesure { $length } ; la tête au-dessus est libre.
    .tolerance = jusqu’à { $ease } trop court : l’embu se résorbe
    .remedy = Plus de { $ease } trop court : relâcher les fronces. Trop long : resserrer.

headed-row-lay = Poser { PIECE($row) } sur { PIECE($on) }, endroit dessus, le rang supérieur sur la ligne et repère sur repère. Épingler là, puis tous les { $spacing }.
headed-row-sew-ring = Piquer sur les deux rangs de fronces depuis l’endroit, { $length } tout autour chacun, { $stitch }. Finir chacun en repiquant trois points sur son début.
    .check = La tête se dresse de { $heading } au-dessus de la couture sur toute la longueur.
    .tolerance = { $frill-off } de plus ou de moins
    .remedy = Découdre là où la piqûre a quitté les fronces et repiquer.
headed-row-sew-flat = Piquer sur les deux rangs de fronces depuis l’endroit, { $length } chacun, { $stitch }, point d’arrêt aux deux bouts.
    .check = { headed-row-sew-ring.check }
    .tolerance = { headed-row-sew-ring.tolerance }
    .remedy = { headed-row-sew-ring.remedy }
