### Poser un bord replié sur un autre bord et le surpiquer.
### $to : le bord du dessus. $edge : le bord sur lequel il se pose, froncé ou plat. -ring : les deux sont des ronds.

lapped-seam-title = Couture à recouvrement : { PIECE($to) } sur { PIECE($edge) }
    .number = { $lap }
lapped-seam-aim = La couture est plate et sa piqûre se voit sur l’endroit.

## Le bord du dessus

lapped-seam-fold = Replier { EDGE($to) } de { $turn } sur l’envers et marquer la pliure au fer.
lapped-seam-mark-ring = { $turned ->
    [yes] Marquer la pliure { PIECE($to, case: "of") } sur l’endroit tous les { $part }, le premier repère à { side-seam }.
   *[no] Marquer { EDGE($to) } sur l’endroit tous les { $part }, le premier repère à { side-seam }.
 }
lapped-seam-mark-flat = { $turned ->
    [yes] Marquer la pliure { PIECE($to, case: "of") } sur l’endroit tous les { $part }.
   *[no] Marquer { EDGE($to) } sur l’endroit tous les { $part }.
 }

## Le bord du dessous

lapped-seam-line = Tracer sur l’endroit une ligne à { $lap } { EDGE($edge, case: "of") }.

## Poser

lapped-seam-lay-ring = { $turned ->
    [yes] Mettre les deux à l’endroit et enfiler { PIECE($to) } sur { PIECE($edge) }, la pliure sur cette ligne.
   *[no] Mettre les deux à l’endroit et enfiler { PIECE($to) } sur { PIECE($edge) }, le bord coupé sur cette ligne.
 }
lapped-seam-lay-flat = { $turned ->
    [yes] Poser la pliure { PIECE($to, case: "of") } sur cette ligne, les deux endroits dessus.
   *[no] Poser { EDGE($to) } sur cette ligne, les deux endroits dessus.
 }
# Elle est là où les pinces n’arrivent pas : $hold est toujours les épingles.
lapped-seam-pin = { match-and-pin }
    .check = { COUNT($edge) ->
        [one] { PIECE($edge, at: "start") } est partout engagée dessous de { $lap }.
       *[other] { PIECE($edge, at: "start") } sont partout engagées dessous de { $lap }.
     }
    .tolerance = { $lap-off } de plus ou de moins
    .remedy = Déplacer là où le bord a quitté la ligne.

## Piquer

lapped-seam-sew-ring = { $turned ->
    [yes] Piquer à { $from-fold } de la pliure, { $stitch }, { $length } tout autour. Finir en repiquant trois points sur le début.
   *[no] Piquer à { $from-fold } du bord du dessus, { $stitch }, { $length } tout autour. Finir en repiquant trois points sur le début.
 }
    .check = { lapped-seam-sew-flat.check }
    .remedy = { lapped-seam-sew-flat.remedy }
lapped-seam-sew-flat = { $turned ->
    [yes] Piquer à { $from-fold } de la pliure, { $stitch }, { $length }, point d’arrêt aux deux bouts.
   *[no] Piquer à { $from-fold } du bord du dessus, { $stitch }, { $length }, point d’arrêt aux deux bouts.
 }
    .check = Le bord du dessous est pris sur toute la longueur ; le sentir au doigt sur l’envers.
    .remedy = Découdre là où il a échappé, le pousser jusqu’à la ligne et repiquer.
