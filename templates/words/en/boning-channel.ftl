### Sew a channel of tape round a skirt and put a hoop of boning in it.

boning-channel-title = Put a hoop in { PIECE($piece) }
    .number = { $around }
boning-channel-aim = A hoop of { $around } holds the skirt out.

## Sew the channel

boning-channel-mark = Mark a line on the inside of { PIECE($piece) }, { line-place }, all round.
    .check = The line keeps its distance: a hoop that dips is seen at once.
    .tolerance = { $line-off } more or less
    .remedy = Draw it again where it dips.
boning-channel-cut-tape = Cut { $tape-length } of { $tape }: { $around } and { $fold } at each end to fold under.
boning-channel-pin = { pin-start } the { $tape } along the line, its lower edge on it, every { $spacing }. Begin at the middle of the back, with both ends folded under so that they just meet.
boning-channel-sew-lower = Sew { $from-edge } from the lower edge of the tape, { $around } all round, { $stitch }. Let the end overlap the start by three stitches.
boning-channel-sew-upper = Sew { $from-edge } from the upper edge, { $stitched }, { $stitch }, and leave a gap of { $gap } where the ends meet. Sew a few stitches back at both sides of the gap.
    .check = The channel is open all round; push a bodkin through.
    .remedy = Unpick what closes it.

## Put the hoop in

boning-channel-cut-bone = Cut the { $bone } { $bone-length } long and cap or bind both ends.
    .check = No bare end is left.
    .remedy = Cap it again: a bare end works through.
boning-channel-push = Push it through the channel and lap its ends by { $overlap }; bind the lap tightly.
    .check = The hoop measures { $around } round and the cloth lies on it without folds.
    .tolerance = { $hoop-off } more or less
    .remedy = Lap the ends more where the cloth strains, less where it sags.
boning-channel-close = Sew the gap of { $gap } shut by hand.
