### Bind a raw edge, or the margin of a seam, with tape.
### $edge: the edge, or the pieces of the seam; $tape: what the tape is called.

bound-edge-title-edge = Bind { EDGE($edge) }
bound-edge-title-margin = Bind the seam margin of { PIECE($edge) }
bound-edge-aim = The raw edge is closed in tape and cannot ravel or scratch.

bound-edge-cut = Cut { $cut } of { $tape }.
bound-edge-fold = Fold the tape in half along its length and press the fold, the lower half a hair wider.
bound-edge-pin-edge = { pin-start } the tape around { EDGE($edge) }, the raw edge against its fold.
    .check = The tape covers { $half } on both sides.
    .tolerance = { $off } more or less
    .remedy = Push the edge into the fold again where it slipped out.
bound-edge-pin-margin = { pin-start } the tape around the seam margin of { PIECE($edge) }, the raw edge against its fold.
    .check = { bound-edge-pin-edge.check }
    .tolerance = { bound-edge-pin-edge.tolerance }
    .remedy = { bound-edge-pin-edge.remedy }
bound-edge-lap = Fold the tape's end under and lay it { $overlap } over the start.
bound-edge-sew = Sew { $edge-stitch } from the tape's open edge, { $length }, { $stitch }.
    .check = The row caught the lower half too.
    .remedy = Unpick where it was missed, pull the lower half out and sew again.
