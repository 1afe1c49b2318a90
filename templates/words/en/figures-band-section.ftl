### Edges cut through that lie inside a band: a binding strip, a flat waistband, a folded tape.

## A binding strip

figure-binding-shows = { $shows } shows
figure-binding-alt = Cut through the bound edge, right side up: { PIECE($strip) } sewn on { $seam-width } from the edge, folded round it so that { $shows } shows, its turn of { $turn } caught behind.
figure-binding-caption = The bound edge cut through.{ figure-hatched }

## A flat waistband

figure-fitted-depth = { $depth } deep
# The name of the band, without an article.
figure-fitted-band = { $band-label }, fold at the top
figure-fitted-alt = Cut through { PIECE($band) }, right side up: sewn on { $seam-width } from the edge, folded over, { $depth } deep, its turned edge stitched down inside.
figure-fitted-caption = The band cut through: every raw edge lies inside it.{ figure-hatched }

## A folded tape

figure-tape-alt = Cut through the edge in the folded { $tape }, which covers { $half } on both sides, one row through all.
figure-tape-caption = The raw edge lies in the fold of the { $tape }.
figure-band-ends-top = The end on top
figure-band-ends-beneath = The end beneath
figure-band-ends-alt = The band folded in half, right sides together, above the skirt. At the end on top one row runs { $seam-width } from the edge, level with the opening; at the end beneath, which stands out, the row runs down { $seam-width } from the edge, turns a corner and runs along the stitch line to the skirt.
figure-band-ends-caption = Both ends of the band, wrong side up, and their rows.
