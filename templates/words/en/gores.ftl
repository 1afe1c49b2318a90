### Cut panels that widen to the hem, two from each rectangle by one slanting line.
### $gores: how many; $odd: the last rectangle gives only one.

gores-title = Cut { PIECE($piece) } to gores
gores-aim = { $gores } gores, each { $top } at the top and { $hem } at the hem when finished.
gores-lay = Lay the rectangle for { PIECE($piece) } flat, { $wide } wide and { $high } high, its upper edge away from you.
gores-mark-pair = On the upper edge mark { $narrow } from the left corner, on the lower edge { $broad } from the left corner. Draw a straight line from mark to mark.
    .check = The line is { $slant } long.
    .tolerance = { $off } more or less
    .remedy = Measure both marks again from the left side.
# Cloth with a way up: no gore may stand on its head.
gores-mark-one = On the upper edge mark { $narrow } from the left corner. Draw a straight line from there to the lower right corner.
    .check = { gores-mark-pair.check }
    .tolerance = { gores-mark-pair.tolerance }
    .remedy = { gores-mark-pair.remedy }
gores-cut = Cut along the line in one go, the shears flat on the table. Do not pull at the slanting sides.
gores-name = { $odd ->
    [yes] Mark the narrow end of each gore as its top. Of the last rectangle keep one gore; the other stays over.
   *[no] Mark the narrow end of each gore as its top. Later sew each straight side to a slanting one.
 }
