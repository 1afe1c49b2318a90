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

# Dit seulement dans les messages suivants : ce que deviennent les marges ; une longue couture se repasse par une phrase à part.
join-ends-margins = { $margins ->
    [ironed] { "" }
    [apart] { " " }Ouvrir les marges à l’ongle.
   *[aside] { " " }Coucher à l’ongle les deux marges du même côté, l’un ou l’autre.
 }
join-ends-margins-panels = { $margins ->
    [ironed] { "" }
    [apart] { " " }Ouvrir à l’ongle les marges de toutes les coutures.
   *[aside] { " " }Coucher à l’ongle les deux marges du même côté, à toutes les coutures dans le même sens.
 }
join-ends-margins-open = { $margins ->
    [ironed] { "" }
   *[apart] { " " }Ouvrir les marges avec les doigts.
 }
join-ends-margins-open-panels = { $margins ->
    [ironed] { "" }
   *[apart] { " " }Ouvrir avec les doigts les marges de toutes les coutures.
 }
join-ends-sew = Piquer { $length } à { $seam-width } des bouts, { $stitch }, point d’arrêt au début et à la fin.{ join-ends-margins }
# La bande a d’abord été raccordée de tronçons.
join-ends-sew-pieced = { join-ends-sew }
    .check = Sa marge est sur l’envers, comme celles des raccords.
join-ends-sew-panels = Piquer chaque couture, { $length }, à { $seam-width } du bord, { $stitch }, point d’arrêt au début et à la fin.{ join-ends-margins-panels }
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
join-ends-sew-open = Piquer à { $seam-width } des bouts, { seam-sewn }, { $sewn } en tout, { $stitch }, quelques points arrière à chaque bout et à chaque repère.{ join-ends-margins-open }
    .check = Aucun point ne dépasse un repère, et ce qui doit rester ouvert l’est.
    .remedy = Découdre ce qui dépasse un repère et refaire là le point d’arrêt.
# Une seule des coutures reste ouverte : d’abord les autres.
join-ends-sew-closed = { $others ->
    [one] Piquer à { $seam-width } des bords, { $stitch }, quelques points arrière aux deux bouts. Piquer la couture sans repères d’un bord à l’autre, { $length }.
   *[other] Piquer à { $seam-width } des bords, { $stitch }, quelques points arrière aux deux bouts de chaque rang. Piquer les { $others } coutures sans repères d’un bord à l’autre, { $length } chacune.
 }
    .check = Aucune couture ne commence ni ne finit avant un bord.
    .remedy = Repiquer par-dessus le bout de la couture jusqu’au bord.
join-ends-sew-open-panels = De la couture repérée, ne piquer que la partie qui va { seam-sewn }, { $sewn } en tout, quelques points arrière à chaque bout et à chaque repère.{ join-ends-margins-open-panels }
    .check = { join-ends-sew-open.check }
    .remedy = { join-ends-sew-open.remedy }

join-ends-press = { $panels ->
    [yes] Ouvrir au fer les marges de toutes les coutures, sur l’envers et sur toute leur longueur.
   *[no] Ouvrir au fer les marges de la couture, sur l’envers et sur toute sa longueur.
 }
    .check = Sur l’endroit, aucun pli ne longe une couture.
    .remedy = Tirer les deux pièces de part et d’autre de la couture et repasser.

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
# Un tissu qui s’évase : en haut il a une autre longueur.
join-ends-measure-top = { $open-top ->
    [yes] Mesurer aussi le bord supérieur { PIECE($highest, case: "of") }, à plat et sans tirer, d’un bout coupé de l’ouverture à l’autre : { $round-top }.
   *[no] Mesurer aussi le tour du bord supérieur { PIECE($highest, case: "of") }, à plat et sans tirer : { $round-top }.
 }
    .check = Il mesure { $round-top }, avant que la couture du haut ne prenne sa marge.
    .tolerance = { $off-top } de plus ou de moins
    .remedy = Trop long : repiquer une couture un peu plus large en haut, à rien { $run-out } plus bas. Trop court : la découdre jusque-là et la repiquer plus étroite.
