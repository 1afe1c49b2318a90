### Cut a bottom edge higher in front than behind, so that the hem dips or trails.

dipped-hem-title = Cut the dip of { EDGE($edge) }
    .number = { $front }
dipped-hem-aim = The hem rises by { $side } at the sides and by { $front } in front.

## Find front and back

dipped-hem-hold = Hold { PIECE($piece) } as it is worn, { side-seam } at the left of the wearer.
dipped-hem-mark = Mark { EDGE($edge) } in quarters, every { $quarter } from { side-seam }. The marks are the middle of the front, the other side and the middle of the back.
    .check = The last quarter ends at the seam.
    .tolerance = { $quarter-off } more or less
    .remedy = Share the difference out among the four.
dipped-hem-tag = Pin a paper tag to the front mark and to the back mark.

## Draw and cut

dipped-hem-dots = Measure up from the edge at each mark: { $front } at the front, { $side } at both sides, nothing at the back. Make a dot there.
    .check = The tag at the highest dot says front.
    .remedy = If front and back were changed over, rub the dots out and measure again.
dipped-hem-line = Draw a smooth line from dot to dot. Let it run level for a hand’s width at the front and at the back.
    .check = The line has no corner at the sides.
    .remedy = Draw it again, a little rounder.
dipped-hem-cut = Cut along the line, and mark the middle of the back at the new edge.
    .check = The new edge measures { $length } all round.
    .tolerance = { $off } more or less
    .remedy = Compare both sides, folded front on back: cut the fuller one down to the other.
