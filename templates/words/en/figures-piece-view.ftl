### The pieces of a step before and after it, with every edge in the pattern of its state.

## Heads

figure-piece-before = Before:
figure-piece-after = After:
figure-piece-alike = { $copies } alike
figure-piece-ring = a ring, lengths all round
figure-piece-flat = flat
# Which face of the cloth is seen.
figure-piece-up = { $up ->
    [margins] margins up
    [either] either side up
    [wrong] wrong side up
   *[right] right side up
 }
figure-piece-margins-wide = Seam margins are drawn wider than they are.
figure-piece-left-out = The middle is left out at the wavy lines.
figure-piece-further = What is sewn on further off is not drawn.

## Labels

# How an edge stands.
figure-edge-state = { $state ->
    [raw] raw
    [selvedge] selvedge
    [neatened] neatened
    [hemmed] hemmed
    [sewn] sewn
    [enclosed] enclosed
    [trimmed] trimmed
    [gathered] gathered
    [pleated] pleated
    [sewn-gathered] sewn, gathered
   *[sewn-pleated] sewn, pleated
 }
# One label for both edges of a piece.
figure-piece-both = { figure-edge-state } top and bottom
figure-piece-deep = { $deep } deep
figure-piece-layers = { $layers } layers
figure-piece-fold = fold
figure-piece-seam = { $margin ->
    [none] seam
    [covered] seam, margin covered
    [stitched-down] seam stitched down
    [enclosed] seam enclosed
    [neatened] seam, neatened margin
   *[raw] seam, raw margin
 }
figure-piece-behind = { $where ->
    [inside] { PIECE($piece, form: "bare") } inside
   *[sewn-on] { PIECE($piece, form: "bare") } sewn on
 }

## In words, for those who can't see it

figure-piece-form = { $layers ->
    [one] { $ring ->
        [yes] ring
       *[no] flat
    }
   *[other] { $ring ->
        [yes] ring, { $layers } layers
       *[no] flat, { $layers } layers
    }
 }
figure-piece-edge = { $side ->
    [top] top edge { $length }, { figure-edge-state }
   *[bottom] bottom edge { $length }, { figure-edge-state }
 }
figure-piece-told-one = { PIECE($piece, form: "bare") } ({ figure-piece-form }), { $deep } deep, { $edges }
figure-piece-told = { $when ->
    [before] Before: { $pieces }.
   *[after] After: { $pieces }.
 }
figure-piece-caption = { $broken ->
    [yes] { PIECE($pieces, at: "start") } before and after, depths to one scale, widths in proportion. What changes is drawn thicker.
   *[no] { PIECE($pieces, at: "start") } before and after, to scale. What changes is drawn thicker.
 }
