### Joindre les deux bouts d’une bande en rond, ou plusieurs lés en un seul rond.
### $pieces : les étages que la couture traverse. -panels : $copies d’entre eux forment un seul rond.

join-ends-title = Fermer { PIECE($pieces) } en rond
join-ends-title-panels = Assembler les lés { PIECE($pieces, case: "of") } en rond
join-ends-aim = { COUNT($pieces) ->
    [one] { PIECE($pieces, at: "start") } est fermée.
   *[other] { PIECE($pieces, at: "start") } sont fermées.
 }

## Piquer

join-ends-sew = Piquer { $length } à { $seam-width } des bouts, { $stitch }, point d’arrêt au début et à la fin. Coucher à l’ongle les deux marges du même côté, l’un ou l’autre.
# La bande a d’abord été raccordée de tronçons.
join-ends-sew-pieced = { join-ends-sew }
    .check = Sa marge est sur l’envers, comme celles des raccords.
join-ends-sew-panels = Piquer { $length } à { $seam-width } du bord, { $stitch }, point d’arrêt au début et à la fin. Coucher à l’ongle les deux marges du même côté, à toutes les coutures dans le même sens.
join-ends-sew-panels-pieced = { join-ends-sew-panels }
    .check = Toutes les marges sont sur l’envers, comme celles des raccords.

## Mesurer

join-ends-measure = Mesurer le tour du bord inférieur { PIECE($lowest, case: "of") } : { $round }.
    .check = Le tour mesure { $round }.
    .tolerance = { $off } de plus ou de moins
    .remedy = { $panels ->
        [yes] Trop long : repiquer une couture un peu plus large. Trop court : en découdre une et la repiquer plus étroite.
       *[no] Trop long : repiquer la couture un peu plus large. Trop court : la découdre et la repiquer plus étroite.
     }
