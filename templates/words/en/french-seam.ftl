### Sew a seam twice, so that its raw edges are closed inside it.
### $pieces: the pieces whose ends the seam closes (-ends), or whose edges it joins (-edges).

french-seam-title-ends = French seam: the side seam of { PIECE($pieces) }
french-seam-title-edges = French seam: the seam between { PIECE($pieces) }
french-seam-aim = The raw edges are closed inside: { $first } and then { $second } of each edge are used.

## The first seam, wrong sides together

# $two: one piece has two ends, and only one seam is sewn.
french-seam-lay-ends = { $two ->
    [yes] Lay the two ends of { PIECE($pieces) } wrong sides together, level, and { pin } them.
   *[no] Lay the ends of { PIECE($pieces) } wrong sides together, level, and { pin } them.
 }
french-seam-lay-edges = Lay the edges of { PIECE($pieces) } wrong sides together, level, and { pin } them.
french-seam-first = Sew { $first } from the edge, { $stitch }, { $length }.
french-seam-trim = Trim both margins to { $trim }.
    .check = The margin is { $trim } wide all along and no thread stands off it.
    .tolerance = never wider than { $second }
    .remedy = Trim again where it is wider, or threads will show in the finished seam.

## The second seam, right sides together

french-seam-press = Press the margin to one side, turn the work right sides together, and press the seam on its fold.
    .check = The first seam lies exactly on the fold.
french-seam-second = Sew { $second } from the fold, { $stitch }, { $length }.
    .check = No thread of the margin shows on the right side.
    .remedy = Trim what shows; where the margin was caught outside, sew that stretch again a little deeper.
