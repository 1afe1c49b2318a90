### Finish a waist with petersham ribbon, turned to the inside.

petersham-title = Finish { EDGE($edge) } with { $ribbon }
petersham-aim = The ribbon lies inside and holds the waist at { $length }.
petersham-cut = Cut { $cut } of { $ribbon }.
petersham-lay = Lay the ribbon on the right side of { EDGE($edge) }, its lower edge { $lap } inside the cut edge, so that it stands up beyond it.
petersham-ends-ring = Turn { $end } of its start under, let its end lie on the start at the middle of the back, and pin it.
    .check = { petersham-held.check }
    .tolerance = { petersham-held.tolerance }
    .remedy = { petersham-held.remedy }
petersham-ends-flat = Turn { $end } under at both ends, level with the ends of the edge, and pin it.
    .check = { petersham-held.check }
    .tolerance = { petersham-held.tolerance }
    .remedy = { petersham-held.remedy }
# Said only as parts of the two above.
petersham-held =
    .check = The ribbon is { $length } long on the edge.
    .tolerance = { $off } more or less
    .remedy = { $gathered ->
        [yes] Draw the gathers closer or let them out.
       *[no] Share the difference out between the seams.
     }
petersham-sew = Sew { $close } inside the lower edge of the ribbon, { $length }, { $stitch }, a few stitches back at both ends.
    .check = The margin is caught under the ribbon all along.
    .remedy = Unpick where it slipped out and sew that stretch again.
petersham-turn = Turn the ribbon to the inside and press the waist on the row of stitches, the cloth rolled in by a hair.
    .check = The ribbon does not show from outside.
    .remedy = Roll the edge inwards with your fingers and press again.
petersham-catch = By hand, sew the ends of the ribbon down and catch its free edge to each seam margin that it crosses.
