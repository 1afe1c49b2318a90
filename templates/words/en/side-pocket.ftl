### Sew a pocket into the gap of a seam.
### $bag: the bag, two pieces; $on: the piece whose seam has the gap.

side-pocket-title = Sew a pocket into the seam of { PIECE($on) }
side-pocket-aim = The gap of { $gap } opens into a bag { $wide } wide and { $high } high.

side-pocket-mark = Mark the gap on both margins of the seam, { $begins } and { $ends } below the top edge, and { $above } above the upper mark where the bag begins.
side-pocket-lay = Lay one piece of { PIECE($bag) } on each margin, right sides together. Its upright edge is level with the edge of the margin, its top { $above } above the gap. Pin both.
    .check = Both pieces lie at one height and point away from the seam.
    .tolerance = { $close-off } more or less
    .remedy = Shift one piece before you sew.
side-pocket-sew = Sew each piece to its margin alone, { $seam-width } from the edge, { $high }, { $stitch }, a few stitches back at both ends.
    .check = The outer cloth is not caught.
    .remedy = Unpick where it was caught and sew that stretch again.
side-pocket-turn = Turn both pieces out over their seams and press them to the front, right sides together.
side-pocket-close = Pin both pieces on each other. Sew them together { $seam-width } from the edge: from the seam along the top, down the side and back along the bottom, { $around }, { $stitch }.
    .check = A hand reaches into both corners, and nothing falls through.
    .remedy = Sew a second row where the first left the cloth.
side-pocket-bars = With the right side up sew a bar { $bar } long across the seam at both ends of the gap, four rows on each other.
