### Coudre un rang sur une ligne en travers d’une pièce, pour qu’il tombe de là.
### $edge : le bord supérieur du rang ; $on : la pièce qui le porte.

sew-on-title = Coudre { PIECE($edge) } sur { PIECE($on) }
    .number = { $from-edge }
sew-on-aim = { COUNT($edge) ->
    [one] { PIECE($edge, at: "start") } tombe de { $hangs } depuis une ligne longue de { $length } et cache sa propre couture.
   *[other] { PIECE($edge, at: "start") } tombent de { $hangs } depuis une ligne longue de { $length } et cachent leur propre couture.
 }

## Marquer

sew-on-mark-parts-ring = { $parts ->
    [8] Marquer les huitièmes de la ligne, tous les { $part }, le premier repère à { side-seam }.
   *[4] Marquer les quarts de la ligne, tous les { $part }, le premier repère à { side-seam }.
 }
sew-on-mark-parts-flat = { $parts ->
    [8] Marquer les huitièmes de la ligne, tous les { $part }.
   *[4] Marquer les quarts de la ligne, tous les { $part }.
 }

## Monter

sew-on-lay = Poser { PIECE($edge) } sur { PIECE($on) }, endroit contre endroit et l’ourlet vers le haut, le bord supérieur à { $seam-width } sous la ligne.
    .check = L’ourlet est tourné vers le haut { PIECE($on, case: "of") }.
    .remedy = Retourner : cousu dans l’autre sens, l’envers se verrait.
sew-on-pin = Faire coïncider { match-places }, et y { pin } d’abord. Puis { pin } tous les { $spacing } entre eux : { pins-needed } environ.
sew-on-sew-ring = Piquer à { $seam-width } du bord supérieur, sur la ligne, { $length } tout autour, { $stitch }. Finir en repiquant trois points sur le début.
    .check = Dessous, { PIECE($on) } est lisse : aucun pli n’est pris.
    .remedy = Découdre sur une largeur de main, lisser et repiquer.
sew-on-sew-flat = Piquer à { $seam-width } du bord supérieur, sur la ligne, { $length }, { $stitch }, point d’arrêt aux deux bouts.
    .check = { sew-on-sew-ring.check }
    .remedy = { sew-on-sew-ring.remedy }
sew-on-turn-down = Rabattre { PIECE($edge) } par-dessus la couture et marquer le pli avec les doigts.
    .check = L’ourlet pend partout { $hangs } sous le pli, et aucune marge ne se voit.
    .tolerance = { $level-off } de plus ou de moins
    .remedy = S’il pend de travers, le bord a quitté la ligne : découdre là et repiquer.
