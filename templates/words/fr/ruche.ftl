### Froncer une bande finie sur une ou deux lignes et la coudre à plat sur une autre pièce.
### $lines : une au milieu de la bande, ou deux en retrait de ses longs bords.

ruche-title = Coudre { PIECE($strip) } sur { PIECE($on) }
ruche-aim = { $cloth } de bande tiennent sur { $length } : { $ratio } pour 1.

## Marquer

# Une bande à plat dont aucune couture ne prendra les bouts : ceux de la pièce sont déjà finis.
ruche-ends = Aux deux bouts, replier { PIECE($strip) } de { $under } sur l’envers et piquer les replis, à { $beside } de leur pliure.
ruche-mark = Marquer les quarts { PIECE($strip, case: "of") }, tous les { $cloth-part }, et ceux { PIECE($on, case: "of") }, tous les { $part }.
ruche-mark-line = Tracer une ligne sur { PIECE($on) }, à { $above } au-dessus de son bord inférieur.

## Froncer

ruche-row = { $lines ->
    [two] Piquer un rang de fronces au point le plus long à { $inset } de chacun de ses deux longs bords ; sans point d’arrêt, laisser { $tail } de fil aux deux bouts.
   *[one] Piquer un rang de fronces au point le plus long en son milieu ; sans point d’arrêt, laisser { $tail } de fil aux deux bouts.
 }
ruche-pull = { $lines ->
    [two] Tirer le fil de canette de chaque rang jusqu’à ce que chaque quart mesure { $part }.
   *[one] Tirer le fil de canette du rang jusqu’à ce que chaque quart mesure { $part }.
 }
    .check = { $lines ->
        [two] { PIECE($strip, at: "start") } mesure { $length } sur les deux lignes.
       *[one] { PIECE($strip, at: "start") } mesure { $length }.
     }
    .tolerance = jusqu’à { $ease } trop court : l’embu se résorbe
    .remedy = Plus de { $ease } trop court : relâcher les fronces. Trop long : resserrer.

## Coudre

ruche-level = Mettre les bouts { PIECE($strip, case: "of") } au ras des bouts { PIECE($on, case: "of") }.
ruche-lay = { $lines ->
    [two] Poser { PIECE($strip) } sur { PIECE($on) }, endroit dessus, chaque rang sur sa ligne, et { pin } aux quarts, puis tous les { $spacing }.
   *[one] Poser { PIECE($strip) } sur { PIECE($on) }, endroit dessus, le rang sur sa ligne, et { pin } aux quarts, puis tous les { $spacing }.
 }
ruche-knot = Aux deux bouts, nouer chaque fil supérieur à son fil de canette, et couper les bouts à { $knot }.
ruche-sew = { $lines ->
    [two] Piquer sur chaque rang, { $length }, { $stitch }.
   *[one] Piquer sur le rang, { $length }, { $stitch }.
 }
    .check = Les deux bords { PIECE($strip, case: "of") } sont libres et réguliers.
    .remedy = Découdre là où la piqûre a quitté la ligne et repiquer.
