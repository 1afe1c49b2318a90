### Sew a seam whose margins are folded into each other and stitched flat.
### $pieces: the pieces whose ends the seam closes (-ends), or whose edges it joins (-edges).

flat-felled-seam-title-ends = Flat-felled seam: the side seam of { PIECE($pieces) }
flat-felled-seam-title-edges = Flat-felled seam: the seam between { PIECE($pieces) }
flat-felled-seam-aim = The seam lies flat and no raw edge shows on either side.

## The seam

# $two: one piece has two ends, and only one seam is sewn.
flat-felled-seam-lay-ends = { $two ->
    [yes] Lay the two ends of { PIECE($pieces) } right sides together, level, and { pin } them.
   *[no] Lay the ends of { PIECE($pieces) } right sides together, level, and { pin } them.
 }
flat-felled-seam-lay-edges = Lay the edges of { PIECE($pieces) } right sides together, level, and { pin } them.
flat-felled-seam-sew = Sew { $seam-width } from the edge, { $stitch }, { $length }.

## The fold

flat-felled-seam-trim = Trim only the lower margin to { $trim }.
    .check = The upper margin is still { $seam-width } wide.
flat-felled-seam-fold = Fold { $under } of the wide margin under, over the trimmed one, and press it.
# $flat-on: the piece that the fold is stitched to.
flat-felled-seam-lay-flat = Lay the fold flat on { PIECE($flat-on) } and { pin } it.
    .check = The fold is { $fell } wide all along and no raw edge shows.
    .tolerance = { $off } more or less
    .remedy = Where a raw edge shows, trim the lower margin there and fold again.
flat-felled-seam-fell = Sew close to the fold, { $length }.
    .check = Both rows run side by side.
    .remedy = Unpick where the row left the fold and sew it again.
