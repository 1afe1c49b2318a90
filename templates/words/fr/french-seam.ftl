### Piquer une couture deux fois, pour que ses bords bruts soient enfermés à l’intérieur.
### -ends : elle ferme en rond les bouts de $pieces. -edges : elle joint $edge, qui pend dessous, à $to au-dessus.

french-seam-title-ends = Couture anglaise : la couture de côté { PIECE($pieces, case: "of") }
    .number = { $first } + { $second }
french-seam-title-edges = Couture anglaise : la couture entre { PIECE($pieces) }
    .number = { $first } + { $second }
french-seam-aim = Les bords bruts sont enfermés : { $first }, puis { $second } de chaque bord sont pris.

## La première couture, envers contre envers

french-seam-lay-edges = Poser { EDGE($edge) } contre { EDGE($to) }, envers contre envers et bord à bord.
french-seam-turn = Mettre { PIECE($edge) } à l’envers et { PIECE($to) } à l’endroit.
french-seam-slip = Enfiler { PIECE($to) }, tête en bas, sur { PIECE($edge) }, jusqu’à ce que { EDGE($to, form: "short") } soit au ras { EDGE($edge, form: "short", case: "of") }.
    .check = Les envers se font face et les deux bords coupés coïncident.
french-seam-pin = { match-and-pin }
    .check = { $folds ->
        [gathers] Les bords coïncident et les fronces ne s’entassent pas aux repères.
        [pleats] Les bords coïncident et les plis ne s’entassent pas aux repères.
       *[flat] Les bords coïncident.
     }
    .tolerance = { $folds ->
        [gathers] les fronces jusqu’à { $ease } trop courtes en tout
        [pleats] le bord plissé jusqu’à { $ease } trop court en tout
       *[flat] un bord plus long de { $off }
     }
    .remedy = { $folds ->
        [gathers] Plus de { $ease } trop court : relâcher les fronces.
        [pleats] Plus de { $ease } trop court : relâcher les plis.
       *[flat] Répartir la différence entre les repères.
     }
french-seam-first-ring = { $folds ->
    [gathers] Les fronces dessous, piquer à { $first } du bord, { $stitch }, { $length } tout autour. Finir en repiquant trois points sur le début.
    [pleats] Les plis dessous, piquer à { $first } du bord, { $stitch }, { $length } tout autour. Finir en repiquant trois points sur le début.
   *[flat] Piquer à { $first } du bord, { $stitch }, { $length } tout autour. Finir en repiquant trois points sur le début.
 }
french-seam-first-flat = { $folds ->
    [gathers] Les fronces dessous, piquer à { $first } du bord, { $stitch }, { $length }, point d’arrêt aux deux bouts.
    [pleats] Les plis dessous, piquer à { $first } du bord, { $stitch }, { $length }, point d’arrêt aux deux bouts.
   *[flat] Piquer à { $first } du bord, { $stitch }, { $length }, point d’arrêt aux deux bouts.
 }
french-seam-trim = Recouper les deux marges à { $trim }.
    .check = La marge a { $trim } de largeur sur toute la longueur et aucun fil n’en dépasse.
    .tolerance = elle reste partout plus étroite que { $second }
    .remedy = Recouper là où elle est plus large, sinon elle se verra dans la couture finie.

## La seconde couture, endroit contre endroit

french-seam-press = Repasser les deux marges ensemble d’un même côté. Retourner l’ouvrage endroit contre endroit le long de la couture, la repasser sur sa pliure, et { pin }.
    .check = La première couture est exactement sur la pliure.
    .remedy = Rouler la couture entre les doigts jusqu’à ce qu’elle soit sur la pliure, et repasser à nouveau.
french-seam-second-ring = Piquer à { $second } de la pliure, { $stitch }, { $length } tout autour. Finir en repiquant trois points sur le début.
    .check = { french-seam-second-flat.check }
    .remedy = { french-seam-second-flat.remedy }
french-seam-second-flat = Piquer à { $second } de la pliure, { $stitch }, { $length }, point d’arrêt aux deux bouts.
    .check = { $folds ->
        [gathers] Rien de la marge ne se voit sur l’endroit, ni aucun rang de fronces.
       *[other] Rien de la marge ne se voit sur l’endroit.
     }
    .remedy = { $folds ->
        [gathers] Recouper ce qui se voit ; là où la marge est prise au-dehors, repiquer ce passage un peu plus profond. Un rang de fronces qui se voit se retire.
       *[other] Recouper ce qui se voit ; là où la marge est prise au-dehors, repiquer ce passage un peu plus profond.
     }
french-seam-press-ends = { $seams ->
    [one] Ouvrir l’ouvrage et coucher au fer la couture finie d’un côté.
   *[other] Ouvrir l’ouvrage et coucher au fer les coutures finies, toutes dans le même sens.
 }
french-seam-press-edges = Ouvrir l’ouvrage et coucher au fer la couture finie vers le haut, vers { PIECE($to) }.
