### Cuts through seams that close their own raw edges: French, flat-felled and lapped.
### $upper and $lower: the pieces of the upper and of the lower ply.

## French

figure-french-second = The second seam, at the machine
figure-french-trimmed = trimmed to { $trim }
figure-french-first = first seam
# $upper-label, $lower-label (text): the maker's own words for the pieces.
figure-french-plies = { $upper-label } above, { $lower-label } below
figure-french-alt = Cut through a French seam, right sides together: the first seam of { $first } lies on the fold, its margin trimmed to { $trim } between the plies; the second row runs { $second } from the fold.
figure-french-caption = The raw edges lie inside the second seam.{ figure-hatched }

## Flat-felled

figure-felled-seen = Wrong side up
figure-felled-alt = Cut through a flat-felled seam, wrong side up: a margin of { $seam-width } folded around one trimmed to { $trim }, laid flat { $fell } wide and stitched along its fold.
figure-felled-caption = The wide margin closes over the narrow one.{ figure-hatched }

## Lapped

figure-lapped-upper = { $upper-label }, on top
figure-lapped-lower = { $lower-label }, underneath
figure-lapped-alt = { $turned ->
    [yes] Cut through a lapped seam, right side up: { PIECE($upper) } over { PIECE($lower) } by { $lap }, sewn { $from-fold } from the fold.
   *[no] Cut through a lapped seam, right side up: { PIECE($upper) }, not turned under, over { PIECE($lower) } by { $lap }, sewn { $from-fold } from its edge.
 }
figure-lapped-caption = The upper edge lies on the lower one.{ figure-hatched }
