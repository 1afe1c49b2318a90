### Sew one edge to another of the same length.
### $edge and its pieces hang below, $to is the edge above.

attach-title = Sew { PIECE($edge) } to { PIECE($to) }
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

attach-turn-work-gathers = { COUNT($to) ->
    [one] Turn the work so that { PIECE($to) } lies on top and the gathers underneath.
   *[other] Turn the work so that { PIECE($to) } lie on top and the gathers underneath.
 }
attach-turn-work-pleats = { COUNT($to) ->
    [one] Turn the work so that { PIECE($to) } lies on top and the pleats underneath.
   *[other] Turn the work so that { PIECE($to) } lie on top and the pleats underneath.
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
    .check = No pleat is caught and no gathering row shows on the right side.
    .remedy = Unpick that hand's width, smooth it and sew it again. A row that shows below the seam is pulled out.
attach-sew-flat = { attach-seam }
    .check = The edges stayed level.
    .remedy = Unpick that hand's width, smooth it and sew it again.
