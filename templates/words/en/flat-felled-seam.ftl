### Sew a seam whose margins are folded into each other and stitched flat.
### -ends: it closes the ends of $pieces to a ring. -edges: it joins $edge, which hangs below, to $to above.

flat-felled-seam-title-ends = Flat-felled seam: the side seam of { PIECE($pieces) }
    .number = { $seam-width }
flat-felled-seam-title-edges = Flat-felled seam: the seam between { PIECE($pieces) }
    .number = { $seam-width }
flat-felled-seam-aim = The seam lies flat and no raw edge shows on either side.

## The first row, right sides together

flat-felled-seam-lay-edges = Lay { EDGE($edge) } against { EDGE($to) }, right sides together and level.
flat-felled-seam-turn = Turn { PIECE($edge) } right side out and { PIECE($to) } inside out.
flat-felled-seam-slip = { COUNT($to) ->
    [one] Slip { PIECE($to) } over { PIECE($edge) }, upside down, until { EDGE($to) } lies level with { EDGE($edge) }.
   *[other] Slip { PIECE($to) } over { PIECE($edge) }, upside down, until { EDGE($to) } lie level with { EDGE($edge) }.
 }
    .check = Right sides face each other and both cut edges are level.
flat-felled-seam-pin = { match-and-pin }
    .check = The edges lie level.
    .tolerance = one edge { $off } longer
    .remedy = Share the difference out between the marks.
flat-felled-seam-sew-ring = Sew { $seam-width } from the edge, { $stitch }, { $length } all round. Let the end overlap the start by three stitches.
flat-felled-seam-sew-flat = Sew { $seam-width } from the edge, { $stitch }, { $length }, a few stitches back at both ends.

## The fold

flat-felled-seam-open-ends = { $seams ->
    [one] Open the work out, wrong side up, and press both margins to the same side.
   *[other] Open the work out, wrong side up, and press both margins to the same side, at every seam the same way round.
 }
flat-felled-seam-open-edges = Open the work out, wrong side up, and press both margins up, over { PIECE($to) }.
flat-felled-seam-trim = Trim only the margin that lies underneath, to { $trim }.
    .check = The margin on top is still { $seam-width } wide.
flat-felled-seam-fold = Fold { $under } of the wide margin under, round the trimmed one, and press the fold.
# $flat-on: the pieces that the fold is stitched to.
# It lies where clips do not reach.
flat-felled-seam-lay-flat = Lay the fold flat on { PIECE($flat-on) } and pin it.
    .check = The fold is { $fell } wide all along and no raw edge shows.
    .tolerance = { $fold-off } more or less
    .remedy = Where a raw edge shows, trim the margin underneath there and fold again.

## The second row

flat-felled-seam-fell-ring = With the fold up, sew { $from-fold } from it through every layer, { $stitch }, { $length } all round. Let the end overlap the start by three stitches.
    .check = { flat-felled-seam-fell-flat.check }
    .remedy = { flat-felled-seam-fell-flat.remedy }
flat-felled-seam-fell-flat = With the fold up, sew { $from-fold } from it through every layer, { $stitch }, { $length }, a few stitches back at both ends.
    .check = Both rows run side by side, { $apart } apart.
    .remedy = Unpick where the row left the fold and sew it again.
