### Join the two ends of a strip to a ring, or several panels to one ring.
### $pieces: the tiers that the seam passes through. $panel: the piece, one copy or several, that comes first among them.

join-ends-title = Close { PIECE($pieces) } to a ring
join-ends-title-panels = Sew { PIECE($panel) } together to a ring
join-ends-aim = { COUNT($pieces) ->
    [one] { PIECE($pieces, at: "start") } is closed.
   *[other] { PIECE($pieces, at: "start") } are closed.
 }

## Lay

join-ends-fold = { COUNT($pieces) ->
    [one] Fold { PIECE($pieces) } right sides together so that the two short ends meet, and { pin } them along { $length }.
   *[other] Fold { PIECE($pieces) } right sides together so that the two short ends meet, and { pin } them along { $length }. { join-ends-tiers-meet }
 }
    .check = The strip is not twisted: it lies flat as a band.
    .remedy = If it is twisted, take one end out and turn it over.
join-ends-lay-panels = { COUNT($pieces) ->
    [one] Lay the { $copies } pieces of { PIECE($panel) } right sides together and { pin } the side edges, top to top.
   *[other] Lay the { $copies } pieces of { PIECE($panel) } right sides together and { pin } the side edges, top to top. { join-ends-tiers-meet }
 }
# Said only inside the two above.
join-ends-tiers-meet = Bring the seams between the tiers exactly together, margins upwards, and { pin } there first.

## Sew

join-ends-sew = { $panels ->
    [yes] Sew { $length }, { $seam-width } from the edge, { $stitch }, a few stitches back at both ends. Fold both margins to the same side with your fingernail; either side will do.
   *[no] Sew { $length }, { $seam-width } from the ends, { $stitch }, a few stitches back at both ends. Fold both margins to the same side with your fingernail; either side will do.
 }
# The strip was joined of segments before.
join-ends-sew-pieced = { join-ends-sew }
    .check = Its margin stands on the wrong side, as those of the joins do.

## Measure

join-ends-measure = { COUNT($pieces) ->
    [one] Measure round the edge of { PIECE($lowest) }: { $round }.
   *[other] Measure round the lower edge of { PIECE($lowest) }: { $round }.
 }
    .check = The ring measures { $round } all round.
    .tolerance = { $off } more or less
    .remedy = If it is too long, sew the seam again a little wider; if too short, unpick it and sew it narrower.
