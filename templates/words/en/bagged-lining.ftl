### Sew a piece and its lining together all round and turn them right side out.
### $outer: the piece; $lining: its lining.

bagged-lining-title = Line { PIECE($outer) } and turn it out
bagged-lining-aim = All edges are closed between cloth and lining.

bagged-lining-lay = Lay { PIECE($outer) } and { PIECE($lining) } right sides together, edges level, and { pin } them.
bagged-lining-sew-gap = Sew { $seam-width } from the edge, { $length } in all, { $stitch }. Leave { $gap } open in the middle of the bottom edge.
    .check = Every corner is turned with the needle down and is square.
    .remedy = Unpick a corner that is rounded, back to both straight sides, and sew it again.
bagged-lining-sew-top = Sew { $seam-width } from the edge, { $length } in all, { $stitch }. Leave the whole top edge open.
    .check = { bagged-lining-sew-gap.check }
    .remedy = { bagged-lining-sew-gap.remedy }
bagged-lining-trim = Trim the corners slantwise to two threads from the stitches.
bagged-lining-turn = Turn the work right side out and push the corners out with a blunt stick.
bagged-lining-roll = Roll the seam to the edge and press it, the lining a hair inside.
    .check = It measures { $wide } by { $deep }.
    .tolerance = { $off } more or less
    .remedy = Turn it back; where it is small the seam is too wide, where it is large too narrow.
bagged-lining-close = Fold the margins of the gap inwards and slip stitch the { $gap } shut.
    .check = The stitches do not show.
