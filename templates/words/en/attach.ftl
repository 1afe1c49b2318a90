### Sew one edge to another of the same length.
### $edge and its pieces hang below, $to is the edge above.

attach-title = Sew { PIECE($edge) } to { PIECE($to) }
attach-aim = { COUNT($edge) ->
    [one] { PIECE($edge, at: "start") } hangs from { PIECE($to) }, seam { $seam-width }.
   *[other] { PIECE($edge, at: "start") } hang from { PIECE($to) }, seam { $seam-width }.
 }

## Marks

attach-mark-ring = { $parts ->
    [8] Mark { EDGE($to) } in eighths on both faces, every { $part }, the first at { side-seam }.
   *[4] Mark { EDGE($to) } in quarters on both faces, every { $part }, the first at { side-seam }.
 }
attach-mark-flat = { $parts ->
    [8] Mark { EDGE($to) } in eighths on both faces, every { $part }.
   *[4] Mark { EDGE($to) } in quarters on both faces, every { $part }.
 }

## Lay

attach-turn = Turn { PIECE($edge) } right side out and { PIECE($to) } inside out.
attach-slip = Slip { PIECE($to) } over { PIECE($edge) }, upside down, until { EDGE($to) } lies level with { EDGE($edge) }.
    .check = Right sides face each other and both cut edges are level.
attach-slip-tails = Slip { PIECE($to) } over { PIECE($edge) }, upside down, until { EDGE($to) } lies level with { EDGE($edge) }. Let the thread tails hang out over the edge.
    .check = { attach-slip.check }
attach-lay = Lay { EDGE($edge) } against { EDGE($to) }, right sides together and level.
attach-lay-tails = Lay { EDGE($edge) } against { EDGE($to) }, right sides together and level. Let the thread tails hang out over the edge.

## Pin

# Said only inside the messages below.
attach-places = { $places ->
    [bright] the side seams, those with a bright thread, and the marks
    [ends] both ends and the marks
   *[plain] the side seams and the marks
 }
# "12 pins", as many as one edge takes.
attach-pins = { $hold ->
    [clips] { $pins ->
        [one] { $pins } clip
       *[other] { $pins } clips
    }
   *[pins] { $pins ->
        [one] { $pins } pin
       *[other] { $pins } pins
    }
 }
attach-pin-gathers = { $copies ->
    [one] Match { attach-places }, and { pin } there first, from the side of { PIECE($to) }. Then { pin } every { $spacing } between: about { attach-pins } in all.
   *[other] Match { attach-places }, and { pin } there first, from the side of { PIECE($to) }. Then { pin } every { $spacing } between: about { attach-pins } for each.
 }
    .check = { $hold ->
        [clips] The edges lie level and no gathers are bunched at the marks. Where the flat edge is longer, it is spread between the clips without a fold.
       *[pins] The edges lie level and no gathers are bunched at the marks. Where the flat edge is longer, it is spread between the pins without a fold.
     }
    .tolerance = the gathers up to { $ease } short in all
    .remedy = More than { $ease } short: let the gathers out.
attach-pin-pleats = { attach-pin-gathers }
    .check = { $hold ->
        [clips] The edges lie level and no pleats are bunched at the marks. Where the flat edge is longer, it is spread between the clips without a fold.
       *[pins] The edges lie level and no pleats are bunched at the marks. Where the flat edge is longer, it is spread between the pins without a fold.
     }
    .tolerance = the pleats up to { $ease } short in all
    .remedy = More than { $ease } short: let the pleats out.
attach-pin-flat = { attach-pin-gathers }
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
