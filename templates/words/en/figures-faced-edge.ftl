### Edges cut through that are faced or bagged out: two cloths, their margins turned in between them.

# Names of two pieces, without articles.
figure-faced-pieces = { $inner } inside, { $outer } outside
figure-faced-alt = Cut through the faced edge, inside up: { PIECE($facing) } lies inside, both margins of { $seam-width } lie under it and are sewn to it { $understitch } from the edge.
figure-faced-caption = The faced edge cut through.{ figure-hatched }
figure-bagged-alt = Cut through an edge of the lined { $outer }, inside up: { PIECE($lining) } lies inside, both margins of { $seam-width } between the two.
figure-bagged-caption = The turned edge cut through.{ figure-hatched }
