### Draw a cord through a casing; its ends come out of the gap and are tied.
### $band is the band, or the piece whose edge was folded down.

drawstring-title = Draw in the cord
drawstring-aim = A cord draws { $casing } of casing in; it is tied in front.

drawstring-bars = Sew a short bar of zigzag stitches at both ends of the gap of { $gap }.
    .check = The gap cannot tear further open.
drawstring-cut = Cut the { $cord } { $cut } long.
    .check = It is { $cut } when it lies slack beside the tape.
drawstring-seal = Stop both its ends from fraying: fold them under and sew them, or use textile glue or a tight knot.
drawstring-thread = Fix a safety pin or bodkin in one end and work it through the channel, all round to the gap.
    .check = The cord is not twisted.
    .remedy = If it is, draw the last hand's length back, turn it and go on.
drawstring-even = Lay { PIECE($band) } flat and even the ends out.
    .check = { $waist-known ->
        [yes] { $ends } hang out at each end. Drawn in to the waist, { $drawn } hang out at each end.
       *[no] { $ends } hang out at each end.
     }
    .tolerance = { $ends-off } more or less
    .remedy = Cut off what is longer.
drawstring-bar-behind = Sew the { $cord } to { PIECE($band) } at the middle of the back with a short bar, through all layers.
    .check = It can't be pulled out.
    .remedy = Sew over the bar once more.
