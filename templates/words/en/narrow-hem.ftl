### Turn an edge twice to the wrong side and stitch along the inner fold.
### $edge: the edge that is hemmed.

narrow-hem-title = Hem { EDGE($edge) }
    .number = { $first-turn } + { $second-turn }
narrow-hem-aim = No raw edge shows at the hem.

narrow-hem-first-turn = Fold { EDGE($edge) } { $first-turn } to the wrong side and press the fold.
narrow-hem-second-turn = Fold it again by { $second-turn }, so that the cut edge lies inside. Press the new fold, and { pin } the hem.
    .check = The hem is { $second-turn } deep all along.
    .tolerance = { $off } more or less
    .remedy = Unfold and press again where it wanders.
narrow-hem-sew-ring = Begin at { side-seam }, wrong side up. Sew on the hem, { $from-fold } from its inner fold, { $length } all round, { $stitch }. Let the end overlap the start by three stitches.
    .check = The stitches catch the fold everywhere.
    .remedy = Where they miss it, sew that stretch again.
narrow-hem-sew-flat = Wrong side up, sew on the hem, { $from-fold } from its inner fold, { $length }, { $stitch }, a few stitches back at both ends.
    .check = { narrow-hem-sew-ring.check }
    .remedy = { narrow-hem-sew-ring.remedy }
