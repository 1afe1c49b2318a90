### Fold an edge down to a casing for elastic or a cord and stitch it, leaving a gap.
### $edge is the edge that is folded; $seam its side seam.

folded-casing-title = Fold and stitch the casing
    .number = { $depth }
folded-casing-aim = { $flat ->
    [yes] { $holds ->
        [cord] A channel for the cord is open at both ends.
       *[elastic] A channel for the elastic is open at both ends.
     }
   *[no] { $holds ->
        [cord] A channel for the cord is open at the gap.
       *[elastic] A channel for the elastic is open at the gap.
     }
 }
folded-casing-aim-holes = A channel for the cord opens at its two { cord-holes }.

folded-casing-turn-under = Fold { EDGE($edge) } { $under } to the inside, { $flat ->
    [yes] from end to end,
   *[no] all round,
 } and press the fold.
folded-casing-fold = Fold it down again by { $depth }, press, and { pin } it.
    .check = { folded-casing-folded.check }
    .tolerance = { folded-casing-folded.tolerance }
    .remedy = { folded-casing-folded.remedy }
# The edge needs no first turn: it is neat, or its cloth does not ravel.
folded-casing-fold-once = Fold { EDGE($edge) } by { $depth } to the inside, { $flat ->
    [yes] from end to end,
   *[no] all round,
 } press, and { pin } it.
    .check = { folded-casing-folded.check }
    .tolerance = { folded-casing-folded.tolerance }
    .remedy = { folded-casing-folded.remedy }
# Said only as parts of the two above.
folded-casing-folded =
    .check = The casing is { $depth } deep everywhere.
    .tolerance = never less, up to { $more } more
    .remedy = { $holds ->
        [cord] Unfold and press again where it wanders.
       *[elastic] Unfold and press again where it wanders: elastic twists in an uneven casing.
     }
folded-casing-gap = Mark a gap of { $gap }: from { $beside } to { $gap-end } to the right of { side-seam }, as you look at the inside. Make a line at each end of it.
folded-casing-gap-front = Mark a gap of { $gap } at the middle of the front, { $quarter } from { side-seam }, half of it to each side. Make a line at each end of it.
folded-casing-label = Push one end of the label under the lower fold beside { side-seam }, away from the gap, the lettering in sight, and { pin } it.
folded-casing-label-flat = Push one end of the label under the lower fold near one end of the casing, the lettering in sight, and { pin } it.
# The edge is flat: there is no gap, the casing is open at its two ends.
folded-casing-sew-flat = With the inside up, sew { $edge-stitch } above the lower fold from end to end, { $stitched }, { $stitch }. Sew a few stitches back at both ends.
    .check = The channel is open at both ends and { $channel } wide inside.
    .remedy = Unpick what closes an end.
folded-casing-sew = With the inside up, sew { $edge-stitch } above the lower fold from one line of the gap round to the other, { $stitched }, { $stitch }. Sew a few stitches back at both ends.
    .check = The gap is open and the channel is { $channel } wide inside.
    .remedy = Unpick what closes the gap.
# The gap is unpicked in the side seam afterwards.
folded-casing-sew-round = With the inside up, sew { $edge-stitch } above the lower fold all round, { $stitched }, { $stitch }; let the end overlap the start by three stitches.
    .check = The fold is caught all round and the channel is { $channel } wide inside.
    .remedy = Unpick where the row ran off the fold, and sew that stretch again.
