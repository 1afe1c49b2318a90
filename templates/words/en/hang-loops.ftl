### Baste loops of tape to an edge for hanging the garment up.

hang-loops-title = Baste hang loops to { EDGE($edge) }
hang-loops-aim = { hang-loops-counted } will be caught in the next seam.

# "2 loops", said only inside other messages. $loops: of one edge.
hang-loops-counted = { $loops ->
    [one] { $loops } loop
   *[other] { $loops } loops
 }

hang-loops-cut = { $loops ->
    [one] Cut { $loops } length of { $tape }, { $length } each.
   *[other] Cut { $loops } lengths of { $tape }, { $length } each.
 }
hang-loops-fold = Fold each in half to a loop without twisting it, and lay both its ends side by side.
hang-loops-lay = { $loops ->
    [one] Lay the loops on the inside of { EDGE($edge) }, ends level with the cut edge, loops hanging down, at the middle of the back.
   *[other] Lay the loops on the inside of { EDGE($edge) }, ends level with the cut edge, loops hanging down, { $apart } apart, the first at a side seam.
 }
    .check = Each loop hangs down { $hangs }.
    .tolerance = { $hangs-off } more or less
    .remedy = Shift its ends before you sew.
hang-loops-sew = Sew across the ends { $row } from the edge, twice; the row stays inside the seam.
