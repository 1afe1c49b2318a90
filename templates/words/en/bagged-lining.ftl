### Sew a piece and its lining together all round and turn them right side out.
### $outer: the piece; $lining: its lining. They are turned through a gap, or through the top edge.

bagged-lining-title = Line { PIECE($outer) } and turn it out
    .number = { $seam-width }
bagged-lining-aim-gap = All edges are closed between cloth and lining.
bagged-lining-aim-top = All edges but the top one are closed between cloth and lining.

## Sew

bagged-lining-lay = Lay { PIECE($outer) } and { PIECE($lining) } right sides together, edges level, and { pin } them.
bagged-lining-mark = Mark a gap of { $gap } in the middle of the bottom edge: it stays open.
bagged-lining-sew-gap = Sew { $seam-width } from the edge from one end of the gap round to the other, { $length } in all, { $stitch }. Turn each corner with the needle down. Sew a few stitches back at both ends.
    .check = Every corner is square, and the gap is open.
    .remedy = Unpick a corner that is rounded, back to both straight sides, and sew it again.
bagged-lining-sew-top = Sew { $seam-width } from the edge, down one side, along the bottom and up the other side, { $length } in all, { $stitch }. Turn both corners with the needle down. Sew a few stitches back at both ends, and leave the whole top edge open.
    .check = Both corners are square.
    .remedy = { bagged-lining-sew-gap.remedy }

## Turn

bagged-lining-trim = Cut each sewn corner off slantwise, { $corner } outside the stitches.
bagged-lining-turn-gap = Turn the work right side out through the gap and push the corners out with a blunt stick.
bagged-lining-turn-top = Turn the work right side out through the top and push the corners out with a blunt stick.
bagged-lining-roll = Roll the seam to the edge with your fingers and press it from the lining side, the lining a hair inside.
    .check = It measures { $wide } by { $deep }.
    .tolerance = { $off } more or less
    .remedy = Turn it back; where it is small the seam is too wide, where it is large too narrow.
bagged-lining-close = Fold the margins of the gap inwards. By hand, slip stitch the { $gap } shut.
    .check = The stitches do not show.
    .remedy = Snip the stitch that shows and sew it again inside the fold.
