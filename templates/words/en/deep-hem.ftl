### Turn up a deep hem and fasten it by hand or by machine.
### $edge: the edge that is hemmed. $neat: it was neatened, and is not turned under.

deep-hem-title = Turn up a deep hem at { EDGE($edge) }
    .number = { $depth }
deep-hem-aim = A hem of { $depth } gives the edge weight.

## Fold

deep-hem-turn-under = Fold { EDGE($edge) } { $under } to the wrong side and press the fold.
# Of flared cloth what is turned up is longer than the line that it comes to lie on, by $fuller.
deep-hem-ease-row = Sew one row, { $long-stitch }, { $row } from the { $neat ->
    [yes] neatened edge
   *[no] pressed fold
 }, from seam to seam, and leave a finger of thread at both ends of each run. Then set the machine back: { $seam-stitch }.
deep-hem-ease-pull = The inner edge is { $fuller } longer than the line beneath it: pull the threads of the row at each seam until the hem lies flat everywhere. Then press the hem through a cloth.
    .check = The inner edge lies level on { PIECE($edge) }, and no fold stands.
    .remedy = Where a fold stands, stroke the cloth along the row to both sides and press again.
deep-hem-fold-up-ring = { $neat ->
    [yes] Fold { EDGE($edge) } { $depth } to the wrong side and press the fold. { pin-start } the hem, first at the seams.
   *[no] Fold it again by { $depth } and press the new fold. { pin-start } the hem, first at the seams.
 }
    .check = The hem is { $depth } deep all along.
    .tolerance = { $off } more or less
    .remedy = Unfold and press again where it wanders.
deep-hem-fold-up-flat = { $neat ->
    [yes] Fold { EDGE($edge) } { $depth } to the wrong side and press the fold. { pin-start } the hem, first at both ends.
   *[no] Fold it again by { $depth } and press the new fold. { pin-start } the hem, first at both ends.
 }
    .check = { deep-hem-fold-up-ring.check }
    .tolerance = { deep-hem-fold-up-ring.tolerance }
    .remedy = { deep-hem-fold-up-ring.remedy }

## Fasten

deep-hem-fasten-hand = { $neat ->
    [yes] Wrong side up, slip stitch the neatened edge down, a stitch every { $every }, { $length }. Take one thread of { PIECE($edge) }, then go on inside the edge. Do not pull tight. Fasten the thread in the hem at both ends.
   *[no] Wrong side up, slip stitch the inner fold down, a stitch every { $every }, { $length }. Take one thread of { PIECE($edge) }, then go on inside the fold. Do not pull tight. Fasten the thread in the hem at both ends.
 }
    .check = No stitch puckers and none shows on the right side.
    .remedy = Snip the stitch that puckers and sew it looser.
deep-hem-fasten-machine-ring = { $neat ->
    [yes] Begin at { side-seam }, wrong side up. Sew { $from-fold } from the neatened edge, { $length } all round, { $stitch }. Let the end overlap the start by three stitches.
   *[no] Begin at { side-seam }, wrong side up. Sew on the hem, { $from-fold } from its inner fold, { $length } all round, { $stitch }. Let the end overlap the start by three stitches.
 }
    .check = The hem is caught everywhere.
    .remedy = Sew the missed stretch again.
deep-hem-fasten-machine-flat = { $neat ->
    [yes] Wrong side up, sew { $from-fold } from the neatened edge, { $length }, { $stitch }, a few stitches back at both ends.
   *[no] Wrong side up, sew on the hem, { $from-fold } from its inner fold, { $length }, { $stitch }, a few stitches back at both ends.
 }
    .check = { deep-hem-fasten-machine-ring.check }
    .remedy = { deep-hem-fasten-machine-ring.remedy }
