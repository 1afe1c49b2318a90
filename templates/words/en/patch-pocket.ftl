### Sew a patch pocket on a piece.
### $pocket: the pocket; $on: the piece beneath; $pockets: how many.

patch-pocket-title = { $pockets ->
    [one] Sew { PIECE($pocket) } on { PIECE($on) }
   *[other] Sew each copy of { PIECE($pocket) } on { PIECE($on) }
 }
patch-pocket-aim = { $pockets ->
    [one] It is { $wide } wide and { $high } high, and opens at the top.
   *[other] Each is { $wide } wide and { $high } high, and opens at the top.
 }

## Prepare

patch-pocket-hem = Press { $under } of the top edge of { PIECE($pocket) } to the wrong side, then { $hem } more. Sew { $edge } from the inner fold, from side to side, { $stitch }.
patch-pocket-press = Fold the two lower corners in at a slant, then press { $turn } of both sides and of the bottom to the wrong side.
    .check = It is { $wide } wide and { $high } high, and its corners are square.
    .tolerance = { $off } more or less
    .remedy = Press the fold again where it wanders.
# $finished: the top edge of the piece beneath is in a seam already, and is measured from there.
patch-pocket-mark-ring = { $finished ->
    [yes] On the right side of { PIECE($on) } mark the two upper corners { $from-edge } below its top seam: { $near } and { $far } from { side-seam }.
   *[no] On the right side of { PIECE($on) } mark the two upper corners { $from-edge } below its cut top edge: { $near } and { $far } from { side-seam }.
 }
    .check = { patch-pocket-level.check }
    .tolerance = { patch-pocket-level.tolerance }
    .remedy = { patch-pocket-level.remedy }
patch-pocket-mark-flat = { $finished ->
    [yes] On the right side of { PIECE($on) } mark the two upper corners { $from-edge } below its top seam: { $near } and { $far } from the left end as it is now.
   *[no] On the right side of { PIECE($on) } mark the two upper corners { $from-edge } below its cut top edge: { $near } and { $far } from the left end as it is now.
 }
    .check = { patch-pocket-level.check }
    .tolerance = { patch-pocket-level.tolerance }
    .remedy = { patch-pocket-level.remedy }
# Said only as parts of the two above.
patch-pocket-level =
    .check = Both marks lie level.
    .tolerance = { $level-off } more or less
    .remedy = Measure again from the top edge.
patch-pocket-mark-other = Mark the other pocket at the same height and as far from the other side.

## Sew on

patch-pocket-pin = Lay { PIECE($pocket) } on, right side up, its upper corners at the marks, and pin it.
patch-pocket-sew = Sew { $edge } from the edge down one side, along the bottom and up the other side, { $stitch }. At both upper corners sew a triangle { $triangle } long, and sew back.
    .check = The pocket lies flat, a hand goes in, and no pin is left inside.
    .remedy = Unpick the side that pulls, smooth it and sew it again.
