### Tucks: the fold lines on the flat cloth, and a cut through the sewn tucks.

figure-tucks-lines = Fold lines on the flat cloth
figure-tucks-sewn = Sewn, { $depth } deep, pressed to the edge
figure-tucks-edge = bottom edge
figure-tucks-alt = { $tucks } tucks of { $depth }, fold lines { $lines } above the bottom edge; sewn, the lowest fold lies { $from-edge } above it and { $space } shows between.
figure-tucks-caption = The tucks cut through, right side up.{ figure-hatched }
