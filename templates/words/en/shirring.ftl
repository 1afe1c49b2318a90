### Draw a ring in with rows of elastic thread.

shirring-title = Shirr { EDGE($edge) }
    .number = { $cloth } → { $length }
shirring-aim = { $rows } rows of { $thread } draw { $cloth } in to { $length }.

## Try it

shirring-wind = Wind the { $thread } on the bobbin by hand, without stretching it. The thread above stays as it is.
shirring-iron = Set the iron for steam: two dots or more, until it steams. It is held above the rows and does not touch them.
shirring-try = Set a { $stitch } and sew a trial: { $rows } rows on a strip { $trial } long.
    .check = Steamed, it draws in to { $trial-short }.
    .tolerance = { $trial-off } more or less
    .remedy = Longer: lengthen the stitch or tighten the bobbin a little. Shorter: the other way round.

## Sew the rows

shirring-mark = Mark { $rows } lines on the right side: the first { $from-edge } from { EDGE($edge) }, the others { $spacing } apart.
shirring-sew = Sew each line all round, { $cloth }, right side up, from { side-seam } on. From the second row on, hold the cloth stretched flat. Do not sew back, and leave { $tail } of both threads at the start and at the end.
    .check = The rows run side by side and no stitch is skipped.
    .remedy = A skipped stretch: sew it again over the gap.
shirring-tails = Draw the tails of each row to the wrong side, knot the end to the start, and cut them to { $knot }.
shirring-steam = Hold the iron just above the rows and steam them; do not touch them with it.
    .check = The edge measures { $length } at rest and stretches to { $cloth }.
    .tolerance = { $off } more or less
    .remedy = Too long: sew one more row between two others. Too short: stretch it once and measure again.
