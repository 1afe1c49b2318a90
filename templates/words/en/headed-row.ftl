### Gather a row below its edge and sew it on a line across a piece, so that a frill stands above the stitches.

headed-row-title = Sew { PIECE($row) } on { PIECE($on) } with a frill above the stitches
headed-row-aim = { $cloth } of cloth lies in { $length }: { $ratio } to 1.

headed-row-mark-ring = { $parts ->
    [8] Mark { EDGE($edge) } in eighths on both faces, every { $cloth-part }, and the line every { $part }, the first marks at { side-seam }.
   *[4] Mark { EDGE($edge) } in quarters on both faces, every { $cloth-part }, and the line every { $part }, the first marks at { side-seam }.
 }
headed-row-mark-flat = { $parts ->
    [8] Mark { EDGE($edge) } in eighths on both faces, every { $cloth-part }, and the line every { $part }.
   *[4] Mark { EDGE($edge) } in quarters on both faces, every { $cloth-part }, and the line every { $part }.
 }

headed-row-first-row = Sew a row { $heading } below { EDGE($edge) }. { rows-runs }
headed-row-second-row = Sew a second row the same way, { $apart } below the first.
    .check = The two rows run side by side.
headed-row-pull = { $parts ->
    [8] At the other end pull both bobbin threads together until every eighth measures { $part }. Wind these tails round a pin too.
   *[4] At the other end pull both bobbin threads together until every quarter measures { $part }. Wind these tails round a pin too.
 }
    .check = The gathered line is { $length } long; the frill above it stands free.
    .tolerance = up to { $ease } short may be eased in
    .remedy = More than { $ease } short: let the gathers out. Too long: pull closer.

headed-row-lay = Lay { PIECE($row) } on { PIECE($on) }, right side up, the upper row on the line and mark on mark. Pin it there, then every { $spacing }.
headed-row-sew-ring = Sew on both gathering rows from the right side, { $length } all round each, { $stitch }. Let the ends overlap the starts by three stitches.
    .check = The frill stands { $heading } above the seam all along.
    .tolerance = { $frill-off } more or less
    .remedy = Unpick where the row left the gathers and sew it again.
headed-row-sew-flat = Sew on both gathering rows from the right side, { $length } each, { $stitch }, a few stitches back at both ends.
    .check = { headed-row-sew-ring.check }
    .tolerance = { headed-row-sew-ring.tolerance }
    .remedy = { headed-row-sew-ring.remedy }
