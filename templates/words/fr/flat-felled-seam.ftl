### Piquer une couture dont les marges se replient l’une dans l’autre et se piquent à plat.
### -ends : elle ferme en rond les bouts de $pieces. -edges : elle joint $edge, qui pend dessous, à $to au-dessus.

flat-felled-seam-title-ends = Couture rabattue : la couture de côté { PIECE($pieces, case: "of") }
    .number = { $seam-width }
flat-felled-seam-title-edges = Couture rabattue : la couture entre { PIECE($pieces) }
    .number = { $seam-width }
flat-felled-seam-aim = La couture est plate et aucun bord brut ne se voit d’aucun côté.

## La première piqûre, endroit contre endroit

flat-felled-seam-lay-edges = Poser { EDGE($edge) } contre { EDGE($to) }, endroit contre endroit et bord à bord.
flat-felled-seam-turn = Mettre { PIECE($edge) } à l’endroit et { PIECE($to) } à l’envers.
flat-felled-seam-slip = Enfiler { PIECE($to) }, tête en bas, sur { PIECE($edge) }, jusqu’à ce que { EDGE($to, form: "short") } soit au ras { EDGE($edge, form: "short", case: "of") }.
    .check = Les endroits se font face et les deux bords coupés coïncident.
flat-felled-seam-pin = { match-and-pin }
    .check = Les bords coïncident.
    .tolerance = un bord plus long de { $off }
    .remedy = Répartir la différence entre les repères.
flat-felled-seam-sew-ring = Piquer à { $seam-width } du bord, { $stitch }, { $length } tout autour. Finir en repiquant trois points sur le début.
flat-felled-seam-sew-flat = Piquer à { $seam-width } du bord, { $stitch }, { $length }, point d’arrêt aux deux bouts.

## Le repli

flat-felled-seam-open-ends = { $seams ->
    [one] Ouvrir l’ouvrage, envers dessus, et coucher au fer les deux marges du même côté.
   *[other] Ouvrir l’ouvrage, envers dessus, et coucher au fer les deux marges du même côté, à toutes les coutures dans le même sens.
 }
flat-felled-seam-open-edges = Ouvrir l’ouvrage, envers dessus, et coucher au fer les deux marges vers le haut, sur { PIECE($to) }.
flat-felled-seam-trim = Ne recouper que la marge de dessous, à { $trim }.
    .check = La marge du dessus a toujours { $seam-width } de largeur.
flat-felled-seam-fold = Replier { $under } de la marge large autour de la marge recoupée, et marquer la pliure au fer.
# $flat-on : les pièces sur lesquelles le repli se pique.
# Il est là où les pinces n’arrivent pas.
flat-felled-seam-lay-flat = Coucher le repli à plat sur { PIECE($flat-on) } et l’épingler.
    .check = Le repli a { $fell } de largeur sur toute la longueur et aucun bord brut ne se voit.
    .tolerance = { $fold-off } de plus ou de moins
    .remedy = Là où un bord brut se voit, recouper la marge de dessous et replier à nouveau.

## La seconde piqûre

flat-felled-seam-fell-ring = Le repli dessus, piquer à { $from-fold } de sa pliure à travers toutes les épaisseurs, { $stitch }, { $length } tout autour. Finir en repiquant trois points sur le début.
    .check = { flat-felled-seam-fell-flat.check }
    .remedy = { flat-felled-seam-fell-flat.remedy }
flat-felled-seam-fell-flat = Le repli dessus, piquer à { $from-fold } de sa pliure à travers toutes les épaisseurs, { $stitch }, { $length }, point d’arrêt aux deux bouts.
    .check = Les deux piqûres courent côte à côte, à { $apart } l’une de l’autre.
    .remedy = Découdre là où la piqûre a quitté le repli et repiquer.
