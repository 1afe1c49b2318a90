### Coudre des plis religieuse en travers d’une pièce : des pliures piquées sur toute sa longueur.

tucks-title = { $tucks ->
    [one] Piquer { $tucks } pli religieuse dans { PIECE($piece) }
   *[other] Piquer { $tucks } plis religieuse dans { PIECE($piece) }
 }
    .number = { $depth }
tucks-aim = { $tucks ->
    [one] { $tucks } pli religieuse de { $depth } prend { $taken } de hauteur.
   *[other] { $tucks } plis religieuse de { $depth } prennent { $taken } de hauteur.
 }

## Marquer

tucks-mark-first = Tracer une ligne de pliure à { $line } au-dessus { EDGE($edge, case: "of") }, sur toute la longueur.
    .check = La ligne garde sa distance au bord.
    .tolerance = { $line-off } de plus ou de moins
    .remedy = La retracer là où elle dévie : tous les plis suivants la suivent.
tucks-mark-next = Tracer la ligne de pliure { $number }, à { $line } au-dessus du bord, mesurée sur le tissu à plat.

## Piquer

tucks-sew = { $ring ->
    [yes] Plier la ligne { $number } envers contre envers et piquer à { $depth } de la pliure, { $length } tout autour, { $stitch }. Finir en repiquant trois points sur le début.
   *[no] Plier la ligne { $number } envers contre envers et piquer à { $depth } de la pliure, { $length }, { $stitch }, point d’arrêt aux deux bouts.
 }
    .check = Le pli a { $depth } de profondeur sur toute la longueur.
    .tolerance = { $line-off } de plus ou de moins
    .remedy = Découdre le passage qui a dévié et le repiquer à partir de la pliure.
# Le dernier de plusieurs.
tucks-sew-last = { tucks-sew }
    .check = Les plis ont { $depth } de profondeur et leurs piqûres sont à { $apart } l’une de l’autre.
    .tolerance = { tucks-sew.tolerance }
    .remedy = { tucks-sew.remedy }
tucks-press = { $tucks ->
    [one] Repasser le pli vers le bas, du côté de l’ourlet. Lever le fer et le poser, sans le faire glisser.
   *[other] Repasser tous les plis vers le bas, du côté de l’ourlet. Lever le fer et le poser, sans le faire glisser.
 }
    .check = { PIECE($piece, at: "start") } a maintenant { $left } de hauteur, sans compter ce que prendront encore ses autres bords.
