### Elastic: on its way through the casing, its ends marked and lapped, its length; and the gap closed.
### $band is the band, or the piece whose edge was folded down.

figure-elastic-through = Through the channel
figure-elastic-bodkin = bodkin
figure-elastic-mark = Mark the ends
figure-elastic-lap = Lap the ends and sew
figure-elastic-cut-end = cut end on the line
figure-elastic-shorten = Draw the line, cut the lower end
figure-elastic-cut-here = cut the lower end here
figure-elastic-lengths = Lengths at rest, to one scale
figure-elastic-casing = casing { $casing }
figure-elastic-loop = elastic loop { $loop }
figure-elastic-marked-alt = A line is drawn across the elastic { $lap } from one end, and a cross on it at the other.
figure-elastic-through-alt = Elastic { $width } wide goes through a gap of { $gap }, its tail hanging out and pinned to { PIECE($band) }; a bodkin is fixed in its other end.
figure-elastic-alt = The end with the cross lies on the line, { $lap } over the other, and is zigzagged; the closed loop is { $loop } in a casing of { $casing }.
figure-elastic-shorten-alt = The upper end lies over the lower one as it was tried on, held by a safety pin. A line is drawn across the lower end where the upper one ends, and the lower one is cut off { $lap } past it, where the upper one covers it.
figure-elastic-alt-long = The upper end lies over the lower one up to the line, { $lap } of it, and is zigzagged; the closed loop is { $loop } in a casing of { $casing }.
figure-elastic-caption = Hold the tail so that it cannot slip inside, and lap the ends so that one lies on the line of the other.
figure-elastic-caption-lap = Lap the ends so that one lies on the line of the other.

## The gap closed

figure-gap-seen = Seen from the side that the row is sewn on, to scale.
figure-gap-alt = The gap of { $gap } closed by a row that runs { $past } over the first one at both ends.
figure-gap-caption = The closing row begins and ends on the first one.
