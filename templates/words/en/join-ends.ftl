### Join the two ends of a strip to a ring, or several panels to one ring.
### $pieces: the tiers that the seam passes through. -panels: $copies of them become one ring.

join-ends-title = Close { PIECE($pieces) } to a ring
join-ends-title-panels = Sew { PIECE($pieces) } together to a ring
join-ends-aim = { COUNT($pieces) ->
    [one] { PIECE($pieces, at: "start") } is closed.
   *[other] { PIECE($pieces, at: "start") } are closed.
 }

## Sew

join-ends-sew = Sew { $length }, { $seam-width } from the ends, { $stitch }, a few stitches back at both ends. Fold both margins to the same side with your fingernail; either side will do.
# The strip was joined of segments before.
join-ends-sew-pieced = { join-ends-sew }
    .check = Its margin stands on the wrong side, as those of the joins do.
join-ends-sew-panels = Sew { $length }, { $seam-width } from the edge, { $stitch }, a few stitches back at both ends. Fold both margins to the same side with your fingernail, at every seam the same way round.
join-ends-sew-panels-pieced = { join-ends-sew-panels }
    .check = All margins stand on the wrong side, as those of the joins do.

## Measure

join-ends-measure = Measure round the lower edge of { PIECE($lowest) }: { $round }.
    .check = The ring measures { $round } all round.
    .tolerance = { $off } more or less
    .remedy = { $panels ->
        [yes] If it is too long, sew one seam again a little wider; if too short, unpick one and sew it narrower.
       *[no] If it is too long, sew the seam again a little wider; if too short, unpick it and sew it narrower.
     }
