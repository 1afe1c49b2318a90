### Lay a turned edge over another edge and topstitch it down.
### $over: the edge that lies on top. $under: the edge that it is laid on.

lapped-seam-title = Lap { PIECE($over) } over { PIECE($under) }
lapped-seam-aim = The seam lies flat and its row shows on the right side.

lapped-seam-fold = Fold { EDGE($over) } { $turn } to the wrong side and press the fold.
lapped-seam-mark = Mark a line { $lap } from { EDGE($under) }, on its right side.
lapped-seam-lay = { $turned ->
    [yes] Lay the fold of { PIECE($over) } on that line, right side up, and { pin } it.
   *[no] Lay the edge of { PIECE($over) } on that line, right side up, and { pin } it.
 }
    .check = { PIECE($under, at: "start") } reaches { $lap } under it everywhere.
    .tolerance = { $off } more or less
    .remedy = Shift it where it left the line.
lapped-seam-sew = Sew { $from-fold } from the fold, { $length }, { $stitch }.
    .check = The lower edge is caught all along; feel for it from the wrong side.
    .remedy = Unpick where it was missed, push it up to the line and sew again.
