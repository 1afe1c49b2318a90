### Gathering: where the rows lie and which way they are pulled, and how the cloth is shared out between the marks.

figure-gathering-pleated = Pleated by the attachment, right side up
figure-gathering-rows = Two rows of long stitches, right side up
figure-gathering-second-row = { $second-row } from the edge
figure-gathering-tails = tails
figure-gathering-pull = { $parts ->
    [8] Pull the tails until each eighth is short enough
   *[4] Pull the tails until each quarter is short enough
 }
# $knotted: whether the tails of that end are knotted, not wound round a pin.
figure-gathering-held = { $knotted ->
    [yes] knotted on both faces
   *[no] held round a pin
 }
figure-gathering-then-pin = then wound round a pin
figure-gathering-lengths = Flat and gathered, to one scale
figure-gathering-short = { $short } gathered, a mark every { $part }
# What the ends of the drawn edge are; then, where the cloth is shared unevenly, how much lies behind.
figure-gathering-ends = { $ring ->
    [yes] the edge is a ring: both ends are the same seam
   *[no] 0 and the last mark are the ends
 }
figure-gathering-ends-behind = { figure-gathering-ends }; { $behind } of the cloth lies behind
figure-gathering-pleated-alt = Pleating by the attachment, right side up: one row { $first-row } from the edge.
figure-gathering-rows-alt = Two rows of long stitches, right side up, { $first-row } and { $second-row } from the edge. Tails of { $tail } hang out.
figure-gathering-pulled-alt = { $knotted ->
    [yes] The tails of one end are knotted on both faces and cut, those of the other end are pulled until it is { $part } from mark to mark, then wound round a pin.
   *[no] The tails of one end are wound round a pin, those of the other end are pulled until it is { $part } from mark to mark, then wound round a pin too.
 }
figure-gathering-alt = { $method ->
    [attachment] Gathering by one row by the pleating attachment, { $first-row } from the edge: { $cloth } of flat cloth drawn to { $short }, marked at { $marks } of the flat cloth and every { $part } of the gathered edge.
    [hand] Gathering by two rows of running stitch, { $first-row } and { $second-row } from the edge: { $cloth } of flat cloth drawn to { $short }, marked at { $marks } of the flat cloth and every { $part } of the gathered edge.
   *[machine] Gathering by two rows of long stitches, { $first-row } and { $second-row } from the edge: { $cloth } of flat cloth drawn to { $short }, marked at { $marks } of the flat cloth and every { $part } of the gathered edge.
 }
figure-gathering-caption = { $cloth } of cloth is drawn to { $short }.
