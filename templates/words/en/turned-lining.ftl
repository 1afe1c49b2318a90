### Sew band and lining to the gathered layers so that the lining, turned in, hides every margin.
### $band is the band; $lining the lining, $lining-edge its top edge; $to the top edge of the layers, $layers their pieces.

turned-lining-title = Sew on { PIECE($band) } and { PIECE($lining) }
turned-lining-aim = { PIECE($band, at: "start") } stands at the top, and every margin lies between the layers and { PIECE($lining) }.

## Mark

turned-lining-mark-band = { $parts ->
    [8] Mark the raw edges of { PIECE($band) } in eighths, every { $part }, the first at the upright seam that closed the band.
   *[4] Mark the raw edges of { PIECE($band) } in quarters, every { $part }, the first at the upright seam that closed the band.
 }
# $marked: an edge that bears no marks yet.
turned-lining-mark = { $parts ->
    [8] Mark { EDGE($marked) } in eighths on both faces, the first at the side seam.
   *[4] Mark { EDGE($marked) } in quarters on both faces, the first at the side seam.
 }

## The band on the lining

turned-lining-lay-band = { $out ->
    [yes] Turn { PIECE($lining) } inside out. Slip { PIECE($band) } over it, the fold towards the hem, its raw edges level with { EDGE($lining-edge) }. The half with the opening lies against the wrong side of the lining, which will face the legs.
   *[no] Turn { PIECE($lining) } right side out. Slip { PIECE($band) } over it, the fold towards the hem, its raw edges level with { EDGE($lining-edge) }. The half with the opening lies against the right side of the lining, which will face the legs.
 }
    .check = The opening is out of sight, between the band and the lining.
turned-lining-pin-lining = { pin-start } the seams, then the marks, then every { $spacing }.
    .check = Both lie level without a tuck.
    .remedy = Share the looseness out between the marks.
# The lining is longer than the band by $lining-over.
turned-lining-ease-lining = { pin-start } the seams, then the marks, then every { $spacing }. The lining is { $lining-over } longer: share that out between the pins, as gathers that stand a little closer, never as a fold.
    .check = Both lie level, and the gathers stand evenly with no fold laid over.
    .remedy = Take out the pins of that stretch and push the gathers along to the next.
turned-lining-sew-band = Sew { $inside } from the edge, { $stitch }, { $length } all round, the lining on top: you sew from the inside of the ring.
    .check = No fold is caught, and the band is not drawn in.
    .remedy = Unpick that hand's width, smooth it and sew it again.

## Both on the layers

turned-lining-slip = { $out ->
    [yes] Turn { PIECE($lining) } right side out: the band hangs inside it now. Turn the layers right side out too, and slip { PIECE($lining) } over them, all top edges level.
   *[no] Turn { PIECE($lining) } inside out: the band hangs inside it now. Turn the layers right side out, and slip { PIECE($lining) } over them, all top edges level.
 }
    .check = { $out ->
        [yes] The right side of the lining looks outward, the band lies between it and the layers, its fold towards the hem.
       *[no] The wrong side of the lining looks outward, the band lies between it and the layers, its fold towards the hem.
     }
turned-lining-pin-layers = { pin-start } the side seams, then the marks, then every { $spacing }, through all.
    .check = All edges are level.
    .remedy = Share the looseness out between the marks.
turned-lining-ease-layers = { pin-start } the side seams, then the marks, then every { $spacing }, through all. The layers are { $layers-over } longer: share that out between the pins, as gathers that stand a little closer, never as a fold.
    .check = All edges are level, and the gathers stand evenly.
    .remedy = Take out the pins of that stretch and push the gathers along to the next.
turned-lining-gathers-up = Turn the work so that the gathers of the layers lie on top; there you sew from the inside of the ring.
turned-lining-sew = Sew { $seam-width } from the edge through all, slowly, for the work is thick: { $stitch }, { $length } all round. Let the end overlap the start by three stitches.
    .check = Every layer is caught, and the first row lies in the margin.
    .remedy = Sew again where a layer slipped out.

## Turn

# Said only inside the message below: where the lining ends.
turned-lining-ends = { $ends ->
    [above] { " " }The lining ends { $by } above the hem of the layers.
    [below] { " " }The lining ends { $by } below the hem of the layers.
   *[level] { "" }
 }
turned-lining-turn = Lift { PIECE($lining) } over the top and let it fall inside. Pull the band up.
    .check = { $out ->
        [yes] No raw edge and no gathering row shows, inside or outside. The opening of the channel is inside, and the right side of the lining lies against the layers.
       *[no] No raw edge and no gathering row shows, inside or outside. The opening of the channel is inside, and the right side of the lining faces the legs.
     }{ turned-lining-ends }
    .remedy = If the opening is outside, the band was sewn on the wrong way round: unpick both rows and turn it.
turned-lining-press = Press the seam lightly from the inside, the margins towards the hem.
