### Cut a piece between two arcs, so that it falls in folds without gathers.

ring-cut-title = Cut { PIECE($piece) } in a ring
    .number = { $radius }
ring-cut-aim = Radius { $radius }, { $degrees } degrees: { $top } at the top, { $hem } at the bottom.

## Draw

ring-cut-lay = Lay the rectangle for { PIECE($piece) } flat, { $wide } wide and { $high } high.
ring-cut-centre = Draw the upright middle line of the rectangle. Mark the centre on it, { $outer } above the lower edge.
# The centre lies beyond the cloth.
ring-cut-centre-beyond = Draw the upright middle line of the rectangle, and on beyond it, on paper taped to the table. Mark the centre on it, { $outer } above the lower edge and { $beyond } beyond the upper edge.
ring-cut-outer = Hold a tape at the centre and draw the outer arc at { $outer }.
    .check = The arc just meets the lower edge.
    .tolerance = { $arc-off } more or less
    .remedy = Check that the tape starts at 0 on the centre and draw again.
ring-cut-inner = Draw the inner arc at { $inner }.
# Said only inside the messages below.
ring-cut-end-lines = { $has-seam ->
    [yes] Measure { $along } along the outer arc from the middle line to both sides. Draw a straight line from each mark to the centre, then a second line { $ends } outside it for the seam.
   *[no] Measure { $along } along the outer arc from the middle line to both sides. Draw a straight line from each mark to the centre.
 }
ring-cut-ends = { ring-cut-end-lines }
    .check = The marks are { $across } apart in a straight line.
    .tolerance = { $across-off } more or less
    .remedy = Measure along the arc again, the tape on its edge.
# Nearly half a circle or more: the angle can be told better than the straight line.
ring-cut-ends-wide = { ring-cut-end-lines }
    .check = The lines stand { $whole-degrees } degrees apart.
    .tolerance = 1 degree more or less
    .remedy = { ring-cut-ends.remedy }

# Said only inside the messages below.
ring-cut-move = { $on-paper ->
    [yes] Move the centre { $shift } further up the middle line; the last one lies { $farthest } beyond the upper edge, on paper taped to the table. From there draw both arcs and the straight ends once more.
   *[no] Move the centre { $shift } further up the middle line, away from the lower edge, and draw both arcs and the straight ends from there once more.
 }
# Copies that lie in one rectangle, one above the other; $short: the last rectangle holds only $last.
ring-cut-next = { $short ->
    [yes] { ring-cut-move } Go on until { $stacked } copies lie in the rectangle, in the last one { $last }.
   *[no] { ring-cut-move } Go on until { $stacked } copies lie in the rectangle.
 }
    .check = Each new outer arc lies above the inner arc of the copy before, nearest to it at both ends, and does not cross it.
    .remedy = Measure { $shift } again, from the centre that was used last.

## Cut and hold

ring-cut-cut = Cut on both arcs and on the outermost straight lines.
# Said only inside the messages below.
ring-cut-stay-row = Sew one row { $stay } from the inner arc at once, { $stitch }, without stretching it. This row stays inside the seam.
ring-cut-stay = { ring-cut-stay-row }
    .check = The inner arc measures { $top } between the end seams.
    .tolerance = { $top-off } more or less
    .remedy = If it is longer, draw the row in a little. If it is shorter, clip the margin up to the row.
# A later seam or turn takes something at the inner arc.
ring-cut-stay-above = { ring-cut-stay-row }
    .check = The line of the later seam, { $above } from the cut edge, measures { $top } between the end seams.
    .tolerance = { ring-cut-stay.tolerance }
    .remedy = { ring-cut-stay.remedy }
ring-cut-hang = Do not hem it yet. It hangs overnight first, and what has dropped is cut off level.
