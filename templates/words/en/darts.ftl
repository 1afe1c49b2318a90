### Sew darts in a top edge, so that it closes in to the waist.
### $intake: what one dart takes on the seam line; $half: half of its width at the cut edge; $long: from the cut edge to the point; $leg: along one side.

darts-title = { $count ->
    [one] Sew { $count } dart in { EDGE($edge) }
   *[other] Sew { $count } darts in { EDGE($edge) }
 }
    .number = { $cloth } → { $length }
darts-aim = { $count ->
    [one] On the seam line { $cloth } - { $length } = { $taken } is taken by { $count } dart.
   *[other] On the seam line { $cloth } - { $length } = { $taken } is taken by { $count } darts, { $intake } each.
 }

## Mark

darts-mark = { $ring ->
    [yes] On the wrong side mark the middles of the darts along { EDGE($edge) }, every { $every }, { $count } in all, the first { $first } from { side-seam }.
   *[no] On the wrong side mark the middles of the darts along { EDGE($edge) }, every { $every }, { $count } in all, the first { $first } from one end.
 }
    .check = { $ring ->
        [yes] The last mark lies { $first } from the seam on its other side.
       *[no] The last mark lies { $first } from the other end.
     }
    .tolerance = { $mark-off } more or less
    .remedy = Share what is left over among all the marks.
darts-legs = From each mark draw a line { $long } straight down, at a right angle to the edge: its end is the point. On the edge mark { $half } to both sides of the middle, and rule both legs from there to the point.
    .check = Both legs are { $leg } long.
    .tolerance = { $mark-off } more or less
    .remedy = The middle line leans: set it at a right angle to the edge and rule the legs again.

## Sew

darts-fold = Fold each dart on its middle line, right sides together, so that one leg lies on the other. { pin-start } across the leg.
darts-sew = Sew each dart from the edge down its leg, { $leg }, { $stitch }, a few stitches back at the edge. Let the last three stitches run on the very fold.
    .check = At the edge the stitches lie { $half } from the fold.
    .tolerance = { $hair-off } more or less
    .remedy = Unpick the upper half and sew it again on the line.
darts-knot = Leave tails of { $tail } at each point and tie them in a double knot close to the cloth; do not sew back there.
darts-press = Press each dart flat as it is sewn, then its fold towards the nearest middle, in front or behind. Trim what stands above the edge level with it.
    .check = From the right side no dimple shows at the points.
    .remedy = Sew the last { $last } again, running out more slowly.
darts-measure = { $open ->
    [yes] Measure { EDGE($edge) } as it is cut, from end to end with both margins of the open seam: { $lies }.
   *[no] Measure { EDGE($edge) } as it is cut: { $lies }.
 }
    .check = It is { $lies } long.
    .tolerance = { $off } more or less
    .remedy = Too long: sew each dart a hair outside its line, out to nothing at the point. Too short: a hair inside.
