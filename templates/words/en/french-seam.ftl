### Sew a seam twice, so that its raw edges are closed inside it.
### -ends: it closes the ends of $pieces to a ring. -edges: it joins $edge, which hangs below, to $to above.

french-seam-title-ends = French seam: the side seam of { PIECE($pieces) }
    .number = { $first } + { $second }
french-seam-title-edges = French seam: the seam between { PIECE($pieces) }
    .number = { $first } + { $second }
french-seam-aim = The raw edges are closed inside: { $first } and then { $second } of each edge are used.

## The first seam, wrong sides together

french-seam-lay-edges = Lay { EDGE($edge) } against { EDGE($to) }, wrong sides together and level.
french-seam-turn = Turn { PIECE($edge) } inside out and { PIECE($to) } right side out.
french-seam-slip = { COUNT($to) ->
    [one] Slip { PIECE($to) } over { PIECE($edge) }, upside down, until { EDGE($to) } lies level with { EDGE($edge) }.
   *[other] Slip { PIECE($to) } over { PIECE($edge) }, upside down, until { EDGE($to) } lie level with { EDGE($edge) }.
 }
    .check = Wrong sides face each other and both cut edges are level.
french-seam-pin = { match-and-pin }
    .check = { $folds ->
        [gathers] The edges lie level and no gathers are bunched at the marks.
        [pleats] The edges lie level and no pleats are bunched at the marks.
       *[flat] The edges lie level.
     }
    .tolerance = { $folds ->
        [gathers] the gathers up to { $ease } short in all
        [pleats] the pleats up to { $ease } short in all
       *[flat] one edge { $off } longer
     }
    .remedy = { $folds ->
        [gathers] More than { $ease } short: let the gathers out.
        [pleats] More than { $ease } short: let the pleats out.
       *[flat] Share the difference out between the marks.
     }
french-seam-first-ring = { $folds ->
    [gathers] With the gathers underneath, sew { $first } from the edge, { $stitch }, { $length } all round. Let the end overlap the start by three stitches.
    [pleats] With the pleats underneath, sew { $first } from the edge, { $stitch }, { $length } all round. Let the end overlap the start by three stitches.
   *[flat] Sew { $first } from the edge, { $stitch }, { $length } all round. Let the end overlap the start by three stitches.
 }
french-seam-first-flat = { $folds ->
    [gathers] With the gathers underneath, sew { $first } from the edge, { $stitch }, { $length }, a few stitches back at both ends.
    [pleats] With the pleats underneath, sew { $first } from the edge, { $stitch }, { $length }, a few stitches back at both ends.
   *[flat] Sew { $first } from the edge, { $stitch }, { $length }, a few stitches back at both ends.
 }
french-seam-trim = Trim both margins to { $trim }.
    .check = The margin is { $trim } wide all along and no thread stands off it.
    .tolerance = it stays narrower than { $second } everywhere
    .remedy = Trim again where it is wider, or it will show in the finished seam.

## The second seam, right sides together

french-seam-press = Press both margins together to one side. Turn the work right sides together along the seam, press the seam on its fold, and { pin } it.
    .check = The first seam lies exactly on the fold.
    .remedy = Roll the seam between your fingers until it lies on the fold, and press again.
french-seam-second-ring = Sew { $second } from the fold, { $stitch }, { $length } all round. Let the end overlap the start by three stitches.
    .check = { french-seam-second-flat.check }
    .remedy = { french-seam-second-flat.remedy }
french-seam-second-flat = Sew { $second } from the fold, { $stitch }, { $length }, a few stitches back at both ends.
    .check = { $folds ->
        [gathers] Nothing of the margin shows on the right side, and no gathering row.
       *[other] Nothing of the margin shows on the right side.
     }
    .remedy = { $folds ->
        [gathers] Trim what shows; where the margin was caught outside, sew that stretch again a little deeper. A gathering row that shows is pulled out.
       *[other] Trim what shows; where the margin was caught outside, sew that stretch again a little deeper.
     }
french-seam-press-ends = { $seams ->
    [one] Open the work out and press the finished seam to one side.
   *[other] Open the work out and press the finished seams, all the same way round.
 }
french-seam-press-edges = Open the work out and press the finished seam up, towards { PIECE($to) }.
