### Joindre les deux bouts d’une bande en rond, ou plusieurs lés en un seul rond.
### $pieces : les étages que la couture traverse. -panels : $copies d’entre eux forment un seul rond.

join-ends-title = Fermer { PIECE($pieces) } en rond
    .number = { $seam-width }
join-ends-title-panels = Assembler les lés { PIECE($pieces, case: "of") } en rond
    .number = { $seam-width }
join-ends-aim = { COUNT($pieces) ->
    [one] { PIECE($pieces, at: "start") } est fermée.
   *[other] { PIECE($pieces, at: "start") } sont fermées.
 }

## Piquer

join-ends-sew = { $singly ->
    [yes] Piquer { $length } à { $seam-width } des bouts, { $stitch }, point d’arrêt au début et à la fin. Ouvrir les marges à l’ongle.
   *[no] Piquer { $length } à { $seam-width } des bouts, { $stitch }, point d’arrêt au début et à la fin. Coucher à l’ongle les deux marges du même côté, l’un ou l’autre.
 }
# La bande a d’abord été raccordée de tronçons.
join-ends-sew-pieced = { join-ends-sew }
    .check = Sa marge est sur l’envers, comme celles des raccords.
join-ends-sew-panels = Piquer chaque couture, { $length }, à { $seam-width } du bord, { $stitch }, point d’arrêt au début et à la fin. Coucher à l’ongle les deux marges du même côté, à toutes les coutures dans le même sens.
join-ends-sew-panels-pieced = { join-ends-sew-panels }
    .check = Toutes les marges sont sur l’envers, comme celles des raccords.

# La couture reste ouverte par endroits : chaque endroit se marque d’abord.
seam-open-top = { $which ->
    [only] Sur l’envers, marquer la fin de l’ouverture, { $open } sous le bord supérieur, sur les deux bords que l’on assemble.
    [any] Sur l’envers, marquer la fin de l’ouverture, { $open } sous le bord supérieur, sur les deux bords d’une des coutures.
   *[numbered] Sur l’envers, marquer la fin de l’ouverture, { $open } sous le bord supérieur, sur les deux bords de { seam-named }.
 }
seam-open-hem = { $which ->
    [only] Sur l’envers, marquer le haut de la fente, { $open-at-hem } au-dessus du bord inférieur, sur les deux bords que l’on assemble.
    [any] Sur l’envers, marquer le haut de la fente, { $open-at-hem } au-dessus du bord inférieur, sur les deux bords d’une des coutures.
   *[numbered] Sur l’envers, marquer le haut de la fente, { $open-at-hem } au-dessus du bord inférieur, sur les deux bords de { seam-named }.
 }
seam-open-gap = { $which ->
    [only] Sur l’envers, marquer un espace de { $gap-from } à { $gap-to } sous le bord supérieur, sur les deux bords que l’on assemble.
    [any] Sur l’envers, marquer un espace de { $gap-from } à { $gap-to } sous le bord supérieur, sur les deux bords d’une des coutures.
   *[numbered] Sur l’envers, marquer un espace de { $gap-from } à { $gap-to } sous le bord supérieur, sur les deux bords de { seam-named }.
 }
seam-sewn = { $opens-above ->
    [yes] du repère de l’ouverture
   *[no] du bord supérieur
 }{ $opens-between ->
    [yes] { " " }jusqu’au repère supérieur de l’espace, puis de son repère inférieur
   *[no] { "" }
 } { $opens-below ->
    [yes] jusqu’au repère de la fente
   *[no] jusqu’au bord inférieur
 }
join-ends-sew-open = Piquer à { $seam-width } des bouts, { seam-sewn }, { $sewn } en tout, { $stitch }, quelques points arrière à chaque bout et à chaque repère. Ouvrir les marges avec les doigts.
    .check = Aucun point ne dépasse un repère, et ce qui doit rester ouvert l’est.
    .remedy = Découdre ce qui dépasse un repère et refaire là le point d’arrêt.
# Une seule des coutures reste ouverte : d’abord les autres.
join-ends-sew-closed = { $others ->
    [one] Piquer à { $seam-width } des bords, { $stitch }, quelques points arrière aux deux bouts. Piquer la couture sans repères d’un bord à l’autre, { $length }.
   *[other] Piquer à { $seam-width } des bords, { $stitch }, quelques points arrière aux deux bouts de chaque rang. Piquer les { $others } coutures sans repères d’un bord à l’autre, { $length } chacune.
 }
    .check = Aucune couture ne commence ni ne finit avant un bord.
    .remedy = Repiquer par-dessus le bout de la couture jusqu’au bord.
join-ends-sew-open-panels = De la couture repérée, ne piquer que la partie qui va { seam-sewn }, { $sewn } en tout, quelques points arrière à chaque bout et à chaque repère. Ouvrir avec les doigts les marges de toutes les coutures.
    .check = { join-ends-sew-open.check }
    .remedy = { join-ends-sew-open.remedy }

## Mesurer

join-ends-measure = { $open-ends ->
    [yes] Mesurer le tour du bord inférieur { PIECE($lowest, case: "of") }, d’un bout coupé de la fente à l’autre : { $round }.
   *[no] Mesurer le tour du bord inférieur { PIECE($lowest, case: "of") } : { $round }.
 }
    .check = { $open-ends ->
        [yes] Le tour mesure { $round } d’un bout à l’autre.
       *[no] Le tour mesure { $round }.
     }
    .tolerance = { $off } de plus ou de moins
    .remedy = { $panels ->
        [yes] Trop long : repiquer une couture un peu plus large. Trop court : en découdre une et la repiquer plus étroite.
       *[no] Trop long : repiquer la couture un peu plus large. Trop court : la découdre et la repiquer plus étroite.
     }
