### Sew elastic straight to an edge and turn it inside, without a casing.

sewn-elastic-title = Sew { $elastic } to { EDGE($edge) }
sewn-elastic-aim = The elastic draws { $cloth } of cloth in to { $length }.
sewn-elastic-join = Cut { $cut } of { $elastic }. Lap its ends { $overlap } and sew them together with three rows of zigzag.
sewn-elastic-mark = { $parts ->
    [8] Mark the loop in eighths, every { $part }, and { EDGE($edge) } every { $cloth-part }, the first marks at the lap and at { side-seam }.
   *[4] Mark the loop in quarters, every { $part }, and { EDGE($edge) } every { $cloth-part }, the first marks at the lap and at { side-seam }.
 }
sewn-elastic-pin = Lay the loop on the wrong side of { EDGE($edge) }, its edge level with the edge of the cloth, and pin it at the marks.
    .check = The lap lies at { side-seam }, and the loop is not twisted.
    .remedy = Take it off at the twist and turn it.
sewn-elastic-sew = With the elastic on top, stretch it from mark to mark until the cloth lies flat, and sew along its edge, { $cloth } all round. Pull before and behind the foot alike, or the needle bends.
    .check = The cloth is spread evenly between the marks.
    .remedy = Unpick from mark to mark and stretch again.
sewn-elastic-turn = Turn elastic and edge { $turn-width } to the inside. From the right side, stretched flat, sew along the lower edge of the elastic, all round.
    .check = The elastic is caught all round and lies flat.
    .remedy = Sew again where it was missed.
sewn-elastic-measure = Measure the edge at rest: { $length }.
    .check = It measures { $length }.
    .tolerance = { $off } more or less
    .remedy = Longer: hold the steam iron above it without touching, and it draws in. Shorter: stretch it once to its full length.
