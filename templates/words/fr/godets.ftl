### Poser des pointes dans des fentes d’un bord inférieur, pour n’élargir que l’ourlet.
### $slit : depuis le bord coupé vers le haut ; $wide : ce qu’un godet ajoute à l’ourlet.

godets-title = { $many ->
    [one] Poser un godet dans { EDGE($edge) }
   *[other] Poser { $many } godets dans { EDGE($edge) }
 }
    .number = { $wide }
godets-aim = { $many ->
    [one] Le godet ajoute { $wide } à l’ourlet.
   *[other] Chaque godet ajoute { $wide } à l’ourlet.
 }

## Tracer, soutenir et couper les fentes

godets-mark = { $ring ->
    [yes] Marquer { EDGE($edge) } tous les { $every }, { $many } repères en tout, le premier à { $first } de { side-seam }. De chacun, tracer une ligne de { $slit } droit vers le haut, à angle droit avec le bord.
   *[no] Marquer { EDGE($edge) } tous les { $every }, { $many } repères en tout, le premier à { $first } d’un bout. De chacun, tracer une ligne de { $slit } droit vers le haut, à angle droit avec le bord.
 }
    .check = Toutes les lignes finissent au même niveau.
    .tolerance = { $mark-off } de plus ou de moins
    .remedy = Mesurer à nouveau depuis le bord, le long de la ligne.
godets-hold = Sur l’envers, poser un carré du même tissu, de { $patch } de côté, sous le bout supérieur de chaque ligne. Piquer à { $beside } de la ligne jusqu’au bout, un point en travers, et redescendre de l’autre côté, { $short }.
godets-cut = Couper chaque ligne entre les deux piqûres, jusqu’au dernier fil avant la pointe.
    .check = La pointe s’ouvre à plat, et aucun point n’est coupé.
    .remedy = Piquer encore une fois autour de la pointe et couper plus près.

## Poser

godets-pin = Poser un côté d’un godet sur un côté de sa fente, endroit contre endroit. À l’ourlet, les deux bords sont pris de { $seam-width } dans la couture ; vers la pointe, la fente glisse hors de la couture jusqu’à ce que seule sa piqûre soit prise. { pin-start } de la pointe vers le bas.
godets-sew = Coudre de la pointe vers le bas, à { $seam-width } du bord { PIECE($godet, case: "of") } et juste à côté de la piqûre de la fente, { $stitch }, avec quelques points arrière à la pointe.
    .check = Sur l’endroit, aucune piqûre de la fente ne se voit.
    .remedy = Recoudre un rien plus à l’intérieur, depuis la pointe.
godets-other = Rabattre le godet et coudre l’autre côté de même, encore de la pointe vers le bas. Repasser les marges vers la jupe et recouper le carré à { $patch-left }.
    .check = Aucun pli n’est pris à la pointe.
    .remedy = Découdre { $unpicked } des deux côtés de la pointe et les recoudre.
godets-level = Les coins { PIECE($godet, case: "of") } pendent de { $hangs } sous le bord de la jupe. Tracer une courbe de couture à couture, au niveau de ce bord aux deux bouts et touchant juste le bord inférieur au milieu, et couper dessus.
    .check = Aux deux coutures, le godet finit au niveau de la jupe.
    .remedy = Couper ce qui pend encore.
godets-measure = Mesurer { EDGE($edge) } : { $length }.
    .check = La longueur est de { $length }, et chaque godet finit au niveau de la jupe.
    .tolerance = { $off } de plus ou de moins
    .remedy = Couper ce qui dépasse sous le bord de la jupe.
