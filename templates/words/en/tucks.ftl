### Sew tucks across a piece: folds stitched down along its length.

tucks-title = { $tucks ->
    [one] Sew { $tucks } tuck in { PIECE($piece) }
   *[other] Sew { $tucks } tucks in { PIECE($piece) }
 }
    .number = { $depth }
tucks-aim = { $tucks ->
    [one] { $tucks } tuck of { $depth } takes { $taken } of depth.
   *[other] { $tucks } tucks of { $depth } take { $taken } of depth.
 }

## Mark

tucks-mark-first = Mark a fold line { $line } above { EDGE($edge) }, all along.
    .check = The line keeps its distance from the edge.
    .tolerance = { $line-off } more or less
    .remedy = Draw it again where it wanders: every later tuck follows it.
tucks-mark-next = Mark fold line { $number }, { $line } above the edge, measured on the flat cloth.

## Sew

tucks-sew = { $ring ->
    [yes] Fold line { $number } wrong sides together and sew { $depth } from the fold, { $length } all round, { $stitch }. Let the end overlap the start by three stitches.
   *[no] Fold line { $number } wrong sides together and sew { $depth } from the fold, { $length }, { $stitch }, a few stitches back at both ends.
 }
    .check = The tuck is { $depth } deep all along.
    .tolerance = { $line-off } more or less
    .remedy = Unpick the stretch that wandered and sew it again from the fold.
# The last of several.
tucks-sew-last = { tucks-sew }
    .check = The tucks are { $depth } deep and their stitch lines { $apart } apart.
    .tolerance = { tucks-sew.tolerance }
    .remedy = { tucks-sew.remedy }
tucks-press = { $tucks ->
    [one] Press the tuck down, towards the hem. Lift the iron and set it down, do not drag it.
   *[other] Press all tucks down, towards the hem. Lift the iron and set it down, do not drag it.
 }
    .check = { PIECE($piece, at: "start") } is { $left } deep now, without what its other edges still give.
