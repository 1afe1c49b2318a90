### Finish an edge with a strip that is turned to the inside.
### $edge: the edge that is finished; $facing: the strip.

facing-title = Face { EDGE($edge) }
facing-aim = The edge is clean and its margin lies inside.

facing-lay = Lay { PIECE($facing) } on { EDGE($edge) }, right sides together, seams on seams, and { pin } it.
facing-sew = Sew { $seam-width } from the edge, { $length }, { $stitch }.
facing-understitch = Turn the margin towards { PIECE($facing) }, and sew it down on { PIECE($facing) } { $understitch } from the seam, { $length }.
    .check = The margin is caught all along and the row does not reach the outer cloth.
    .remedy = Unpick where the outer cloth was caught and sew that stretch again.
facing-turn = Turn { PIECE($facing) } to the inside and press the edge, the seam a hair inside.
    .check = The facing does not show from outside.
    .remedy = Roll the seam inwards with your fingers and press again.
facing-catch = Catch the free edge of { PIECE($facing) } to the seam margins with a few slip stitches.
