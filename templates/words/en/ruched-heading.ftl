### Gather a flounce below its edge, so that a frill stands above the rows, and sew it on through them.

ruched-heading-title = Sew on { PIECE($flounce) } with a frill above the seam
ruched-heading-aim = { $cloth } of cloth lies in { $length }: { $ratio } to 1.

ruched-heading-mark = Mark { EDGE($edge) } and { EDGE($to) } in quarters: every { $cloth-part } on { PIECE($flounce) }, every { $part } on { PIECE($to) }.

## Gather

ruched-heading-first-row = Sew a row of the longest stitch { $heading } below { EDGE($edge) }; do not sew back, and leave { $tail } of thread at both ends.
ruched-heading-second-row = Sew a second row { $apart } below the first.
    .check = The two rows run side by side.
ruched-heading-pull = Pull the two bobbin threads until every quarter measures { $part }.
    .check = The gathered line is { $length } long; the frill above it stands free.
    .tolerance = up to { $ease } short may be eased in
    .remedy = More than { $ease } short: let the gathers out. Too long: pull closer.

## Sew on

ruched-heading-mark-line = Mark a line { $lap } above { EDGE($to) }, on its right side.
ruched-heading-lay = Lay { PIECE($flounce) } on it, right side up, the upper row on the line, and { pin } at the quarters, then every { $spacing }.
ruched-heading-sew = Sew on both gathering rows from the right side, { $length } each, { $stitch }.
    .check = The frill stands { $heading } above the seam all along.
    .tolerance = { $frill-off } more or less
    .remedy = Unpick where the row left the gathers and sew it again.
