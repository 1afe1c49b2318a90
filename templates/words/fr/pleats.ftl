### Plier un bord en plis couchés, ronds ou creux.

pleats-title = { $kind ->
    [knife] Plier { EDGE($edge) } en plis couchés
    [box] Plier { EDGE($edge) } en plis ronds
   *[inverted] Plier { EDGE($edge) } en plis creux
 }
pleats-aim = { $count ->
    [one] { $cloth } - { $length } = { $taken } tiennent dans { $count } pli de { $depth } de profondeur.
   *[other] { $cloth } - { $length } = { $taken } tiennent dans { $count } plis de { $depth } de profondeur chacun.
 }

## Repères

pleats-mark-ring = Marquer { EDGE($edge) } tous les { $every }, { $count } fois, le premier repère à la couture.
    .check = { $count } repères, le dernier à { $every } du premier.
    .tolerance = { $mark-off } en tout
    .remedy = Répartir ce qui reste entre tous les repères.
pleats-mark-flat = Marquer { EDGE($edge) } tous les { $every }, { $count } fois, à partir d’un bout.
    .check = { $count } repères, le dernier à { $every } du bout.
    .tolerance = { pleats-mark-ring.tolerance }
    .remedy = { pleats-mark-ring.remedy }
pleats-lines-knife = À chaque repère, tracer une seconde ligne { $twice } plus loin.
pleats-lines-box = À chaque repère, tracer une ligne à { $half-shown } de chaque côté.
pleats-lines-inverted = À chaque repère, tracer une ligne à { $twice } de chaque côté.

## Plier

pleats-fold-knife = Plier à la seconde ligne et ramener la pliure au premier repère, toutes les pliures du même côté ; { pin } chaque pli.
pleats-fold-box = Plier les deux lignes vers l’arrière, sur { $depth } de profondeur, de sorte que chaque pli rond touche le suivant ; { pin } chaque pliure.
pleats-fold-inverted = Ramener les deux lignes au repère qui est entre elles, de sorte que les deux pliures se rejoignent devant ; { pin } chaque pliure.

## Mesurer et fixer

pleats-measure-ring = Mesurer tout le tour du bord plissé : { $length }.
    .check = Il mesure { $length } et chaque pli montre { $shown }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Trop long : faire quelques plis plus profonds d’un cheveu. Trop court : moins profonds. Répartir sur beaucoup de plis.
pleats-measure-flat = Mesurer le bord plissé : { $length }.
    .check = { pleats-measure-ring.check }
    .tolerance = { pleats-measure-ring.tolerance }
    .remedy = { pleats-measure-ring.remedy }
pleats-sew-down = Piquer les plis à { $from-edge } du bord au point le plus long, { $length } ; cette piqûre reste dans la couture.
pleats-press = Repasser les plis depuis le haut, jusqu’où ils doivent rester vifs ; lever le fer, ne pas le faire glisser.
