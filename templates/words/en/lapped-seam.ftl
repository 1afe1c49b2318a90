### Lay a turned edge over another edge and topstitch it down.
### $to: the edge that lies on top. $edge: the edge that it is laid on, gathered or flat. -ring: both are rings.

lapped-seam-title = Lap { PIECE($to) } over { PIECE($edge) }
    .number = { $lap }
lapped-seam-aim = The seam lies flat and its row shows on the right side.

## The edge on top

lapped-seam-fold = Fold { EDGE($to) } { $turn } to the wrong side and press the fold.
lapped-seam-mark-ring = { $turned ->
    [yes] Mark the fold of { PIECE($to) } on the right side every { $part }, the first at { side-seam }.
   *[no] Mark { EDGE($to) } on the right side every { $part }, the first at { side-seam }.
 }
lapped-seam-mark-flat = { $turned ->
    [yes] Mark the fold of { PIECE($to) } on the right side every { $part }.
   *[no] Mark { EDGE($to) } on the right side every { $part }.
 }

## The edge underneath

lapped-seam-line = Draw a line { $lap } from { EDGE($edge) }, on its right side.

## Lay

lapped-seam-lay-ring = { $turned ->
    [yes] Turn both right side out and slip { PIECE($to) } over { PIECE($edge) }, the fold on that line.
   *[no] Turn both right side out and slip { PIECE($to) } over { PIECE($edge) }, the cut edge on that line.
 }
lapped-seam-lay-flat = { $turned ->
    [yes] Lay the fold of { PIECE($to) } on that line, both right side up.
   *[no] Lay { EDGE($to) } on that line, both right side up.
 }
# It lies where clips do not reach, so $hold is always pins.
lapped-seam-pin = { match-and-pin }
    .check = { COUNT($edge) ->
        [one] { PIECE($edge, at: "start") } reaches { $lap } under it everywhere.
       *[other] { PIECE($edge, at: "start") } reach { $lap } under it everywhere.
     }
    .tolerance = { $lap-off } more or less
    .remedy = Shift it where it left the line.

## Sew

lapped-seam-sew-ring = { $turned ->
    [yes] Sew { $from-fold } from the fold, { $stitch }, { $length } all round. Let the end overlap the start by three stitches.
   *[no] Sew { $from-fold } from the edge on top, { $stitch }, { $length } all round. Let the end overlap the start by three stitches.
 }
    .check = { lapped-seam-sew-flat.check }
    .remedy = { lapped-seam-sew-flat.remedy }
lapped-seam-sew-flat = { $turned ->
    [yes] Sew { $from-fold } from the fold, { $stitch }, { $length }, a few stitches back at both ends.
   *[no] Sew { $from-fold } from the edge on top, { $stitch }, { $length }, a few stitches back at both ends.
 }
    .check = The lower edge is caught all along; feel for it from the wrong side.
    .remedy = Unpick where it was missed, push it up to the line and sew again.
