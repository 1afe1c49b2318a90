### Gather a flounce below its edge, so that a frill stands above the rows, and sew it on through them.

ruched-heading-title = Sew on { PIECE($flounce) } with a frill above the seam
    .number = { $cloth } → { $length }
ruched-heading-aim = { $cloth } of cloth lies in { $length }: { $ratio } to 1.

## Mark

ruched-heading-mark-ring = { $parts ->
    [8] Mark { EDGE($edge) } in eighths on both faces, every { $cloth-part }, the first at { side-seam }.
   *[4] Mark { EDGE($edge) } in quarters on both faces, every { $cloth-part }, the first at { side-seam }.
 }
ruched-heading-mark-flat = { $parts ->
    [8] Mark { EDGE($edge) } in eighths on both faces, every { $cloth-part }.
   *[4] Mark { EDGE($edge) } in quarters on both faces, every { $cloth-part }.
 }
ruched-heading-mark-line = Mark a line { $lap } above { EDGE($to) }, on its right side, all along.

## Gather

ruched-heading-first-row = Sew a row { $heading } below { EDGE($edge) }. { rows-runs }
ruched-heading-second-row = Sew a second row the same way, { $apart } below the first.
    .check = The two rows run side by side.
ruched-heading-pull = { $parts ->
    [8] At the other end pull both bobbin threads together until every eighth measures { $part }. Wind these tails round a pin too.
   *[4] At the other end pull both bobbin threads together until every quarter measures { $part }. Wind these tails round a pin too.
 }
    .check = The gathered line is { $length } long; the frill above it stands free.
    .tolerance = up to { $ease } short may be eased in
    .remedy = More than { $ease } short: let the gathers out. Too long: pull closer.

## Sew on

ruched-heading-lay = Lay { PIECE($flounce) } on the right side of { PIECE($to) }, right side up, the upper row on the line and mark on mark. { pin-start } it there, then every { $spacing }.
ruched-heading-sew-ring = Sew on both gathering rows from the right side, { $length } all round each, { $stitch }. Let the ends overlap the starts by three stitches.
    .check = The frill stands { $heading } above the seam all along.
    .tolerance = { $frill-off } more or less
    .remedy = Unpick where the row left the gathers and sew it again.
ruched-heading-sew-flat = Sew on both gathering rows from the right side, { $length } each, { $stitch }, a few stitches back at both ends.
    .check = { ruched-heading-sew-ring.check }
    .tolerance = { ruched-heading-sew-ring.tolerance }
    .remedy = { ruched-heading-sew-ring.remedy }
