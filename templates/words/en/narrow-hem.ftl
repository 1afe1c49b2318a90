### Turn an edge twice to the wrong side and stitch along the inner fold.
### $edge: the edge that is hemmed.

narrow-hem-title = Hem { EDGE($edge) }
narrow-hem-aim = No raw edge shows at the hem.

narrow-hem-first-turn = Fold { EDGE($edge) } { $first-turn } to the wrong side and press the fold.
narrow-hem-second-turn = Fold it again by { $second-turn }, press, and { pin } it.
    .check = The hem is { $second-turn } deep all along.
    .tolerance = { $off } more or less
    .remedy = Unfold and press again where it wanders.
narrow-hem-sew-ring = Sew { $from-fold } from the inner fold, { $length }, { $stitch }, and let the end overlap the start by three stitches.
    .check = The stitches catch the fold everywhere.
    .remedy = Where they miss it, sew that stretch again.
narrow-hem-sew-flat = Sew { $from-fold } from the inner fold, { $length }, { $stitch }.
    .check = { narrow-hem-sew-ring.check }
    .remedy = { narrow-hem-sew-ring.remedy }
