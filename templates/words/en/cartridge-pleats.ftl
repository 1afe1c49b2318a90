### Draw an edge into small round pleats by hand and whip them to the edge that carries them.

cartridge-pleats-title = Sew { PIECE($edge) } to { PIECE($to) } in cartridge pleats
    .number = { $cloth } → { $length }
cartridge-pleats-aim = { $cloth } of cloth stands in { $length }, about { $pleats } pleats.

## Turn and mark

cartridge-pleats-turn = Turn { EDGE($edge) } { $turn } to the wrong side and press the fold.
cartridge-pleats-turn-carrier = Turn { EDGE($to) } { $turn } to the wrong side and press the fold.
cartridge-pleats-mark-ring = { $parts ->
    [8] Mark both folds in eighths, the first at the side seam: { PIECE($edge) } every { $cloth-part }, { PIECE($to) } every { $part }.
   *[4] Mark both folds in quarters, the first at the side seam: { PIECE($edge) } every { $cloth-part }, { PIECE($to) } every { $part }.
 }
cartridge-pleats-mark-flat = { $parts ->
    [8] Mark both folds in eighths: { PIECE($edge) } every { $cloth-part }, { PIECE($to) } every { $part }.
   *[4] Mark both folds in quarters: { PIECE($edge) } every { $cloth-part }, { PIECE($to) } every { $part }.
 }
cartridge-pleats-dots = Mark { $rows } rows of dots on the wrong side of { PIECE($edge) }, the first row { $first-row } below the fold, the rows { $apart } apart. In each row the dots lie { $stitch } apart, each under the one above.
    .check = There are about { $dots } dots in each row.

## Draw up

# $runs, $per-run: see `rows-runs`.
cartridge-pleats-rows = { $in-runs ->
    [yes] { $per-run ->
        [one] Sew running stitches from dot to dot with strong thread, in { $runs } runs, one from each mark to the next. Begin each run with a new thread and a knot, in every row, and leave { $tail } hanging at its end.
       *[other] { $parts ->
            [8] Sew running stitches from dot to dot with strong thread, in { $runs } runs over { $per-run } eighths each. Begin each run with a new thread and a knot, in every row, and leave { $tail } hanging at its end.
           *[4] Sew running stitches from dot to dot with strong thread, in { $runs } runs over { $per-run } quarters each. Begin each run with a new thread and a knot, in every row, and leave { $tail } hanging at its end.
        }
    }
   *[no] Sew running stitches from dot to dot with strong thread, one row after the other. Begin each row with a new thread and a knot, and leave { $tail } hanging at its end.
 }
    .check = The stitches of all rows stand under each other.
    .remedy = Draw out the row that is out of step and sew it again: uneven rows give no pleats.
cartridge-pleats-draw = { $in-runs ->
    [yes] { $parts ->
        [8] Draw all rows up together, run by run, until each eighth measures { $part }. Put a pin across at the end of each run and wind the tails round it.
       *[4] Draw all rows up together, run by run, until each quarter measures { $part }. Put a pin across at the end of each run and wind the tails round it.
    }
   *[no] { $parts ->
        [8] Draw all rows up together until each eighth measures { $part }. Put a pin across at their end and wind the tails round it.
       *[4] Draw all rows up together until each quarter measures { $part }. Put a pin across at their end and wind the tails round it.
    }
 }
    .check = About { $pleats } pleats stand side by side in { $length }.
    .tolerance = { $off } more or less
    .remedy = Ease the pleats along the threads until they are even.
cartridge-pleats-knot = { $in-runs ->
    [yes] Take out these pins, knot the tails of each run together, and cut them to { $knot }.
   *[no] Take out this pin, knot the tails of all rows together, and cut them to { $knot }.
 }

## Sew on

cartridge-pleats-pin = Lay the pleated fold against the fold of { PIECE($to) }, right sides together, mark on mark, and { pin } it at the marks.
cartridge-pleats-whip = Whip each pleat to the fold of { PIECE($to) } with two stitches: about { $stitches } in all.
    .check = No pleat is missed.
    .remedy = Catch a missed pleat with two stitches of its own.
