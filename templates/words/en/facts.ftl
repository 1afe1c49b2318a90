### The table of measurements, and the sizes side by side. `.why` stands beside a measurement and says what it comes from.

## Length and hems

fact-length = finished length, top to hem
    .why = the depths of the tiers together
fact-length-front = length in front
    .why = { fact-length-taken-up }
fact-length-sides = length at the sides
    .why = { $slants ->
        [yes] { fact-length-taken-up }; along the side seam, which slants; straight down { $down }
       *[no] { fact-length-taken-up }
     }
fact-length-back = length behind
    .why = { fact-length-taken-up }
# Said only inside the three above.
fact-length-taken-up = { $dips ->
    [yes] the hem is cut { $up } higher there than behind
   *[no] { $up } is taken up at the waist, so that the hem hangs level
 }
# A layer that ends above the lowest one.
fact-length-layer = length of { PIECE($piece) }
    .why = it ends { $short } above the hem
fact-hem = round the hem
    .why = one ring of { PIECE($piece) }
fact-hems = { $layers ->
    [2] round both hems
   *[other] round all { $layers } hems
 }
    .why = { $hems }
# Said only inside the message above: so many rings, their length, of which piece.
fact-hem-of = { $copies } x { $round } of { PIECE($piece) }

## Fullness and weight

fact-fullness = fullness from waist to hem
    .why = { $hem } of hem for { $waist } round the waist, before it is drawn in
# $cloth: its name in the maker's file.
fact-strips = { $cloth } in gathered strips
    .why = laid end to end: { $strips }
fact-strip = { $count } x { $length }
fact-weight = weight
    .why = the cloth as cut, without { $left-out }
fact-weight-about = about { $weight }
fact-weight-unknown = unknown
    .why = { $cloths }
fact-no-weight = { $cloth } has no weight
thread = thread

## The waist

fact-casing = cloth round the waist, before elastic
    .why = it must pass over the hips
fact-elastic = elastic, closed and at rest
fact-elastic-why-step = see the step that draws it in
fact-elastic-why-less = { $less } shorter than the waist
fact-elastic-why-carries = { $less } shorter than the waist, to carry about { $weight }
fact-waist = waist, closed
    .why = { $by ->
        [zip] the top edge; zip
        [hook-and-bar] { fact-waist-edge }; hook and bar
        [hook-and-eye] { fact-waist-edge }; hook and eye
        [button] { fact-waist-edge }; button
        [snaps] { fact-waist-edge }; snaps
       *[ties] { fact-waist-edge }; ties
     }
# Said only as a part of the one above.
fact-waist-edge = { $banded ->
    [yes] the band less its overlap
   *[no] the top edge less its overlap
 }
fact-opening = opening below the waist
    .why = with the open band it must pass over the hips

## Time

fact-time = time for all of it, about
    .why = at a practised hand's pace; without washing and drying
# $times: so many times as long as a practised hand.
fact-time-beginner = time for all of it, about
    .why = at a beginner's pace, { $times } times a practised hand's; without washing and drying
fact-time-cutting = of which cutting

## Sizes side by side

chart-body = Body
chart-choices = Choices
chart-piece = { PIECE($piece, at: "start") }
chart-count = how many
chart-length = finished length
chart-depth = finished depth
chart-depth-folded = finished depth, folded
chart-cut-length = cut length
chart-cut-depth = cut depth
chart-garment = The whole garment
chart-hems = round all hems
chart-weight = weight, about
