### Resserrer un bord en petits plis ronds à la main et les surjeter au bord qui les porte.

cartridge-pleats-title = Coudre { PIECE($edge) } à { PIECE($to) } en plis canons
cartridge-pleats-aim = { $cloth } de tissu tiennent sur { $length }, { $pleats } plis environ.

## Replier et marquer

cartridge-pleats-turn = Replier { EDGE($edge) } de { $turn } sur l’envers et marquer la pliure au fer.
cartridge-pleats-turn-carrier = Replier { EDGE($to) } de { $turn } sur l’envers et marquer la pliure au fer.
cartridge-pleats-dots = Marquer des points tous les { $stitch } le long { EDGE($edge, case: "of") }, à { $first-row } sous la pliure.
    .check = Il y a { $dots } points environ.

## Resserrer

cartridge-pleats-rows = Faire { $rows } rangs de points devant sur les repères, à { $apart } l’un de l’autre, avec un fil solide, chaque point exactement sous celui du dessus ; laisser de longs bouts de fil.
    .check = Les points de tous les rangs sont les uns sous les autres.
    .remedy = Retirer le rang décalé et le refaire : des rangs irréguliers ne forment pas de plis.
cartridge-pleats-draw = Tirer tous les rangs ensemble jusqu’à { $length } et nouer les bouts de fil.
    .check = { $pleats } plis environ sont côte à côte sur { $length }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Faire glisser les plis le long des fils jusqu’à ce qu’ils soient réguliers.

## Coudre

cartridge-pleats-whip = Poser { EDGE($edge) } contre { EDGE($to) }, endroit contre endroit, et y surjeter à la main chaque pli de deux points.
    .check = Aucun pli n’est oublié.
    .remedy = Fixer un pli oublié de deux points à lui.
