### Tapes with rings and cords inside the back, which draw up a train.

bustle-tapes-title = Sew in the bustle tapes
    .number = { $up }
bustle-tapes-aim = { $tapes ->
    [one] One tape draws the hem up by { $up } behind.
   *[other] { $tapes } tapes draw the hem up by { $up } behind.
 }

## Mark

bustle-tapes-middle = { $from ->
    [seam] Turn { PIECE($piece) } inside out. Measure a quarter of its way round, { $quarter }, from { side-seam } towards the back: that is the middle of the back. Chalk a line straight down from there.
    [fold] Turn { PIECE($piece) } inside out. Fold it in half at { side-seam } and find the middle of the back half. Chalk a line straight down from there.
    [back] Turn { PIECE($piece) } inside out. Fold the back gore in half along its length, side on side: the fold is the middle of the back. Chalk a straight line along it.
   *[front] Turn { PIECE($piece) } inside out. Fold it in half down the middle of the front gore: the other fold is the middle of the back. Chalk a line straight down it.
 }
bustle-tapes-mark-one = The line is the place of the tape. Mark on it { $below } below the top edge and { $long } further down.
    .check = The lower mark lies { $long } below the upper one.
    .tolerance = { $off } more or less
    .remedy = Measure again from the finished top edge.
bustle-tapes-mark-upper = { $middle ->
    [yes] Mark where the tapes begin, the tape measure flat on the cloth: { $below } down from the top edge, on the line and { $upper } from it to both sides.
   *[no] Mark where the tapes begin, the tape measure flat on the cloth: { $below } down from the top edge, { $upper } from the line to both sides.
 }
bustle-tapes-mark-lower = { $middle ->
    [yes] Measure in the same way and mark { $foot } down from the top edge: on the line, and { $lower } from it to both sides.
   *[no] Measure in the same way and mark { $foot } down from the top edge: { $lower } from the line to both sides.
 }
    .check = Left and right of the line the marks lie alike.
    .remedy = Measure again from the line and from the finished top edge.
bustle-tapes-lines = Chalk { $tapes } straight lines, from each upper mark towards the lower one below it. End each of them after { $long }, measured along it.
    .check = Each line is { $long } long.
    .tolerance = { $off } more or less
    .remedy = Measure the line again, from its upper mark on.

## Sew and thread

bustle-tapes-sew = Cut { $cut } of { $tape } and fold { $turn } under at both ends. { pin-start } it along its line from the upper mark down.
bustle-tapes-stitch = Lay the work so that only the back is under the needle. Sew down both long edges of the tape, { $stitch }. The rows show on the right side.
    .check = Nothing but the back is caught under the tape.
    .remedy = Unpick where anything else was caught, and sew that stretch again.
bustle-tapes-rings = Sew { $rings } rings on to the tape by hand, { $every } from each other, from its upper end to its lower end. Take eight stitches for each, through the tape and not through the skirt.
    .check = A tug at each ring does not move it.
    .remedy = Sew it on again with doubled thread.
bustle-tapes-thread = Cut { $cord-long } of { $cord }. Tie one end to the lowest ring with a double knot and thread the other up through every ring to the uppermost.
bustle-tapes-draw = Lay the skirt on the table. Draw each cord until its tape is { $left } long. Knot the cord to the uppermost ring and pull only a loop of it through the knot, so that a tug at the end lets the train down.
    .check = Pulled at the hem, the tape stays { $left } long.
    .tolerance = { $off } more or less
    .remedy = Undo the knot, draw the cord again, and mark on it where the knot belongs.
bustle-tapes-draw-each = Lay the skirt on the table. Draw each cord until its tape is so long, from the middle of the back outwards, left and right alike: { $lefts }.
bustle-tapes-knot = Knot the cord to the uppermost ring and pull only a loop of it through the knot, so that a tug at the end lets the train down.
    .check = Pulled at the hem, each tape stays as long as it was drawn.
    .tolerance = { $off } more or less
    .remedy = { bustle-tapes-draw.remedy }
bustle-tapes-mark-cord = Mark the cord at its knot with two stitches in another colour, which stay: there it is knotted each time the train is drawn up.
bustle-tapes-tuck = Wind the end that is left round two fingers and pin the coil to the tape with a small closed safety pin, so that nothing hangs down.
