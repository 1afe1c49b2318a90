### Monter une poche plaquée sur une pièce.
### $pocket : la poche ; $on : la pièce du dessous ; $pockets : combien.

patch-pocket-title = { $pockets ->
    [one] Plaquer { PIECE($pocket) } sur { PIECE($on) }
   *[other] Plaquer chaque exemplaire { PIECE($pocket, case: "of") } sur { PIECE($on) }
 }
patch-pocket-aim = { $pockets ->
    [one] La poche a { $wide } de large et { $high } de haut, et s’ouvre en haut.
   *[other] Chaque poche a { $wide } de large et { $high } de haut, et s’ouvre en haut.
 }

## Préparer

patch-pocket-hem = Replier au fer le bord supérieur { PIECE($pocket, case: "of") } de { $under } sur l’envers, puis encore de { $hem }. Piquer à { $edge } de la pliure intérieure, d’un côté à l’autre, { $stitch }.
patch-pocket-press = Replier en biais les deux coins du bas, puis replier au fer { $turn } des deux côtés et du bas sur l’envers.
    .check = La poche a { $wide } de large et { $high } de haut, ses coins sont d’équerre.
    .tolerance = { $off } de plus ou de moins
    .remedy = Repasser la pliure là où elle s’écarte.
# $finished : le bord supérieur de la pièce du dessous est déjà pris dans une couture, d’où l’on mesure.
patch-pocket-mark-ring = { $finished ->
    [yes] Sur l’endroit { PIECE($on, case: "of") }, marquer les deux coins du haut à { $from-edge } sous la couture supérieure : à { $near } et à { $far } de { side-seam }.
   *[no] Sur l’endroit { PIECE($on, case: "of") }, marquer les deux coins du haut à { $from-edge } sous le bord supérieur coupé : à { $near } et à { $far } de { side-seam }.
 }
    .check = { patch-pocket-level.check }
    .tolerance = { patch-pocket-level.tolerance }
    .remedy = { patch-pocket-level.remedy }
patch-pocket-mark-flat = { $finished ->
    [yes] Sur l’endroit { PIECE($on, case: "of") }, marquer les deux coins du haut à { $from-edge } sous la couture supérieure : à { $near } et à { $far } du bout gauche tel qu’il est maintenant.
   *[no] Sur l’endroit { PIECE($on, case: "of") }, marquer les deux coins du haut à { $from-edge } sous le bord supérieur coupé : à { $near } et à { $far } du bout gauche tel qu’il est maintenant.
 }
    .check = { patch-pocket-level.check }
    .tolerance = { patch-pocket-level.tolerance }
    .remedy = { patch-pocket-level.remedy }
# Dit seulement comme parties des deux ci-dessus.
patch-pocket-level =
    .check = Les deux repères sont à la même hauteur.
    .tolerance = { $level-off } de plus ou de moins
    .remedy = Mesurer à nouveau depuis le bord supérieur.
patch-pocket-mark-other = Marquer l’autre poche à la même hauteur et à la même distance de l’autre côté.

## Monter

patch-pocket-pin = Poser { PIECE($pocket) }, endroit dessus, les coins du haut aux repères, et l’épingler.
patch-pocket-sew = Piquer à { $edge } du bord en descendant d’un côté, le long du bas et en remontant de l’autre, { $stitch }. Aux deux coins du haut, piquer un triangle de { $triangle } et un point d’arrêt.
    .check = La poche est à plat, une main y entre et aucune épingle n’y est restée.
    .remedy = Découdre le côté qui tire, lisser et repiquer.
