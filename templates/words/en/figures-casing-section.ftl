### A band that becomes a casing, cut through in its three states; the inside of the garment is up.

figure-casing-laid-on = 1. Laid on the inside, sewn
figure-casing-folded-up = 2. Folded up, away from the skirt
figure-casing-folded-over = 3. Folded over to the outside, topstitched
figure-casing-inside = inside
figure-casing-outside = outside
# Two lines beside the channel.
figure-casing-held = { $holds ->
    [cord] cord
   *[elastic] elastic
 }
figure-casing-later = later
figure-casing-deep = { $depth } deep
figure-casing-gap = { $holds ->
    [cord] Leave the gap of { $gap } open at the middle of the front: the cord comes out there later.
   *[elastic] Leave the gap of { $gap } open beside the side seam: the elastic goes in there later.
 }
figure-casing-skirt = skirt: { $plies }
figure-casing-top = { PIECE($band, form: "bare") }, top of the garment
figure-casing-rows = The two rows of stitches are drawn further apart.
figure-casing-laid-on-alt = Cut through { PIECE($band) }, inside up: it lies on the inside of the skirt, right side down, raw edges level, sewn { $seam-width } from the edge.
figure-casing-folded-up-alt = Cut through { PIECE($band) }, inside up: it is folded up, away from the skirt, the margin of { $seam-width } under it.
figure-casing-folded-over-alt = { $holds ->
    [cord] Cut through { PIECE($band) }, inside up: it is folded over the top to the outside, { $depth } deep, its turn of { $seam-width } covering the first row, and topstitched; the cord comes later, between the margin and the outside.
   *[elastic] Cut through { PIECE($band) }, inside up: it is folded over the top to the outside, { $depth } deep, its turn of { $seam-width } covering the first row, and topstitched; the elastic comes later, between the margin and the outside.
 }
figure-casing-caption = The band cut through: sewn on, folded up, folded over.{ figure-hatched }
