### Border un bord brut, ou la marge d’une couture, d’un ruban.
### $edge : le bord, ou les pièces de la couture ; $tape : le nom du ruban.

bound-edge-title-edge = Border { EDGE($edge) }
    .number = { $length }
bound-edge-title-margin = Border la marge de couture { PIECE($edge, case: "of") }
    .number = { $length }
bound-edge-aim = Le bord brut est enfermé dans un ruban ; il ne s’effiloche pas et ne gratte pas.

## Plier le ruban

bound-edge-cut = Couper { $cut } du ruban ({ $tape }).
bound-edge-fold = Plier le ruban en deux dans la longueur, une moitié plus large d’un cheveu que l’autre, et marquer la pliure au fer.

## Le poser à cheval sur le bord

bound-edge-pin-edge-ring = Commencer à côté de { side-seam }. { pin-start } le ruban à cheval sur { EDGE($edge) }, le bord brut contre sa pliure, la moitié la plus large sur l’envers.
    .check = Le ruban couvre { $half } des deux côtés.
    .tolerance = { $off } de plus ou de moins
    .remedy = Repousser le bord dans la pliure là où il a glissé.
bound-edge-pin-edge-flat = { pin-start } le ruban à cheval sur { EDGE($edge) }, le bord brut contre sa pliure, la moitié la plus large sur l’envers.
    .check = { bound-edge-pin-edge-ring.check }
    .tolerance = { bound-edge-pin-edge-ring.tolerance }
    .remedy = { bound-edge-pin-edge-ring.remedy }
bound-edge-pin-margin = { pin-start } le ruban à cheval sur la marge de couture { PIECE($edge, case: "of") }, le bord brut contre sa pliure, la moitié la plus large dessous.
    .check = { bound-edge-pin-edge-ring.check }
    .tolerance = { bound-edge-pin-edge-ring.tolerance }
    .remedy = { bound-edge-pin-edge-ring.remedy }
bound-edge-lap = Replier { $half-lap } du bout du ruban, et poser le repli de { $half-lap } sur le début.
# Les bouts du tissu sont déjà finis.
bound-edge-ends = Replier { $under } du ruban aux deux bouts, les replis au ras des bouts du tissu.

## Piquer

bound-edge-sew-ring = La moitié la plus étroite dessus, piquer à { $edge-stitch } de son bord libre, { $length } tout autour, { $stitch }. Finir en repiquant trois points sur le début.
    .check = La piqûre a pris aussi la moitié de dessous.
    .remedy = Découdre là où elle a échappé, tirer la moitié de dessous vers l’extérieur et repiquer.
bound-edge-sew-flat = La moitié la plus étroite dessus, piquer à { $edge-stitch } de son bord libre, { $length }, { $stitch }, point d’arrêt aux deux bouts.
    .check = { bound-edge-sew-ring.check }
    .remedy = { bound-edge-sew-ring.remedy }
