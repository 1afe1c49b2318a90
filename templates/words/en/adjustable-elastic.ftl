### Draw elastic with buttonholes through a casing; its end is buttoned on inside and can be let out.
### $piece: the band, or the piece whose edge was folded down.

adjustable-elastic-title = Draw in the elastic that buttons
    .number = { $first }
adjustable-elastic-aim = The elastic is { $first } round at first, and can be let out to { $out }.

adjustable-elastic-bars = Sew a short bar of zigzag at both ends of the gap of { $gap }: it stays open.
    .check = A pull does not open it any further.
adjustable-elastic-try = Before you cut, pin the elastic to a loop of { $first } with a safety pin. Put it round the waist, sit down in it and breathe in.
    .check = It stays up and does not cut in. Two fingers slip under it.
    .remedy = Pin it longer or shorter until it does, use that length in place of { $first }, and cut so much more or less.
adjustable-elastic-cut = Cut { $elastic } { $cut } long: { $out } round, { $reach } to reach the button, { $fast } for the fast end and { $hem } for the other. Cut between two buttonholes.
    .check = It is { $cut } when it lies slack beside the tape.
adjustable-elastic-lay-end = Fold { $half-fast } of one end under. Looking at the inside, lay it into the channel to the left of the gap, its fold level with the left end of the gap, the elastic leading away from it.
adjustable-elastic-fast = Sew it fast with a square of zigzag through the elastic and the inner layer alone.
    .check = Pull hard: nothing gives. No stitch shows outside.
    .remedy = Sew over the square once more.
adjustable-elastic-thread = Fix a safety pin or bodkin in the other end and work it round through the channel, out of the gap. Push the cloth back over the elastic as you go.
    .check = The elastic lies flat all round.
    .remedy = If it is twisted, draw the last hand's length back, turn it and go on.
adjustable-elastic-hem = Fold this end under twice, { $half-hem } each time, and sew across the fold.
adjustable-elastic-button = Sew a flat button, { $button } wide, on the inside of the casing, { $reach } to the left of the gap: the loose end lies over the fast one. Take the inner layer alone.
    .check = A hard pull does not move it, and no stitch shows outside.
    .remedy = Sew it on once more.
adjustable-elastic-close = Draw the elastic up to { $first } and button it on there. The next buttonholes, { $slots } apart, let it out by up to { $more }.
    .check = The end lies flat inside, and the fullness is the same all round.
    .remedy = Push the fullness along the elastic with your fingers.
