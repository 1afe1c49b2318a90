### Bind an edge with a folded strip cut from cloth.
### $strip: the strip; $edge: the edge that it binds.

binding-strip-title = Bind { EDGE($edge) } with { PIECE($strip) }
    .number = { $shows }
binding-strip-aim = The raw edges are closed inside the strip.

## Sew on

binding-strip-press = Fold one long edge of { PIECE($strip) } { $turn } to the wrong side and press the fold.
binding-strip-ends = Fold each end of { PIECE($strip) } { $ends } to the wrong side and press the fold.
    .check = Folded, it is as long as { EDGE($edge) }.
    .remedy = Press the folds out and fold them again.
binding-strip-lay = Lay its other long edge on { EDGE($edge) }, right sides together, level, and { pin } it.
binding-strip-sew-ring = Sew { $seam-width } from the edge, { $length } all round, { $stitch }. Let the end overlap the start by three stitches.
binding-strip-sew-flat = Sew { $seam-width } from the edge, { $length }, { $stitch }, a few stitches back at both ends.

## Fold over

binding-strip-fold = Fold { PIECE($strip) } up, around the edge and to the wrong side until its fold just covers the stitch line. { pin-start } it from the right side.
    .check = { $shows } of { PIECE($strip) } shows on the right side all along.
    .tolerance = { $off } more or less
    .remedy = Where the fold misses the stitch line, trim the margin a little and fold again.
binding-strip-stitch-down-ring = From the right side, sew { $edge-stitch } from the seam on { PIECE($strip) }, { $length } all round. Let the end overlap the start by three stitches.
    .check = The fold behind is caught all along.
    .remedy = Catch what was missed by hand with slip stitches.
binding-strip-stitch-down-flat = From the right side, sew { $edge-stitch } from the seam on { PIECE($strip) }, { $length }, a few stitches back at both ends.
    .check = { binding-strip-stitch-down-ring.check }
    .remedy = { binding-strip-stitch-down-ring.remedy }
