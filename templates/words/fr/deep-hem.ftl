### Relever un ourlet haut et le fixer à la main ou à la machine.
### $edge : le bord ourlé. $neat : il a été surfilé, et n’est pas rentré.

deep-hem-title = Faire un ourlet haut { EDGE($edge, case: "to") }
    .number = { $depth }
deep-hem-aim = Un ourlet de { $depth } donne du poids au bord.

## Replier

deep-hem-turn-under = Replier { EDGE($edge) } de { $under } sur l’envers et marquer la pliure au fer.
# Sur un tissu évasé, ce qui est relevé est plus long de $fuller que la ligne sur laquelle il se pose.
deep-hem-ease-row = Piquer un rang, { $long-stitch }, à { $row } { $neat ->
    [yes] du bord surfilé
   *[no] du pli repassé
 }, de couture à couture, en laissant un doigt de fil aux deux bouts de chaque passage. Régler ensuite de nouveau la machine{ "\u00A0" }: { $seam-stitch }.
deep-hem-ease-pull = Le bord intérieur a { $fuller } de plus que la ligne en dessous{ "\u00A0" }: à chaque couture, tirer les fils du rang jusqu’à ce que l’ourlet soit à plat partout. Repasser alors l’ourlet avec une pattemouille.
    .check = Le bord intérieur est à plat sur { PIECE($edge) }, et aucun pli ne se forme.
    .remedy = Là où un pli se forme, lisser le tissu le long du rang des deux côtés et repasser.
deep-hem-fold-up-ring = { $neat ->
    [yes] Replier { EDGE($edge) } de { $depth } sur l’envers et marquer la pliure au fer. { pin-start } l’ourlet, d’abord aux coutures.
   *[no] Le replier encore de { $depth } et marquer la nouvelle pliure au fer. { pin-start } l’ourlet, d’abord aux coutures.
 }
    .check = L’ourlet a { $depth } de hauteur sur toute la longueur.
    .tolerance = { $off } de plus ou de moins
    .remedy = Déplier et repasser à nouveau là où il dévie.
deep-hem-fold-up-flat = { $neat ->
    [yes] Replier { EDGE($edge) } de { $depth } sur l’envers et marquer la pliure au fer. { pin-start } l’ourlet, d’abord aux deux bouts.
   *[no] Le replier encore de { $depth } et marquer la nouvelle pliure au fer. { pin-start } l’ourlet, d’abord aux deux bouts.
 }
    .check = { deep-hem-fold-up-ring.check }
    .tolerance = { deep-hem-fold-up-ring.tolerance }
    .remedy = { deep-hem-fold-up-ring.remedy }

## Fixer

deep-hem-fasten-hand = { $neat ->
    [yes] Envers dessus, fixer le bord surfilé au point invisible, un point tous les { $every }, { $length }. Prendre un seul fil { PIECE($edge, case: "of") }, puis continuer à l’intérieur du bord. Ne pas serrer. Arrêter le fil dans l’ourlet aux deux bouts.
   *[no] Envers dessus, fixer la pliure intérieure au point invisible, un point tous les { $every }, { $length }. Prendre un seul fil { PIECE($edge, case: "of") }, puis continuer à l’intérieur de la pliure. Ne pas serrer. Arrêter le fil dans l’ourlet aux deux bouts.
 }
    .check = Aucun point ne fronce et aucun ne se voit sur l’endroit.
    .remedy = Couper le point qui fronce et le refaire plus lâche.
deep-hem-fasten-machine-ring = { $neat ->
    [yes] Commencer à { side-seam }, envers dessus. Piquer à { $from-fold } du bord surfilé, { $length } tout autour, { $stitch }. Finir en repiquant trois points sur le début.
   *[no] Commencer à { side-seam }, envers dessus. Piquer l’ourlet à { $from-fold } de sa pliure intérieure, { $length } tout autour, { $stitch }. Finir en repiquant trois points sur le début.
 }
    .check = L’ourlet est pris partout.
    .remedy = Repiquer le passage qui a échappé.
deep-hem-fasten-machine-flat = { $neat ->
    [yes] Envers dessus, piquer à { $from-fold } du bord surfilé, { $length }, { $stitch }, point d’arrêt aux deux bouts.
   *[no] Envers dessus, piquer l’ourlet à { $from-fold } de sa pliure intérieure, { $length }, { $stitch }, point d’arrêt aux deux bouts.
 }
    .check = { deep-hem-fasten-machine-ring.check }
    .remedy = { deep-hem-fasten-machine-ring.remedy }
