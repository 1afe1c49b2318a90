### Fold a closed band in half and stitch a channel for elastic along its fold, before it is sewn on.
### $band is the band; $stack its two raw edges, which are sewn on as one.

channel-band-title = Stitch the channel in { PIECE($band) }
channel-band-aim = { PIECE($band, at: "start") } is folded in half, with a channel of { $channel } along the fold.

channel-band-fold = Press open the upright seam that closed { PIECE($band) } to a ring. Fold the band in half along its length, wrong sides together, both cut edges level, and press the fold.
    .check = From the fold to the cut edges it is { $depth } all round.
    .tolerance = { $off } more or less
    .remedy = Press it open and fold it again from the cut edges.
channel-band-edge-stitch = Sew { $edge-stitch } from the fold, { $stitch }, { $length } all round. Let the end overlap the start by three stitches.
    .check = The fold is sharp, and the row runs along it without a wave.
    .remedy = Unpick the wave and sew it again without pulling the band.
channel-band-row = Sew a second row { $row } from the fold the same way.
    .check = Between the two rows the channel is { $channel } wide all round: the elastic lies flat in it.
    .tolerance = { $off } more or less
    .remedy = Where it is narrower, unpick the second row and sew it again.
