### Cut a bottom edge higher in front than behind, so that the hem dips or trails.

dipped-hem-title = Cut the dip of { EDGE($edge) }
    .number = { $front }
dipped-hem-aim = The hem rises by { $side } at the sides and by { $front } in front.

## Find front and back

dipped-hem-hold = { $front-gore ->
    [yes] Turn { PIECE($piece) } right side out and fold it in half down the middle of the front gore: the other fold is the middle of the back.
   *[no] Turn { PIECE($piece) } right side out and hold it as it is worn, { side-seam } at the left of the wearer.
 }
dipped-hem-mark = { $front-gore ->
    [yes] Mark { EDGE($edge) } in quarters, every { $quarter } from the middle of the front. The marks are the middle of the front, one side, the middle of the back and the other side.
   *[no] Mark { EDGE($edge) } in quarters, every { $quarter } from { side-seam }. The marks are the middle of the front, the other side and the middle of the back.
 }
    .check = The last quarter ends where the first began.
    .tolerance = { $quarter-off } more or less
    .remedy = Share the difference out among the four.
dipped-hem-tag = Pin a paper tag to the front mark and to the back mark.

## Draw and cut

dipped-hem-dots = On the right side measure straight up from the edge at each mark: { $front } at the front, { $side } at both sides, nothing at the back. Make a dot there: the finished hem is so much higher than behind.
    .check = The tag at the highest dot says front.
    .remedy = If front and back were changed over, rub the dots out and measure again.
dipped-hem-between = Between the marks make a dot every { $every }. From the front to each side they lie { $to-side } up, from each side to the back { $to-back }.
    .check = Left and right of the front the dots lie alike, and towards the back none is higher than the one before.
    .remedy = Rub out the dot that is out of line, and measure it again.
dipped-hem-line = Draw a smooth line through all dots, level across the front and the back.
    .check = The line has no corner at the sides.
    .remedy = Draw it again, a little rounder.
dipped-hem-cut = Cut along the line, one layer at a time.
    .check = The new edge measures { $length } all round.
    .tolerance = { $off } more or less
    .remedy = Fold it along the middle of the front and the middle of the back, left on right. Where the two differ, trim the fuller one to the other.
