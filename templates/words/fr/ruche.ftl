### Froncer une bande finie sur une ou deux lignes et la coudre à plat sur une autre pièce.
### $lines : une au milieu de la bande, ou deux en retrait de ses longs bords.

ruche-title = Coudre { PIECE($strip) } sur { PIECE($on) }
    .number = { $cloth } → { $length }
ruche-aim = { $cloth } de bande tiennent sur { $length } : { $ratio } pour 1.

## Marquer

# Une bande à plat dont aucune couture ne prendra les bouts : ceux de la pièce sont déjà finis.
ruche-ends = Aux deux bouts, replier { PIECE($strip) } de { $under } sur l’envers et piquer les replis, à { $beside } de leur pliure.
ruche-mark-ring = { $parts ->
    [8] Marquer les huitièmes { PIECE($strip, case: "of") }, tous les { $cloth-part }, et ceux { PIECE($on, case: "of") }, tous les { $part }, les premiers repères aux coutures de côté.
   *[4] Marquer les quarts { PIECE($strip, case: "of") }, tous les { $cloth-part }, et ceux { PIECE($on, case: "of") }, tous les { $part }, les premiers repères aux coutures de côté.
 }
ruche-mark-flat = { $parts ->
    [8] Marquer les huitièmes { PIECE($strip, case: "of") }, tous les { $cloth-part }, et ceux { PIECE($on, case: "of") }, tous les { $part }.
   *[4] Marquer les quarts { PIECE($strip, case: "of") }, tous les { $cloth-part }, et ceux { PIECE($on, case: "of") }, tous les { $part }.
 }
ruche-mark-line = Tracer une ligne sur { PIECE($on) }, à { line-place }.

## Froncer

ruche-row = { $lines ->
    [two] Faire un rang de fronces à { $inset } de chaque long bord { PIECE($strip, case: "of") }. { rows-runs }
   *[one] Faire un rang de fronces au milieu { PIECE($strip, case: "of") }. { rows-runs }
 }
ruche-pull = { $parts ->
    [8] { $lines ->
        [two] À l’autre bout, tirer les fils de canette des deux rangs jusqu’à ce que chaque huitième mesure { $part }. Enrouler aussi ces bouts de fil autour d’une épingle.
       *[one] À l’autre bout, tirer le fil de canette jusqu’à ce que chaque huitième mesure { $part }. Enrouler aussi ces bouts de fil autour d’une épingle.
    }
   *[4] { $lines ->
        [two] À l’autre bout, tirer les fils de canette des deux rangs jusqu’à ce que chaque quart mesure { $part }. Enrouler aussi ces bouts de fil autour d’une épingle.
       *[one] À l’autre bout, tirer le fil de canette jusqu’à ce que chaque quart mesure { $part }. Enrouler aussi ces bouts de fil autour d’une épingle.
    }
 }
    .check = { $lines ->
        [two] { PIECE($strip, at: "start") } mesure { $length } sur les deux lignes, et ses fronces sont régulières.
       *[one] { PIECE($strip, at: "start") } mesure { $length }, et ses fronces sont régulières.
     }
    .tolerance = jusqu’à { $ease } trop court : l’embu se résorbe
    .remedy = Plus de { $ease } trop court : relâcher les fronces. Trop long : resserrer.

## Coudre

ruche-level = Mettre les bouts { PIECE($strip, case: "of") } au ras des bouts { PIECE($on, case: "of") }.
ruche-lay = { $lines ->
    [two] Poser { PIECE($strip) } sur { PIECE($on) }, endroit dessus, chaque rang sur sa ligne, et { pin } aux repères, puis tous les { $spacing }.
   *[one] Poser { PIECE($strip) } sur { PIECE($on) }, endroit dessus, le rang sur sa ligne, et { pin } aux repères, puis tous les { $spacing }.
 }

ruche-sew-ring = { $lines ->
    [two] Piquer sur chaque rang, { $length } tout autour, { $stitch }. Finir en repiquant trois points sur le début.
   *[one] Piquer sur le rang, { $length } tout autour, { $stitch }. Finir en repiquant trois points sur le début.
 }
    .check = Les deux bords { PIECE($strip, case: "of") } sont libres et réguliers.
    .remedy = Découdre là où la piqûre a quitté la ligne et repiquer.
ruche-sew-flat = { $lines ->
    [two] Piquer sur chaque rang, { $length }, { $stitch }, point d’arrêt aux deux bouts.
   *[one] Piquer sur le rang, { $length }, { $stitch }, point d’arrêt aux deux bouts.
 }
    .check = { ruche-sew-ring.check }
    .remedy = { ruche-sew-ring.remedy }
