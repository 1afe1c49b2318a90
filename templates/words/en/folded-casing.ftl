### Fold an edge down to a casing for elastic and stitch it, leaving a gap.
### $edge is the edge that is folded; $seam its side seam.

folded-casing-title = Fold and stitch the casing
folded-casing-aim = A channel for the elastic is open at the gap.

folded-casing-turn-under = Fold { EDGE($edge) } { $under } to the wrong side all round and press the fold.
folded-casing-fold = Fold it down again by { $depth }, press, and { pin } it.
    .check = The casing is { $depth } deep all round.
    .tolerance = never less, up to { $more } more
    .remedy = Unfold and press again where it wanders: elastic twists in an uneven casing.
folded-casing-gap = Mark a gap of { $gap } that begins { $beside } to the right of { side-seam }, as you look at the wrong side. Make a line at each end of it.
folded-casing-sew = With the wrong side up, sew { $edge-stitch } above the lower fold from one line of the gap round to the other, { $stitched }, { $stitch }. Sew a few stitches back at both ends.
    .check = The gap is open and the channel is { $channel } wide inside.
    .remedy = Unpick what closes the gap.
