### Bind a raw edge, or the margin of a seam, with tape.
### $edge: the edge, or the pieces of the seam; $tape: what the tape is called.

bound-edge-title-edge = Bind { EDGE($edge) }
    .number = { $length }
bound-edge-title-margin = Bind the seam margin of { PIECE($edge) }
    .number = { $length }
bound-edge-aim = The raw edge is closed in tape and cannot ravel or scratch.

## Fold the tape

bound-edge-cut = Cut { $cut } of the { $tape }.
bound-edge-fold = Fold the tape in half along its length, one half a hair wider than the other, and press the fold.

## Lay it round the edge

bound-edge-pin-edge-ring = Begin beside { side-seam }. { pin-start } the tape around { EDGE($edge) }, the raw edge against its fold, the wider half on the wrong side.
    .check = The tape covers { $half } on both sides.
    .tolerance = { $off } more or less
    .remedy = Push the edge into the fold again where it slipped out.
bound-edge-pin-edge-flat = { pin-start } the tape around { EDGE($edge) }, the raw edge against its fold, the wider half on the wrong side.
    .check = { bound-edge-pin-edge-ring.check }
    .tolerance = { bound-edge-pin-edge-ring.tolerance }
    .remedy = { bound-edge-pin-edge-ring.remedy }
bound-edge-pin-margin = { pin-start } the tape around the seam margin of { PIECE($edge) }, the raw edge against its fold, the wider half underneath.
    .check = { bound-edge-pin-edge-ring.check }
    .tolerance = { bound-edge-pin-edge-ring.tolerance }
    .remedy = { bound-edge-pin-edge-ring.remedy }
bound-edge-lap = Fold { $half-lap } of the tape's end under, and lay the fold { $half-lap } over the start.
# The ends of the cloth are finished already.
bound-edge-ends = Fold { $under } of the tape under at both ends, the folds level with the ends of the cloth.

## Sew

bound-edge-sew-ring = The narrower half on top, sew { $edge-stitch } from its open edge, { $length } all round, { $stitch }. Let the end overlap the start by three stitches.
    .check = The row caught the lower half too.
    .remedy = Unpick where it was missed, pull the lower half out and sew again.
bound-edge-sew-flat = The narrower half on top, sew { $edge-stitch } from its open edge, { $length }, { $stitch }, a few stitches back at both ends.
    .check = { bound-edge-sew-ring.check }
    .remedy = { bound-edge-sew-ring.remedy }
