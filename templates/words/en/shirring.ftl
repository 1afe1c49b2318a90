### Draw a ring in with rows of elastic thread.

shirring-title = Shirr { EDGE($edge) }
shirring-aim = { $rows } rows of { $thread } draw { $cloth } in to { $length }.

## Try it

shirring-wind = Wind the { $thread } on the bobbin by hand, without stretching it.
shirring-try = Set a { $stitch } and sew a trial: { $rows } rows on a strip { $trial } long.
    .check = Steamed, it draws in to { $trial-short }.
    .tolerance = { $trial-off } more or less
    .remedy = Longer: lengthen the stitch or tighten the bobbin a little. Shorter: the other way round.

## Sew the rows

shirring-mark = Mark { $rows } lines on the right side: the first { $from-edge } from { EDGE($edge) }, the others { $spacing } apart.
shirring-sew = Sew each line all round, { $cloth }, right side up; from the second row on hold the cloth stretched flat.
    .check = The rows run side by side and no stitch is skipped.
    .remedy = A skipped stretch: sew it again over the gap.
shirring-tails = Draw the tails of each row to the wrong side, tie them and leave { $knot }.
shirring-steam = Hold the iron just above the rows and steam them; do not touch them with it.
    .check = The edge measures { $length } at rest and stretches to { $cloth }.
    .tolerance = { $off } more or less
    .remedy = Too long: sew one more row between two others. Too short: stretch it once and measure again.
