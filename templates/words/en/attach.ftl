### Sew one edge to another of the same length.
### $edge and its pieces hang below, $to is the edge above.

attach-title = Sew { PIECE($edge) } to { PIECE($to) }
    .number = { $seam-width }
attach-aim = { COUNT($edge) ->
    [one] { PIECE($edge, at: "start") } hangs from { PIECE($to) }, seam { $seam-width }.
   *[other] { PIECE($edge, at: "start") } hang from { PIECE($to) }, seam { $seam-width }.
 }

## Lay

attach-turn = Turn { PIECE($edge) } right side out and { PIECE($to) } inside out.
attach-slip = { COUNT($to) ->
    [one] Slip { PIECE($to) } over { PIECE($edge) }, upside down, until { EDGE($to) } lies level with { EDGE($edge) }.
   *[other] Slip { PIECE($to) } over { PIECE($edge) }, upside down, until { EDGE($to) } lie level with { EDGE($edge) }.
 }
    .check = Right sides face each other and both cut edges are level.
attach-slip-tails = { COUNT($to) ->
    [one] Slip { PIECE($to) } over { PIECE($edge) }, upside down, until { EDGE($to) } lies level with { EDGE($edge) }. Let the thread tails hang out over the edge.
   *[other] Slip { PIECE($to) } over { PIECE($edge) }, upside down, until { EDGE($to) } lie level with { EDGE($edge) }. Let the thread tails hang out over the edge.
 }
    .check = { attach-slip.check }
attach-lay = Lay { EDGE($edge) } against { EDGE($to) }, right sides together and level.
attach-lay-tails = Lay { EDGE($edge) } against { EDGE($to) }, right sides together and level. Let the thread tails hang out over the edge.

## Pin

attach-pin-gathers = { match-and-pin }
    .check = { $hold ->
        [clips] The edges lie level and no gathers are bunched at the marks. Where the flat edge is longer, it is spread between the clips without a fold.
       *[pins] The edges lie level and no gathers are bunched at the marks. Where the flat edge is longer, it is spread between the pins without a fold.
     }
    .tolerance = the gathers up to { $ease } short in all
    .remedy = More than { $ease } short: let the gathers out.
attach-pin-pleats = { match-and-pin }
    .check = { $hold ->
        [clips] The edges lie level and no pleats are bunched at the marks. Where the flat edge is longer, it is spread between the clips without a fold.
       *[pins] The edges lie level and no pleats are bunched at the marks. Where the flat edge is longer, it is spread between the pins without a fold.
     }
    .tolerance = the pleats up to { $ease } short in all
    .remedy = More than { $ease } short: let the pleats out.
attach-pin-flat = { match-and-pin }
    .check = The edges lie level.
    .tolerance = one edge { $off } longer
    .remedy = Share the difference out between the marks.

## Sew

# Gathers on rows of thread: each is seen before the needle reaches it.
attach-turn-work-gathers-up = Turn the work so that the gathers lie on top. There you see each one in time and can smooth it with the tip of a pin, the machine stopped.
attach-turn-work-gathers-up-ring = { attach-turn-work-gathers-up } Sew from the inside of the ring.
# Gathers of an attachment are held by its own row.
attach-turn-work-gathers = { COUNT($to) ->
    [one] Turn the work so that { PIECE($to) } lies on top and the gathers underneath. The row of the attachment holds them, and the machine feeds the fuller cloth from below.
   *[other] Turn the work so that { PIECE($to) } lie on top and the gathers underneath. The row of the attachment holds them, and the machine feeds the fuller cloth from below.
 }
attach-turn-work-pleats = { COUNT($to) ->
    [one] Turn the work so that { PIECE($to) } lies on top and the pleats underneath. There the foot cannot push them over.
   *[other] Turn the work so that { PIECE($to) } lie on top and the pleats underneath. There the foot cannot push them over.
 }
attach-turn-work-flat = { COUNT($to) ->
    [one] Turn the work so that { PIECE($to) } lies on top.
   *[other] Turn the work so that { PIECE($to) } lie on top.
 }
# Said only inside the messages below.
attach-seam = { $ring ->
    [yes] Sew { $seam-width } from the edge, { $stitch }, { $length } all round. Let the end overlap the start by three stitches.
   *[no] Sew { $seam-width } from the edge, { $stitch }, { $length }, a few stitches back at both ends.
 }
attach-sew-gathers = { attach-seam }
    .check = No fold is caught in the seam, and no gathering row shows on the right side.
    .remedy = Unpick that hand's width, smooth it and sew it again. A row that shows below the seam is pulled out.
attach-sew-pleats = { attach-seam }
    .check = Every pleat lies as it was basted, and the basting does not show on the right side.
    .remedy = Unpick that hand's width, lay the pleat again and sew.
attach-sew-flat = { attach-seam }
    .check = The edges stayed level.
    .remedy = Unpick that hand's width, smooth it and sew it again.
