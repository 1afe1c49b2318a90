### Resserrer un bord en petits plis ronds à la main et les surjeter au bord qui les porte.

cartridge-pleats-title = Coudre { PIECE($edge) } à { PIECE($to) } en plis canons
    .number = { $cloth } → { $length }
cartridge-pleats-aim = { $cloth } de tissu tiennent sur { $length }, { $pleats } plis environ.

## Replier et marquer

cartridge-pleats-turn = Replier { EDGE($edge) } de { $turn } sur l’envers et marquer la pliure au fer.
cartridge-pleats-turn-carrier = Replier { EDGE($to) } de { $turn } sur l’envers et marquer la pliure au fer.
cartridge-pleats-mark-ring = { $parts ->
    [8] Marquer les huitièmes des deux pliures, le premier repère à la couture de côté : { PIECE($edge) } tous les { $cloth-part }, { PIECE($to) } tous les { $part }.
   *[4] Marquer les quarts des deux pliures, le premier repère à la couture de côté : { PIECE($edge) } tous les { $cloth-part }, { PIECE($to) } tous les { $part }.
 }
cartridge-pleats-mark-flat = { $parts ->
    [8] Marquer les huitièmes des deux pliures : { PIECE($edge) } tous les { $cloth-part }, { PIECE($to) } tous les { $part }.
   *[4] Marquer les quarts des deux pliures : { PIECE($edge) } tous les { $cloth-part }, { PIECE($to) } tous les { $part }.
 }
cartridge-pleats-dots = Marquer { $rows } rangs de points sur l’envers { PIECE($edge, case: "of") }, le premier à { $first-row } sous la pliure, les rangs à { $apart } l’un de l’autre. Dans chaque rang, les points sont à { $stitch } l’un de l’autre, chacun sous celui du dessus.
    .check = Il y a { $dots } points environ dans chaque rang.

## Resserrer

# $runs, $per-run : voir `rows-runs`.
cartridge-pleats-rows = { $in-runs ->
    [yes] { $per-run ->
        [one] Faire des points devant de repère en repère avec un fil solide, en { $runs } sections, d’une marque à la suivante. Commencer chaque section par un fil neuf et un nœud, dans chaque rang, et laisser pendre { $tail } à sa fin.
       *[other] { $parts ->
            [8] Faire des points devant de repère en repère avec un fil solide, en { $runs } sections de { $per-run } huitièmes chacune. Commencer chaque section par un fil neuf et un nœud, dans chaque rang, et laisser pendre { $tail } à sa fin.
           *[4] Faire des points devant de repère en repère avec un fil solide, en { $runs } sections de { $per-run } quarts chacune. Commencer chaque section par un fil neuf et un nœud, dans chaque rang, et laisser pendre { $tail } à sa fin.
        }
    }
   *[no] Faire des points devant de repère en repère avec un fil solide, un rang après l’autre. Commencer chaque rang par un fil neuf et un nœud, et laisser pendre { $tail } à sa fin.
 }
    .check = Les points de tous les rangs sont les uns sous les autres.
    .remedy = Retirer le rang décalé et le refaire : des rangs irréguliers ne forment pas de plis.
cartridge-pleats-draw = { $in-runs ->
    [yes] { $parts ->
        [8] Tirer tous les rangs ensemble, section par section, jusqu’à ce que chaque huitième mesure { $part }. Piquer une épingle en travers au bout de chaque section et enrouler les bouts de fil autour.
       *[4] Tirer tous les rangs ensemble, section par section, jusqu’à ce que chaque quart mesure { $part }. Piquer une épingle en travers au bout de chaque section et enrouler les bouts de fil autour.
    }
   *[no] { $parts ->
        [8] Tirer tous les rangs ensemble jusqu’à ce que chaque huitième mesure { $part }. Piquer une épingle en travers à leur bout et enrouler les bouts de fil autour.
       *[4] Tirer tous les rangs ensemble jusqu’à ce que chaque quart mesure { $part }. Piquer une épingle en travers à leur bout et enrouler les bouts de fil autour.
    }
 }
    .check = { $pleats } plis environ sont côte à côte sur { $length }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Faire glisser les plis le long des fils jusqu’à ce qu’ils soient réguliers.
cartridge-pleats-knot = { $in-runs ->
    [yes] Ôter ces épingles, nouer ensemble les bouts de fil de chaque section, et les couper à { $knot }.
   *[no] Ôter cette épingle, nouer ensemble les bouts de fil de tous les rangs, et les couper à { $knot }.
 }

## Coudre

cartridge-pleats-pin = Poser la pliure plissée contre la pliure { PIECE($to, case: "of") }, endroit contre endroit, repère sur repère, et { pin } aux repères.
cartridge-pleats-whip = Surjeter à la main chaque pli à la pliure { PIECE($to, case: "of") }, de deux points : { $stitches } environ en tout.
    .check = Aucun pli n’est oublié.
    .remedy = Fixer un pli oublié de deux points à lui.
