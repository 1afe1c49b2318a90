### Couper des lés qui s’élargissent vers le bas, deux dans chaque rectangle par une ligne en biais.
### $gores : combien ; $odd : le dernier rectangle n’en donne qu’un.

gores-title = Couper { PIECE($piece) } en lés évasés
gores-aim = { $gores } lés évasés, chacun de { $top } en haut et de { $hem } à l’ourlet une fois fini.
gores-lay = Poser à plat le rectangle { PIECE($piece, case: "of") }, { $wide } de large et { $high } de haut, le bord supérieur au loin.
gores-mark-pair = Sur le bord supérieur, marquer { $narrow } depuis le coin gauche, sur le bord inférieur { $broad } depuis le coin gauche. Tracer une ligne droite d’un repère à l’autre.
    .check = La ligne mesure { $slant }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Mesurer à nouveau les deux repères depuis le côté gauche.
# Un tissu qui a un sens : aucun lé ne peut être tête en bas.
gores-mark-one = Sur le bord supérieur, marquer { $narrow } depuis le coin gauche. De là, tracer une ligne droite jusqu’au coin inférieur droit.
    .check = { gores-mark-pair.check }
    .tolerance = { gores-mark-pair.tolerance }
    .remedy = { gores-mark-pair.remedy }
gores-cut = Couper d’un trait sur la ligne, les ciseaux à plat sur la table. Ne pas tirer sur les côtés en biais.
gores-name = { $odd ->
    [yes] Marquer comme haut le bout étroit de chaque lé. Du dernier rectangle, garder un seul lé ; l’autre reste.
   *[no] Marquer comme haut le bout étroit de chaque lé. Plus tard, coudre chaque côté droit à un côté en biais.
 }
