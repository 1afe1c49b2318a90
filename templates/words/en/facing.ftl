### Finish an edge with a strip that is turned to the inside.
### $edge: the edge that is finished; $facing: the strip.

facing-title = Face { EDGE($edge) }
    .number = { $seam-width }
facing-aim = The edge is clean and its margin lies inside.

## Sew on

facing-ends = Fold each end of { PIECE($facing) } { $ends } to the wrong side and press the fold.
    .check = Folded, it is as long as { EDGE($edge) }.
    .remedy = Press the folds out and fold them again.
facing-lay-ring = Lay { PIECE($facing) } on { EDGE($edge) }, right sides together, seams on seams, and { pin } it.
facing-lay-flat = Lay { PIECE($facing) } on { EDGE($edge) }, right sides together, ends on ends, and { pin } it.
facing-sew-ring = Sew { $seam-width } from the edge, { $length } all round, { $stitch }. Let the end overlap the start by three stitches.
facing-sew-flat = Sew { $seam-width } from the edge, { $length }, { $stitch }, a few stitches back at both ends.
# A margin on a curve does not lie flat where it is turned to.
facing-clip = The edge is curved: cut into both margins every { $clips }, up to { $clip-short } before the stitches.
    .check = The margins open or close flat, and no stitch is cut.
    .remedy = Where a stitch is cut, sew that stretch again, a little further in.
# The row holds the margin to the strip, so that the strip does not roll out.
facing-understitch-ring = Turn both margins towards { PIECE($facing) }. The right side of { PIECE($facing) } up, sew { $understitch } from the seam through it and both margins, { $length } all round.
    .check = Both margins are caught all along and the row does not reach the outer cloth.
    .remedy = Unpick where the outer cloth was caught and sew that stretch again.
facing-understitch-flat = Turn both margins towards { PIECE($facing) }. The right side of { PIECE($facing) } up, sew { $understitch } from the seam through it and both margins, { $length }, a few stitches back at both ends.
    .check = { facing-understitch-ring.check }
    .remedy = { facing-understitch-ring.remedy }

## Turn inside

facing-turn = Turn { PIECE($facing) } to the inside and press the edge from the inside, the seam a hair inside.
    .check = The facing does not show from outside.
    .remedy = Roll the seam inwards with your fingers and press again.
facing-catch-ring = By hand, catch the free edge of { PIECE($facing) } with a few slip stitches to each seam margin that it crosses.
facing-catch-flat = By hand, catch the free edge of { PIECE($facing) } with a few slip stitches at both ends and to each seam margin that it crosses.
