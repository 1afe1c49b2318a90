### Seams cut through: sewn, neatened, turned and topstitched.
### $above and $below: the plies of cloth of the upper and of the lower side, each said as `figure-plies`.

# One piece, in one ply or several.
figure-plies = { $count ->
    [1] { $piece }
   *[other] { $count } × { $piece }
 }

## As it is sewn

figure-seam-machine = At the machine
figure-seam-opened = Opened out, margin up
# $faced: whether the cloth has a right and a wrong side.
figure-seam-alt = { $faced ->
    [yes] Cut through the seam: { $above } on top, { $below } underneath, right sides together, stitched { $seam-width } from the raw edges. Opened out, the margins of both stand up on the wrong side.
   *[no] Cut through the seam: { $above } on top, { $below } underneath, edges level, stitched { $seam-width } from the raw edges. Opened out, the margins of both stand up on the wrong side.
 }
figure-seam-caption = The seam cut through, { $seam-width } wide.{ figure-hatched }

## Neatened

figure-margin-standing = Margin standing up
figure-margin-stitch = { $by ->
    [overlocker] overlock stitch
    [zigzag] zigzag stitch
   *[shears] pinked edge
 }
figure-margin-alt = { $by ->
    [overlocker] Cut through the seam, its margin of { $seam-width } standing up, all its plies held by one overlock stitch.
    [zigzag] Cut through the seam, its margin of { $seam-width } standing up, all its plies held by one zigzag stitch.
   *[shears] Cut through the seam, its margin of { $seam-width } standing up, all its plies pinked together.
 }
figure-margin-caption = { $by ->
    [overlocker] The margin with its overlock stitch round all the cut edges.{ figure-hatched }
    [zigzag] The margin with its zigzag stitch round all the cut edges.{ figure-hatched }
   *[shears] The margin with all its cut edges pinked.{ figure-hatched }
 }
figure-margin-edge-alt = { $by ->
    [overlocker] Cut through an edge of { PIECE($piece) }, { $length } long: overlock stitch round its cut edge.
    [zigzag] Cut through an edge of { PIECE($piece) }, { $length } long: zigzag stitch round its cut edge.
   *[shears] Cut through an edge of { PIECE($piece) }, { $length } long, pinked.
 }
figure-margin-edge-caption = { $by ->
    [overlocker] The cut edge with its overlock stitch.
    [zigzag] The cut edge with its zigzag stitch.
   *[shears] The pinked edge.
 }

## Turned and topstitched

figure-turned-margin-seen = Right side up, margin underneath
figure-turned-margin-seam = earlier seam
figure-turned-margin-edge = neatened edge
# $onto: the pieces that the margin lies under. $plies: how many are sewn through.
figure-turned-margin-alt = { $way ->
    [up] Cut through the seam, right side up: the margin of { $seam-width } lies underneath, up, towards { PIECE($onto) }, topstitched { $from-seam } from the seam through all { $plies } plies of cloth.
   *[down] Cut through the seam, right side up: the margin of { $seam-width } lies underneath, down, towards { PIECE($onto) }, topstitched { $from-seam } from the seam through all { $plies } plies of cloth.
 }
figure-turned-margin-caption = The margin lies under { PIECE($onto) } and is stitched down.{ figure-hatched }
