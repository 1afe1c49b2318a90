### Sew two shoulder straps and stitch them inside the top edge.

straps-title = Sew both copies of { PIECE($strap) } to { EDGE($edge) }
straps-aim = Each strap is { $wide } wide and shows { $long } from edge to edge.
straps-sew = Fold the strip in half along its length, right sides together. Sew { $seam-width } from the long edges, { $stitch }, and leave both ends open.
straps-turn = Close a safety pin into one end and push it through to the other, so that the tube turns right side out. Press it flat, the seam along one edge.
    .check = It is { $wide } wide all along.
    .tolerance = { $hair-off } more or less
    .remedy = Roll the seam to the edge with your fingers and press again.
straps-close = Close the way in at { EDGE($edge) }, or pin it shut as it will close: it is { $round } round then.
straps-mark = Mark { EDGE($edge) } in quarters, every { $quarter }, from { side-seam } as one side. From the middle of the front mark { $half-front } to both sides, from the middle of the back { $half-back }.
    .check = Front and back marks lie as far from the side on the left as on the right.
    .tolerance = { $close-off } more or less
    .remedy = Measure again from the middle.
straps-pin = Fold { $under } of each strap end under and pin it inside the edge, { $lap } deep: one end in front, the other behind, without crossing or twisting them.
straps-try = Put the garment on and look at it in a mirror.
    .check = The straps neither cut in nor slip, and the edge hangs level.
    .remedy = Move the ends behind up or down by the same amount, and pin them again.
straps-fasten = Sew each end on in a rectangle, { $close } inside its edges and along the top edge, { $stitch }, a few stitches back.
    .check = A hard pull moves no end.
    .remedy = Sew the rectangle once more.
