### Cut panels that widen to the hem, head to tail from rectangles.
### $gores: how many; $odd: the last rectangle gives fewer than the others.

gores-title = Cut { PIECE($piece) } to gores
gores-aim = { $gores } gores, each { $top } at the top and { $hem } at the hem when finished.
gores-lay = { $turns ->
    [yes] Lay the rectangle for { PIECE($piece) } flat, wrong side up, { $wide } wide and { $high } high. Either of its sides { $wide } long may be the upper one.
   *[no] Lay the rectangle for { PIECE($piece) } flat, wrong side up, { $wide } wide and { $high } high, its upper edge away from you.
 }
gores-mark-pair = On the upper edge mark { $narrow } from the left corner, on the lower edge { $broad } from the left corner. Draw a straight line from mark to mark.
    .check = The line is { $slant } long.
    .tolerance = { $off } more or less
    .remedy = Measure both marks again from the left side.
# Cloth with a way up: no gore may stand on its head.
gores-mark-one = On the upper edge mark { $narrow } from the left corner. Draw a straight line from there to the lower right corner.
    .check = { gores-mark-pair.check }
    .tolerance = { gores-mark-pair.tolerance }
    .remedy = { gores-mark-pair.remedy }

## Both sides slant, several in a row

# One kind of gore in the aim.
gores-width = { $place ->
    [front] { $many } front, { $top } at the top and { $hem } at the hem
    [back] { $many } back, { $top } at the top and { $hem } at the hem
   *[side] { $many } at the sides, { $top } at the top and { $hem } at the hem
 }
gores-aim-differ = { $gores } gores, finished: { $widths }.
gores-square = { $turns ->
    [yes] Lay the rectangle for { PIECE($piece) } flat, wrong side up, { $wide } wide and { $high } high. Either of its sides { $wide } long may be the upper one.
   *[no] Lay the rectangle for { PIECE($piece) } flat, wrong side up, { $wide } wide and { $high } high, its upper edge away from you.
 }
    .check = Both its diagonals are { $diagonal } long.
    .tolerance = { $off } more or less
    .remedy = Straighten the upper and the lower edge at a right angle to the side before marking.
# Where a line meets an edge: no distance.
gores-corner = 0
gores-line = { $line } { $upper } above, { $lower } below
gores-mark = { $line } { $at }
gores-mark-row = { $which ->
    [first] { $times ->
        [one] On one rectangle mark along the upper edge, from its left corner: { $upper-marks }.
       *[other] On { $times } rectangles mark along the upper edge, from its left corner: { $upper-marks }.
    }
    [next] { $times ->
        [one] On another rectangle mark along the upper edge, from its left corner: { $upper-marks }.
       *[other] On { $times } other rectangles mark along the upper edge, from its left corner: { $upper-marks }.
    }
    [last] { $times ->
        [one] On the other rectangle mark along the upper edge, from its left corner: { $upper-marks }.
       *[other] On the other { $times } rectangles mark along the upper edge, from its left corner: { $upper-marks }.
    }
   *[all] Mark along the upper edge, from its left corner: { $upper-marks }.
 }
gores-mark-lower = There mark along the lower edge, from its left corner: { $lower-marks }.
gores-draw-row = Draw each line straight from its upper mark to its lower one.
    .check = { $alike ->
        [yes] Each line is { $longest } long.
       *[no] The shortest line is { $shortest } long, the longest { $longest }.
     }
    .tolerance = { $off } more or less
    .remedy = Measure its two marks again from the left corners.
gores-name-row = { $which ->
    [first] { $times ->
        [one] On one rectangle write its place on each gore, at the narrow end, from left to right: { $places }.
       *[other] On { $times } rectangles write its place on each gore, at the narrow end, from left to right: { $places }.
    }
    [next] { $times ->
        [one] On another rectangle write its place on each gore, at the narrow end, from left to right: { $places }.
       *[other] On { $times } other rectangles write its place on each gore, at the narrow end, from left to right: { $places }.
    }
    [last] { $times ->
        [one] On the other rectangle write its place on each gore, at the narrow end, from left to right: { $places }.
       *[other] On the other { $times } rectangles write its place on each gore, at the narrow end, from left to right: { $places }.
    }
   *[all] Write its place on each gore, at the narrow end, from left to right: { $places }.
 }

## Cut and name

gores-cut = Cut along each line in one go, the shears flat on the table. Do not pull at the slanting sides.
gores-name = { $odd ->
    [yes] Mark the narrow end of each gore as its top. Of the last rectangle keep one gore; the other stays over.
   *[no] Mark the narrow end of each gore as its top. Later sew each straight side to a slanting one.
 }
gores-name-both = Mark the narrow end of each gore as its top. What lies beside the gores stays over. Both sides of a gore slant alike, so any two go together. A tag comes off now: what is written on the gores stands for it.
gores-order = What lies beside the gores stays over. Pile the gores up in the order in which they are sewn side to side: { $order }. A tag comes off now: what is written on the gores stands for it.
