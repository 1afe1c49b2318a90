### Finish the part of a seam that is open at the hem, as a slit or as a vent.

slit-title = Finish the slit of { PIECE($pieces) }
    .number = { $long }
slit-title-vent = Finish the vent of { PIECE($pieces) }
    .number = { $long }
slit-aim = The slit is { $long } long above the hem, and its edges lie flat.
slit-aim-vent = The vent is { $long } long above the hem and overlaps by { $margin }.
slit-press = Press both margins back along the opening and on along the seam above it, { $margin } each.
    .check = Both folds run on in the line of the seam.
    .remedy = Press again along the ruler.
slit-sew = With the right side up sew { $beside } beside the opening from the hem to its end. Turn on the needle, sew across and down the other side, { $stitch }, a few stitches back at both ends.
    .check = Both rows catch the margin all along.
    .remedy = Unpick where a margin slipped out and sew that stretch again.
slit-bar = Sew a bar { $bar } long across the end of the opening, four rows on each other.
slit-press-vent = Press both margins to one side, { $margin } wide, the left one on top as it is worn. Along the opening fold the upper margin back on itself in the line of the seam; the lower margin stays out beneath it.
    .check = Closed, the two sides overlap by { $margin } and hang level.
    .tolerance = { $close-off } more or less at the hem
    .remedy = Let the longer side hang free and press its fold again.
slit-hold-vent = Sew the folded margin down { $beside } from its edge, the opening spread flat, from the bottom edge to the end of the opening, { $now }, { $stitch }.
slit-across-vent = With the right side up chalk a line slantwise across the end of the opening, { $margin } long, and sew along it through both margins, forwards and back.
    .check = Both margins are caught inside.
    .remedy = Sew a second row beside the first.
