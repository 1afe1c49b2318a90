### Draw an edge into small round pleats by hand and whip them to the edge that carries them.

cartridge-pleats-title = Sew { PIECE($edge) } to { PIECE($to) } in cartridge pleats
cartridge-pleats-aim = { $cloth } of cloth stands in { $length }, about { $pleats } pleats.

## Turn and mark

cartridge-pleats-turn = Turn { EDGE($edge) } { $turn } to the wrong side and press the fold.
cartridge-pleats-turn-carrier = Turn { EDGE($to) } { $turn } to the wrong side and press the fold.
cartridge-pleats-dots = Mark dots { $stitch } apart along { EDGE($edge) }, { $first-row } below the fold.
    .check = There are about { $dots } dots.

## Draw up

cartridge-pleats-rows = Sew { $rows } rows of running stitches on the dots, { $apart } apart, with strong thread, each stitch exactly under the one above; leave long tails.
    .check = The stitches of all rows stand under each other.
    .remedy = Draw out the row that is out of step and sew it again: uneven rows give no pleats.
cartridge-pleats-draw = Draw all rows up together to { $length } and knot the tails.
    .check = About { $pleats } pleats stand side by side in { $length }.
    .tolerance = { $off } more or less
    .remedy = Ease the pleats along the threads until they are even.

## Sew on

cartridge-pleats-whip = Lay { EDGE($edge) } against { EDGE($to) }, right sides together, and whip each pleat to it with two stitches.
    .check = No pleat is missed.
    .remedy = Catch a missed pleat with two stitches of its own.
