### Strips that are cut in segments: each with its segments and joins, as the cutting plan gives them.
### $mark: the number of the piece on the cutting plan. $label (text): the maker's own word for it.
### $strips: the strips that are cut alike, such as "A1 and A2".

figure-strips-piece = Piece { $mark }, { $label }
figure-strips-alike = { $joins ->
    [0] { $strips }: whole, no join
    [one] { $strips }: { $joins } join
   *[other] { $strips }: { $joins } joins
 }
figure-strips-note = Lengths to one scale, seams included; depths are not.
# One sentence for all strips that are cut alike.
figure-strips-alt = { $joins ->
    [0] { $strips } of { PIECE($piece) }: whole, no join, { $segments }.
    [one] { $strips } of { PIECE($piece) }: { $joins } join, { $segments }.
   *[other] { $strips } of { PIECE($piece) }: { $joins } joins, { $segments }.
 }
figure-strips-caption = The segments of each strip: sew the ends that face each other.
