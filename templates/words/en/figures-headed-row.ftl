### Gather a row below its edge and sew it on a line across a piece, so that a frill stands above the stitches.

figure-headed-row = Sewn on, right side up
figure-headed-frill = frill
figure-headed-row-alt = { PIECE($on, at: "start") }, right side up, with { PIECE($row) } on it: two rows of stitches, the upper one on a line ({ line-place }), and a frill of { $heading } standing above them.
figure-headed-row-caption = The row with its frill.
