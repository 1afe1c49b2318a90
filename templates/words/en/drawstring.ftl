### Draw a cord through a casing; its ends come out of the gap and are tied.
### $band is the band, or the piece whose edge was folded down; $cord the cord.

drawstring-title = Draw in the cord
    .number = { $cut }
drawstring-aim = A cord draws { $casing } of casing in; it is tied in front.
# The casing is flat: the cord goes in at one end and out at the other.
drawstring-aim-flat = A cord runs through { $casing } of casing and is tied round the waist.

## The gap and the cord

drawstring-bars = Sew a short bar of zigzag stitches at both ends of the gap of { $gap }.
    .check = The gap cannot tear further open.
    .remedy = Sew over the bar once more.
# $finish: what a knot or a fold takes of each end.
drawstring-cut = Cut the { $cord } { $cut } long: { $casing } for the casing, and twice { $ends } for an end and { $finish } to finish it.
    .check = It is { $cut } when it lies slack beside the tape.
drawstring-wrap = Wrap a bit of paper tape round both its ends, so that they do not fray on the way.

## Through the channel

drawstring-thread = Fix a safety pin or bodkin in one end and work it through the channel, all round to the gap.
    .check = The cord is not twisted.
    .remedy = If it is, draw the last hand's length back, turn it and go on.
drawstring-thread-flat = Fix a safety pin or bodkin in one end and work it through the channel, in at one end and out at the other.
    .check = { drawstring-thread.check }
    .remedy = { drawstring-thread.remedy }
# The ends come out of holes that were worked in front.
drawstring-thread-holes = Fix a safety pin or bodkin in one end and work it in at one { cord-hole }, all round through the channel and out at the other.
    .check = { drawstring-thread.check }
    .remedy = { drawstring-thread.remedy }
drawstring-even = Lay { PIECE($band) } flat and even the ends out.
    .check = { $out } hang out at each end.
    .tolerance = { $ends-off } more or less
    .remedy = Draw the cord on to the shorter side.
drawstring-bar-behind = Sew the { $cord } to { PIECE($band) } at the middle of the back, half-way round from the gap, with a short bar through all layers.
    .check = It can't be pulled out.
    .remedy = Sew over the bar once more.

drawstring-bar-flat = Sew the { $cord } to { PIECE($band) } at the middle of the casing, with a short bar of zigzag stitches through all layers.
    .check = { drawstring-bar-behind.check }
    .remedy = { drawstring-bar-behind.remedy }
drawstring-bar-behind-holes = Sew the { $cord } to { PIECE($band) } at the middle of the back, half-way round from the { cord-holes }, with a short bar through all layers.
    .check = { drawstring-bar-behind.check }
    .remedy = { drawstring-bar-behind.remedy }

## The ends

# A grown-up wears it.
drawstring-knot = Take off the paper tape and tie a tight knot in each end. Cut off what hangs out beyond the knot by more than { $beyond }, and dab the cut with textile glue.
    .check = { drawstring-hang.check }
    .tolerance = { drawstring-hang.tolerance }
    .remedy = Open the knot and tie it again nearer to the tip or further from it.
# A child wears it: a knot or bead on the end catches.
drawstring-fold = Take off the paper tape, dab both cut ends with textile glue and let it dry. Fold each end under twice, { $half-finish } each time, and sew it flat by hand. Make no knot: it catches.
    .check = { drawstring-hang.check }
    .tolerance = { drawstring-hang.tolerance }
    .remedy = Unpick the fold. Cut off what is too long and fold it again.
# Said only as parts of the two above. $waist-known: how far the ends hang once the waist is drawn in is known.
drawstring-hang =
    .check = { $waist-known ->
        [yes] { $ends } hang out at each end. Drawn in to the waist, { $drawn } hang out at each end.
       *[no] { $ends } hang out at each end.
     }
    .tolerance = { $ends-off } more or less
