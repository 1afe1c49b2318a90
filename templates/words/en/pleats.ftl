### Lay an edge in knife, box or inverted pleats.

pleats-title = { $kind ->
    [knife] Lay { EDGE($edge) } in knife pleats
    [box] Lay { EDGE($edge) } in box pleats
   *[inverted] Lay { EDGE($edge) } in inverted pleats
 }
    .number = { $cloth } → { $length }
pleats-aim = { $count ->
    [one] { $cloth } - { $length } = { $taken } lies in { $count } pleat, { $depth } deep.
   *[other] { $cloth } - { $length } = { $taken } lies in { $count } pleats, { $depth } deep each.
 }

## Marks

pleats-mark-ring = { $count ->
    [one] Mark { EDGE($edge) } once, at the seam.
   *[other] Mark { EDGE($edge) } every { $every }, { $count } times, the first at the seam.
 }
    .check = { $count ->
        [one] { $count } mark.
       *[other] { $count } marks, the last { $every } from the first.
     }
    .tolerance = { $mark-off } in all
    .remedy = Share what is left over among all the marks.
# Knife pleats begin at their marks.
pleats-mark-flat = { $count ->
    [one] Mark { EDGE($edge) } once, at one end.
   *[other] Mark { EDGE($edge) } every { $every }, { $count } times, from one end.
 }
    .check = { $count ->
        [one] { $count } mark.
       *[other] { $count } marks, the last { $every } from the other end.
     }
    .tolerance = { pleats-mark-ring.tolerance }
    .remedy = { pleats-mark-ring.remedy }
# Box and inverted pleats have their marks in the middle.
pleats-mark-flat-middles = { $count ->
    [one] Mark { EDGE($edge) } once, in the middle.
   *[other] Mark { EDGE($edge) } every { $every }, { $count } times, the first { $half } from one end.
 }
    .check = { $count ->
        [one] { $count } mark, { $half } from both ends.
       *[other] { $count } marks, the last { $half } from the other end.
     }
    .tolerance = { pleats-mark-ring.tolerance }
    .remedy = { pleats-mark-ring.remedy }
pleats-lines-knife = At each mark, mark a second line { $twice } further on.
pleats-lines-box = At each mark, mark a line { $half-shown } to both sides.
pleats-lines-inverted = At each mark, mark a line { $twice } to both sides.

## Fold

pleats-fold-knife = Fold at the second line and bring the fold back to the first mark, all folds facing one way. { pin-start } each pleat.
pleats-fold-box = Fold both lines to the back, { $depth } deep, so that each box meets the next one. { pin-start } each fold.
pleats-fold-inverted = Bring both lines to the mark between them, so that the two folds meet in front. { pin-start } each fold.

## Measure and hold

pleats-measure-ring = Measure the pleated edge all round: { $length }.
    .check = It is { $length } long and each pleat shows { $shown }.
    .tolerance = { $off } more or less
    .remedy = Too long: lay a few pleats a hair deeper. Too short: shallower. Spread it over many pleats.
pleats-measure-flat = Measure the pleated edge: { $length }.
    .check = { pleats-measure-ring.check }
    .tolerance = { pleats-measure-ring.tolerance }
    .remedy = { pleats-measure-ring.remedy }
pleats-sew-down = Sew the pleats down { $from-edge } from the edge with the longest stitch, { $length }. This row stays inside the seam.
pleats-press = Press the pleats from the top, as far down as they are to stay sharp. Lift the iron and set it down, do not drag it.
