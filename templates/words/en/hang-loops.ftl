### Baste loops of tape to an edge for hanging the garment up.
### $loops: how many on one edge.

hang-loops-title = Baste hang loops to { EDGE($edge) }
    .number = { $tape-each }
hang-loops-aim = { $loops ->
    [one] { $loops } loop will be caught in the next seam.
   *[other] { $loops } loops will be caught in the next seam.
 }

hang-loops-cut = { $all-loops ->
    [one] Cut { $tape-each } of { $tape }.
   *[other] Cut { $all-loops } lengths of { $tape }, { $tape-each } each.
 }
hang-loops-fold = { $all-loops ->
    [one] Fold it in half to a loop without twisting it, its ends side by side.
   *[other] Fold each in half to a loop without twisting it, its ends side by side.
 }
hang-loops-lay-ring = { $loops ->
    [one] Lay the loop on the inside of { EDGE($edge) }, at the middle of the back, its ends level with the cut edge, and { pin } it there.
   *[other] Lay the loops on the inside of { EDGE($edge) }, the first at { side-seam }, then every { $apart }, their ends level with the cut edge, and { pin } them there.
 }
    .check = { hang-loops-hang.check }
    .tolerance = { hang-loops-hang.tolerance }
    .remedy = { hang-loops-hang.remedy }
hang-loops-lay-flat = { $loops ->
    [one] Lay the loop on the inside of { EDGE($edge) }, at its middle, its ends level with the cut edge, and { pin } it there.
   *[other] Lay the loops on the inside of { EDGE($edge) }, the first { $half-apart } from one end, then every { $apart }, their ends level with the cut edge, and { pin } them there.
 }
    .check = { hang-loops-hang.check }
    .tolerance = { hang-loops-hang.tolerance }
    .remedy = { hang-loops-hang.remedy }
# Said only as parts of the two above.
hang-loops-hang =
    .check = { $loops ->
        [one] The loop hangs down { $hangs } and lies flat.
       *[other] Each loop hangs down { $hangs } and lies flat.
     }
    .tolerance = { $hangs-off } more or less
    .remedy = Shift its ends before you sew.
hang-loops-sew = { $loops ->
    [one] Sew twice across its ends, { $row } from the edge, { $stitch }. The rows stay inside the seam to come.
   *[other] Sew twice across the ends of each, { $row } from the edge, { $stitch }. The rows stay inside the seam to come.
 }
