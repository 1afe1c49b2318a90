### Join the segments that a piece was cut in to one strip.
### $piece: the piece, of which there are $copies strips. $pieces: all pieces of the step that are cut in segments.

join-strips-title = Join the strips of { PIECE($pieces) }
join-strips-aim = Each strip is one length.

# The tags are those of the cutting plan.
join-strips-lay = Lay out the segments of { PIECE($piece) } in the order of their tags, the long edges level. { pin-start } the short ends that face each other, right sides together.
    .check = { $copies ->
        [one] All segments of the strip lie the same way up.
       *[other] Each strip has the segments with its own number, and they lie the same way up.
     }
join-strips-sew = Sew each join { $seam-width } from the ends, { $stitch }, a few stitches back at both ends. Fold both margins to the same side with your fingernail; either side will do.
    .check = All margins stand on the wrong side.
    .remedy = Unpick a join whose margin stands on the right side, turn one segment over and sew it again.
join-strips-measure = { $copies ->
    [one] Measure the joined strip: { $whole }.
   *[other] Measure each joined strip: { $whole }.
 }
    .check = { $copies ->
        [one] The strip of { PIECE($piece) } is { $whole } long from cut end to cut end.
       *[other] Each strip of { PIECE($piece) } is { $whole } long from cut end to cut end.
     }
    .tolerance = { $off } more or less
    .remedy = Longer: trim one end square. Shorter: sew the join that is too wide again; if none is, join on a piece of what was left over and trim it.

## Behind a step, in brackets

join-strips-joins-for = { $copies ->
    [one] { chain-joins }
   *[other] { chain-joins } for { $copies } strips
 }
