### Plier un bord en plis couchés, ronds ou creux.

pleats-title = { $kind ->
    [knife] Plier { EDGE($edge) } en plis couchés
    [box] Plier { EDGE($edge) } en plis ronds
   *[inverted] Plier { EDGE($edge) } en plis creux
 }
    .number = { $cloth } → { $length }
pleats-aim = { $count ->
    [one] { $cloth } - { $length } = { $taken } tiennent dans { $count } pli de { $depth } de profondeur.
   *[other] { $cloth } - { $length } = { $taken } tiennent dans { $count } plis de { $depth } de profondeur chacun.
 }

## Repères

pleats-mark-ring = { $count ->
    [one] Marquer { EDGE($edge) } une fois, à la couture.
   *[other] Marquer { EDGE($edge) } tous les { $every }, { $count } fois, le premier repère à la couture.
 }
    .check = { $count ->
        [one] { $count } repère.
       *[other] { $count } repères, le dernier à { $every } du premier.
     }
    .tolerance = { $mark-off } en tout
    .remedy = Répartir ce qui reste entre tous les repères.
# Les plis couchés commencent à leurs repères.
pleats-mark-flat = { $count ->
    [one] Marquer { EDGE($edge) } une fois, à un bout.
   *[other] Marquer { EDGE($edge) } tous les { $every }, { $count } fois, à partir d’un bout.
 }
    .check = { $count ->
        [one] { $count } repère.
       *[other] { $count } repères, le dernier à { $every } de l’autre bout.
     }
    .tolerance = { pleats-mark-ring.tolerance }
    .remedy = { pleats-mark-ring.remedy }
# Les plis ronds et creux ont leurs repères au milieu.
pleats-mark-flat-middles = { $count ->
    [one] Marquer { EDGE($edge) } une fois, au milieu.
   *[other] Marquer { EDGE($edge) } tous les { $every }, { $count } fois, le premier repère à { $half } d’un bout.
 }
    .check = { $count ->
        [one] { $count } repère, à { $half } des deux bouts.
       *[other] { $count } repères, le dernier à { $half } de l’autre bout.
     }
    .tolerance = { pleats-mark-ring.tolerance }
    .remedy = { pleats-mark-ring.remedy }
pleats-lines-knife = À chaque repère, tracer une seconde ligne { $twice } plus loin.
pleats-lines-box = À chaque repère, tracer une ligne à { $half-shown } de chaque côté.
pleats-lines-inverted = À chaque repère, tracer une ligne à { $twice } de chaque côté.

## Plier

pleats-fold-knife = Plier à la seconde ligne et ramener la pliure au premier repère, toutes les pliures du même côté. { pin-start } chaque pli.
pleats-fold-box = Plier les deux lignes vers l’arrière, sur { $depth } de profondeur, de sorte que chaque pli rond touche le suivant. { pin-start } chaque pliure.
pleats-fold-inverted = Ramener les deux lignes au repère qui est entre elles, de sorte que les deux pliures se rejoignent devant. { pin-start } chaque pliure.

## Mesurer et fixer

pleats-measure-ring = Mesurer tout le tour du bord plissé : { $length }.
    .check = Il mesure { $length } et chaque pli montre { $shown }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Trop long : faire quelques plis plus profonds d’un cheveu. Trop court : moins profonds. Répartir sur beaucoup de plis.
pleats-measure-flat = Mesurer le bord plissé : { $length }.
    .check = { pleats-measure-ring.check }
    .tolerance = { pleats-measure-ring.tolerance }
    .remedy = { pleats-measure-ring.remedy }
pleats-sew-down = Piquer les plis à { $from-edge } du bord au point le plus long, { $length }. Cette piqûre reste dans la couture.
pleats-press = Repasser les plis depuis le haut, aussi bas qu’ils doivent rester vifs. Lever le fer et le poser, sans le faire glisser.
