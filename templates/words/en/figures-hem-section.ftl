### Finished edges cut through: turned twice and stitched, or turned up under a trim.

## Turned twice

figure-turned-before = Before: flat, wrong side up
figure-turned-after = After: folded and stitched
figure-turned-alt-machine = Cut through the edge of { PIECE($piece) }: turned { $first }, then { $second } to the wrong side and stitched along the inner fold.
figure-turned-alt-hand = Cut through the edge of { PIECE($piece) }: turned { $first }, then { $second } to the wrong side and stitched by hand.
# No first turn: the edge was neatened.
figure-turned-alt-once = Cut through the edge of { PIECE($piece) }: turned { $second } to the wrong side and stitched.
figure-turned-caption = The edge cut through, before and after it is turned.{ figure-hatched }

## Under a trim

figure-trimmed-width = { $trim }, { $width }
figure-trimmed-fold = fold, level with the trim
figure-trimmed-alt-one-row = Cut through the edge, right side up: { PIECE($piece) } turned up { $turn } to the right side, the { $trim } { $width } wide over it, level with the fold, sewn { $row } from the fold.
figure-trimmed-alt-two-rows = Cut through the edge, right side up: { PIECE($piece) } turned up { $turn } to the right side, the { $trim } { $width } wide over it, level with the fold, sewn { $row } from the fold and again { $below } from the inner edge of the trim.
figure-trimmed-caption = The edge cut through: the trim hides the turned edge.{ figure-hatched }
figure-trimmed-alt-together = Cut through the edge, right side up: the { $trim } { $width } wide was sewn along the raw edge of { PIECE($piece) }, { $row } from it, then both turned up { $turn } and topstitched { $below } from the upper edge of the trim.
figure-trimmed-caption-together = The edge cut through: the raw edge lies inside, the trim round the fold.{ figure-hatched }
