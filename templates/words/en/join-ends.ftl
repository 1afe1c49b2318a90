### Join the two ends of a strip to a ring, or several panels to one ring.
### $pieces: the tiers that the seam passes through. -panels: $copies of them become one ring.

join-ends-title = Close { PIECE($pieces) } to a ring
    .number = { $seam-width }
join-ends-title-panels = Sew { PIECE($pieces) } together to a ring
    .number = { $seam-width }
join-ends-aim = { COUNT($pieces) ->
    [one] { PIECE($pieces, at: "start") } is closed.
   *[other] { PIECE($pieces, at: "start") } are closed.
 }

## Sew

# Said only inside the messages below: what becomes of the margins; a long seam is ironed by a sentence of its own.
join-ends-margins = { $margins ->
    [ironed] { "" }
    [apart] { " " }Fold the margins apart with your fingernail.
   *[aside] { " " }Fold both margins to the same side with your fingernail; either side will do.
 }
join-ends-margins-panels = { $margins ->
    [ironed] { "" }
    [apart] { " " }Fold the margins of all seams apart with your fingernail.
   *[aside] { " " }Fold both margins to the same side with your fingernail, at every seam the same way round.
 }
join-ends-margins-open = { $margins ->
    [ironed] { "" }
   *[apart] { " " }Press the margins apart with your fingers.
 }
join-ends-margins-open-panels = { $margins ->
    [ironed] { "" }
   *[apart] { " " }Press the margins of all seams apart with your fingers.
 }
join-ends-sew = Sew { $length }, { $seam-width } from the ends, { $stitch }, a few stitches back at both ends.{ join-ends-margins }
# The strip was joined of segments before.
join-ends-sew-pieced = { join-ends-sew }
    .check = Its margin stands on the wrong side, as those of the joins do.
join-ends-sew-panels = Sew each seam, { $length }, { $seam-width } from the edge, { $stitch }, a few stitches back at both ends.{ join-ends-margins-panels }
join-ends-sew-panels-pieced = { join-ends-sew-panels }
    .check = All margins stand on the wrong side, as those of the joins do.

# The seam is left open for a stretch: each place is marked first.
seam-open-top = { $which ->
    [only] On the wrong side mark where the opening ends, { $open } below the top edge, on both edges that are sewn together.
   *[numbered] On the wrong side mark where the opening ends, { $open } below the top edge, on both edges of { seam-named }.
 }
seam-open-hem = { $which ->
    [only] On the wrong side mark where the slit begins, { $open-at-hem } above the bottom edge, on both edges that are sewn together.
   *[numbered] On the wrong side mark where the slit begins, { $open-at-hem } above the bottom edge, on both edges of { seam-named }.
 }
seam-open-gap = { $which ->
    [only] On the wrong side mark a gap from { $gap-from } to { $gap-to } below the top edge, on both edges that are sewn together.
   *[numbered] On the wrong side mark a gap from { $gap-from } to { $gap-to } below the top edge, on both edges of { seam-named }.
 }
# Where a seam that is left open for a stretch is sewn, from above downwards.
seam-sewn = { $opens-above ->
    [yes] from the mark of the opening
   *[no] from the top edge
 }{ $opens-between ->
    [yes] { " " }to the upper mark of the gap, then from its lower mark
   *[no] { "" }
 } { $opens-below ->
    [yes] down to the mark of the slit
   *[no] down to the lower edge
 }
join-ends-sew-open = Sew { $seam-width } from the ends, { seam-sewn }, { $sewn } in all, { $stitch }, a few stitches back at each end and mark.{ join-ends-margins-open }
    .check = No stitch lies past a mark, and what is to stay open is open.
    .remedy = Unpick what is sewn past a mark, and sew back again there.
# Only one of the seams is left open: first the others.
join-ends-sew-closed = { $others ->
    [one] Sew { $seam-width } from the edges, { $stitch }, a few stitches back at both ends. Sew the seam without marks from edge to edge, { $length }.
   *[other] Sew { $seam-width } from the edges, { $stitch }, a few stitches back at both ends of each row. Sew the { $others } seams without marks from edge to edge, { $length } each.
 }
    .check = No row begins or ends short of an edge.
    .remedy = Sew on over the end of the row to the edge.
join-ends-sew-open-panels = Of the marked seam sew only what lies { seam-sewn }, { $sewn } in all, with a few stitches back at each end and mark.{ join-ends-margins-open-panels }
    .check = { join-ends-sew-open.check }
    .remedy = { join-ends-sew-open.remedy }

join-ends-press = { $panels ->
    [yes] With the iron press the margins of all seams apart, from the wrong side and along their whole length.
   *[no] With the iron press the margins of the seam apart, from the wrong side and along its whole length.
 }
    .check = On the right side no fold lies beside a seam.
    .remedy = Pull the two pieces apart at the seam and press again.

## Measure

join-ends-measure = { $open-ends ->
    [yes] Measure the lower edge of { PIECE($lowest) } from one cut end of the slit round to the other: { $round }.
   *[no] Measure round the lower edge of { PIECE($lowest) }: { $round }.
 }
    .check = { $open-ends ->
        [yes] It measures { $round } from end to end.
       *[no] It is { $round } all round.
     }
    .tolerance = { $off } more or less
    .remedy = { $panels ->
        [yes] Too long: sew one seam again wider. Too short: unpick one, sew it narrower.
       *[no] Too long: sew it again wider. Too short: unpick, sew narrower.
     }
# Cloth that flares: its top is another length.
join-ends-measure-top = { $open-top ->
    [yes] Measure the top edge of { PIECE($highest) } too, flat and not pulled, from one cut end of the opening round to the other: { $round-top }.
   *[no] Measure round the top edge of { PIECE($highest) } too, flat and not pulled: { $round-top }.
 }
    .check = It is { $round-top }, before the seam at the top takes its margin.
    .tolerance = { $off-top } more or less
    .remedy = If it is too long, sew a seam a little wider at its top, to nothing { $run-out } below; if too short, unpick that far and sew it narrower.
