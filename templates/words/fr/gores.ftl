### Couper des lés qui s’élargissent vers le bas, tête-bêche dans des rectangles.
### $gores : combien ; $odd : le dernier rectangle en donne moins que les autres.

gores-title = Couper { PIECE($piece) } en lés évasés
gores-aim = { $gores } lés évasés, chacun de { $top } en haut et de { $hem } à l’ourlet une fois fini.
gores-lay = { $turns ->
    [yes] Poser à plat le rectangle { PIECE($piece, case: "of") }, envers dessus, { $wide } de large et { $high } de haut. L’un ou l’autre de ses côtés de { $wide } peut être celui du haut.
   *[no] Poser à plat le rectangle { PIECE($piece, case: "of") }, envers dessus, { $wide } de large et { $high } de haut, le bord supérieur loin de soi.
 }
gores-mark-pair = Sur le bord supérieur, marquer { $narrow } depuis le coin gauche, sur le bord inférieur { $broad } depuis le coin gauche. Tracer une ligne droite d’un repère à l’autre.
    .check = La ligne mesure { $slant }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Mesurer à nouveau les deux repères depuis le côté gauche.
# Un tissu qui a un sens : aucun lé ne peut être tête en bas.
gores-mark-one = Sur le bord supérieur, marquer { $narrow } depuis le coin gauche. De là, tracer une ligne droite jusqu’au coin inférieur droit.
    .check = { gores-mark-pair.check }
    .tolerance = { gores-mark-pair.tolerance }
    .remedy = { gores-mark-pair.remedy }

## Deux côtés en biais, plusieurs à la file

# Une sorte de lés dans le but de l’étape.
gores-width = { $place ->
    [front] { $many } devant, { $top } en haut et { $hem } à l’ourlet
    [back] { $many } au dos, { $top } en haut et { $hem } à l’ourlet
   *[side] { $many } sur les côtés, { $top } en haut et { $hem } à l’ourlet
 }
gores-aim-differ = { $gores } lés évasés, une fois finis : { $widths }.
gores-square = { $turns ->
    [yes] Poser à plat le rectangle { PIECE($piece, case: "of") }, envers dessus, { $wide } de large et { $high } de haut. L’un ou l’autre de ses côtés de { $wide } peut être celui du haut.
   *[no] Poser à plat le rectangle { PIECE($piece, case: "of") }, envers dessus, { $wide } de large et { $high } de haut, le bord supérieur loin de soi.
 }
    .check = Ses deux diagonales mesurent { $diagonal }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Redresser les bords supérieur et inférieur à angle droit avec le côté avant de marquer.
# Là où une ligne touche un bord : aucune distance.
gores-corner = 0
gores-line = { $line } { $upper } en haut, { $lower } en bas
gores-mark = { $line } { $at }
gores-mark-row = { $which ->
    [first] { $times ->
        [one] Sur un rectangle, marquer le long du bord supérieur, depuis son coin gauche : { $upper-marks }.
       *[other] Sur { $times } rectangles, marquer le long du bord supérieur, depuis son coin gauche : { $upper-marks }.
    }
    [next] { $times ->
        [one] Sur un autre rectangle, marquer le long du bord supérieur, depuis son coin gauche : { $upper-marks }.
       *[other] Sur { $times } autres rectangles, marquer le long du bord supérieur, depuis son coin gauche : { $upper-marks }.
    }
    [last] { $times ->
        [one] Sur l’autre rectangle, marquer le long du bord supérieur, depuis son coin gauche : { $upper-marks }.
       *[other] Sur les { $times } autres rectangles, marquer le long du bord supérieur, depuis son coin gauche : { $upper-marks }.
    }
   *[all] Marquer le long du bord supérieur, depuis son coin gauche : { $upper-marks }.
 }
gores-mark-lower = Y marquer le long du bord inférieur, depuis son coin gauche : { $lower-marks }.
gores-draw-row = Tracer chaque ligne droite de son repère du haut à celui du bas.
    .check = { $alike ->
        [yes] Chaque ligne mesure { $longest }.
       *[no] La ligne la plus courte mesure { $shortest }, la plus longue { $longest }.
     }
    .tolerance = { $off } de plus ou de moins
    .remedy = Mesurer à nouveau ses deux repères depuis les coins gauches.
gores-name-row = { $which ->
    [first] { $times ->
        [one] Sur un rectangle, écrire la place de chaque lé à son bout étroit, de gauche à droite : { $places }.
       *[other] Sur { $times } rectangles, écrire la place de chaque lé à son bout étroit, de gauche à droite : { $places }.
    }
    [next] { $times ->
        [one] Sur un autre rectangle, écrire la place de chaque lé à son bout étroit, de gauche à droite : { $places }.
       *[other] Sur { $times } autres rectangles, écrire la place de chaque lé à son bout étroit, de gauche à droite : { $places }.
    }
    [last] { $times ->
        [one] Sur l’autre rectangle, écrire la place de chaque lé à son bout étroit, de gauche à droite : { $places }.
       *[other] Sur les { $times } autres rectangles, écrire la place de chaque lé à son bout étroit, de gauche à droite : { $places }.
    }
   *[all] Écrire la place de chaque lé à son bout étroit, de gauche à droite : { $places }.
 }

## Couper et marquer

gores-cut = Couper d’un trait sur chaque ligne, les ciseaux à plat sur la table. Ne pas tirer sur les côtés en biais.
gores-name = { $odd ->
    [yes] Marquer comme haut le bout étroit de chaque lé. Du dernier rectangle, garder un seul lé ; l’autre reste.
   *[no] Marquer comme haut le bout étroit de chaque lé. Plus tard, coudre chaque côté droit à un côté en biais.
 }
gores-name-both = Marquer comme haut le bout étroit de chaque lé. Ce qui se trouve à côté des lés reste. Les deux côtés d’un lé ont le même biais : deux lés quelconques s’assemblent. L’étiquette s’enlève maintenant : ce qui est écrit sur les lés la remplace.
gores-order = Ce qui se trouve à côté des lés reste. Empiler les lés dans l’ordre où ils sont cousus côte à côte : { $order }. L’étiquette s’enlève maintenant : ce qui est écrit sur les lés la remplace.
