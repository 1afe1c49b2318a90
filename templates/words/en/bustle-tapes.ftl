### Tapes with rings and cords inside the back, which draw up a train.

bustle-tapes-title = Sew in the bustle tapes
    .number = { $up }
bustle-tapes-aim = { $tapes ->
    [one] One tape draws the hem up by { $up } behind.
   *[other] { $tapes } tapes draw the hem up by { $up } behind.
 }

## Mark

bustle-tapes-middle = { $ring ->
    [yes] Turn { PIECE($piece) } inside out. Measure a quarter of its way round, { $quarter }, from { side-seam } towards the back: that is the middle of the back. Chalk a line straight down from there.
   *[no] Turn { PIECE($piece) } inside out. Fold it in half at { side-seam } and find the middle of the back half. Chalk a line straight down from there.
 }
bustle-tapes-mark = { $middle ->
    [yes] { $tapes ->
        [one] The line is the place of the tape. Mark on it { $below } below the top edge and { $long } further down.
       *[other] Chalk the other lines { $apart } beside it and from each other, as many to both sides. Mark on each { $below } below the top edge and { $long } further down.
    }
   *[no] Chalk the lines for the tapes { $first } to both sides of it, and any others { $apart } from those. Mark on each { $below } below the top edge and { $long } further down.
 }
    .check = The lower marks lie level, { $long } below the upper ones.
    .tolerance = { $off } more or less
    .remedy = Measure again from the finished top edge.

## Sew and thread

bustle-tapes-sew = Cut { $cut } of { $tape } and fold { $turn } under at both ends. { pin-start } it from mark to mark along its line and sew down both long edges, { $stitch }.
bustle-tapes-rings = Sew { $rings } rings on to the tape by hand, { $every } from each other, from its upper end to its lower end. Take eight stitches for each, through the tape and not through the skirt.
    .check = A tug at each ring does not move it.
    .remedy = Sew it on again with doubled thread.
bustle-tapes-thread = Cut { $cord-long } of { $cord }. Tie one end to the lowest ring with a double knot and thread the other up through every ring to the uppermost.
bustle-tapes-draw = Once the skirt is finished, put it on. Draw each cord until its tape is { $left } long, and tie it in a bow at the uppermost ring.
    .check = The hem lies { $up } higher behind, and clears the floor when you walk.
    .tolerance = { $off } more or less
    .remedy = Draw all cords a little more, each by the same, and mark the place on each cord.
