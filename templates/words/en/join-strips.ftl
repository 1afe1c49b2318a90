### Join the segments that a piece was cut in to one strip.
### $piece: the piece, of which there are $copies strips. $pieces: all pieces of the step that are cut in segments.

join-strips-title = Join the strips of { PIECE($pieces) }
join-strips-aim = Each strip is one length.

join-strips-lay = Lay out the segments of { PIECE($piece) }, the long edges level. Pin the short ends that belong to one strip, right sides together.
join-strips-sew = Sew each join { $seam-width } from the ends, with a { $stitch } and a few stitches back at both ends. Fold both margins to the same side with your fingernail; either side will do.
    .check = All margins stand on the wrong side.
    .remedy = Unpick a join whose margin stands on the right side, turn one segment over and sew it again.
join-strips-measure = Measure each finished strip: { $whole }.
    .check = Each strip of { PIECE($piece) } is { $whole } long.
    .tolerance = { $off } more or less
    .remedy = If it is longer, trim one end square. If it is shorter, unpick the join that is too wide and sew it again. If no join is too wide, lengthen the strip with a piece of what was left over, and trim it.

## Behind a step, in brackets

join-strips-joins-for = { $copies ->
    [one] { chain-joins }
   *[other] { chain-joins } for { $copies } strips
 }
