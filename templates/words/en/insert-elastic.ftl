### Draw elastic through a casing and join its ends to a loop.
### $band is the band, or the piece whose edge was folded down.

insert-elastic-title = Draw in the elastic
    .number = { $loop }
insert-elastic-aim = A loop of { $loop } draws { $casing } of casing in to the waist.

## Try on and cut

insert-elastic-try = Before you cut, pin the elastic to a loop of { $loop } with a safety pin. Put it round the waist, sit down in it and breathe in.
    .check = It stays up and does not cut in. Two fingers slip under it.
    .remedy = Pin it longer or shorter until it does, and use that length in place of { $loop } from here on.
insert-elastic-write = Write down the length of the loop that you use, with the date.
insert-elastic-cut = Cut the elastic { $cut } long: that is { $loop } and { $lap } for the lap.
    .check = It is { $cut } when it lies slack beside the tape.
    .remedy = Too long: cut off the rest. Too short: cut a new piece, do not stretch this one.
insert-elastic-ends = Sew over both cut ends by hand, stitch beside stitch, the thread round the edge each time, so that they do not ravel.
insert-elastic-line = Draw a line straight across it, { $lap } from one end.
    .check = From the line to the other end it is { $loop }, slack.
    .tolerance = { $lap-off } more or less
    .remedy = Draw the line where it belongs and cross out the first.
insert-elastic-cross = Draw a cross on the same face, { $cross } from the other end: it stays in sight when the ends are lapped.
# The casing has several channels, one elastic in each.
insert-elastic-order = Draw one elastic into each of the { $channels } channels, the one next to the fold first. { $opened ->
    [seam] Each goes in by its own opening in the seam.
   *[row] All go in by the gap and through those above it, and all their ends hang out of the gap until they are sewn.
 }
    .check = No channel holds two.
## Cut long, tried on in the garment and shortened

insert-elastic-cut-long = Cut the elastic { $cut } long: that is { $loop }, { $lap } for the lap and { $spare } to try it on.
    .check = It is { $cut } when it lies slack beside the tape.
    .remedy = Too short: cut a new piece, do not stretch this one.
insert-elastic-pin-end = Let { $tail } of one end hang out of the gap. Pin it to { PIECE($band) } there with a safety pin, so that it cannot slip inside.
insert-elastic-thread-long = Fix a second safety pin or a bodkin in the other end and work it round through the channel to the gap. Push the cloth back over the elastic as you go.
    .check = The elastic lies flat all round.
    .remedy = If it is twisted, draw the last hand's length back, turn it and go on.
insert-elastic-thread-long-band = Fix a second safety pin or a bodkin in the other end and work it round through the channel to the gap, between the seam margin and the outside. Push the cloth back over the elastic as you go.
    .check = { insert-elastic-thread-long.check }
    .remedy = { insert-elastic-thread-long.remedy }
insert-elastic-lap-to-try = Take out both pins, or the pin and the bodkin, and keep hold of both ends. Lap them until the loop is { $loop } and hold the lap with a closed safety pin.
insert-elastic-try-on = Count the pins first and look for any that are left in the work; then put the garment on, sit down in it and breathe in.
    .check = It stays up and does not cut in. Two fingers slip under it.
    .remedy = Lap the ends less or more until it does, and use that loop in place of { $loop } from here on.
insert-elastic-mark-lap = Draw a line across the lower end where the upper one ends, take the garment off and pull { $out } of both ends out of the gap. Take out the pin of the lap.
insert-elastic-shorten = Cut the lower end off { $lap } past the line, where the upper one covered it.
    .check = From the cut end to the line it is { $lap }.
    .tolerance = { $lap-off } more or less
    .remedy = Too long: cut off the rest. Too short: lap so much less, and sew it twice.

# The casing is flat, and a seam closes it afterwards. $half-lap: what lies in the seam at each end.
insert-elastic-aim-flat = Elastic draws { $casing } of casing in to { $loop }; its ends are caught in the seam.
insert-elastic-cut-flat = Cut the elastic { $cut } long: that is { $loop }, and { $half-lap } at each end for the seam.
    .check = { insert-elastic-cut.check }
    .remedy = { insert-elastic-cut.remedy }
insert-elastic-mark-flat = Draw a line straight across it, { $half-lap } from each end.
    .check = From line to line it is { $loop }, slack.
    .tolerance = { $lap-off } more or less
    .remedy = Draw the line where it belongs and cross out the first.

## Through the channel

insert-elastic-thread-flat = Pin one end of the elastic even with the cut end of { PIECE($band) }. Fix a safety pin or bodkin in the other end and work it through the channel to its other opening. Push the cloth back over the elastic as you go, and pin this end even with the cloth too.
    .check = The elastic lies flat all along, and both its ends are even with the cloth.
    .remedy = If it is twisted, draw the last hand's length back, turn it and go on.
insert-elastic-bar-flat = Sew two rows of zigzag across the elastic at each end, between the line and the cut edge, through all layers, a few stitches back each time. Take out the pins.
    .check = Pull hard: nothing gives. The seam will run on the lines.
    .remedy = Sew over the rows once more.
insert-elastic-spread-flat = Push the fullness along the elastic with your fingers until it is shared out.
    .check = Both halves of the casing are equally long.
    .remedy = Push more to the side that is shorter.


insert-elastic-tail = Let { $tail } of the end with the line hang out of the gap. Pin it to { PIECE($band) } there, so that it cannot slip inside.
insert-elastic-thread = Fix a safety pin or bodkin in the end with the cross and work it round through the channel to the gap. Push the cloth back over the elastic as you go.
    .check = The elastic lies flat all round, and the line and the cross are on the same side of it.
    .remedy = If it is twisted, draw the last hand's length back, turn it and go on.
# The channel is a band that was sewn on, with the margin of its seam inside.
insert-elastic-thread-band = Fix a safety pin or bodkin in the end with the cross and work it round through the channel to the gap, between the seam margin and the outside. Push the cloth back over the elastic as you go.
    .check = { insert-elastic-thread.check }
    .remedy = { insert-elastic-thread.remedy }
insert-elastic-pull-out = Take out the first pin and pull { $out } of both ends out of the gap. Take the other pin or the bodkin out too.

## The lap

insert-elastic-lap = Lay the end with the cross on the end with the line, both marks up, its cut end on the line. Hold the lap with a closed safety pin.
    .check = The cut end lies on the line: then the lap is { $lap } and the loop { $loop } at rest.
    .tolerance = { $lap-off } more or less
    .remedy = Open the pin, shift the end to the line and close the pin again.
# The elastic was tried on in the garment: the line marks how far the ends lapped.
insert-elastic-lap-long = Lay the upper end on the lower one as before, its cut end on the line. Hold the lap with a closed safety pin.
    .check = The lap is { $lap }, and the loop at rest what you wrote down.
    .tolerance = { $lap-off } more or less
    .remedy = Open the pin, shift the end to the line and close the pin again.
insert-elastic-sew = Take out the safety pin and hold the lap in its place. Sew two rows of zigzag over the lap, then one along each of its two ends, a few stitches back each time.
    .check = Pull hard: nothing gives.
    .remedy = Sew over the lap once more.
insert-elastic-slip-back = Let the lap slip back into the channel.
insert-elastic-stretch = Lay the waist flat, fold to fold. Stretch it by hand until it is { $half-over } wide, which is { $over } round, and let it spring back, three times. Never stretch it further.
    .check = The fullness is the same all round.
    .remedy = Push it along the elastic with your fingers.
# Where a guide tells no measure of a body.
insert-elastic-stretch-over = Lay the waist flat, fold to fold. Stretch it by hand as wide as the hips that it goes over, and let it spring back, three times. Never stretch it further.
    .check = The fullness is the same all round.
    .remedy = Push it along the elastic with your fingers.
