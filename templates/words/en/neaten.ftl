### Neaten raw edges or seam margins so that they cannot ravel.
### A step works on one place or several: $pieces or $edge say which, $length how long each is.

## What is neatened

neaten-title-joins = Neaten { neaten-joins }
neaten-title-ends = Neaten { neaten-ends }
neaten-title-between = Neaten { neaten-between }
neaten-title-edge = Neaten { EDGE($edge) }
neaten-title-all-joins = Neaten the margins of all joins
neaten-title-margins = Neaten { $places } margins of { PIECE($pieces) }
neaten-title-edges = Neaten { $places } edges of { PIECE($pieces) }
neaten-title-several = Neaten { $places } edges and margins of { PIECE($pieces) }
neaten-aim = The cut edges cannot ravel.
# Pinking shears: points hold the threads back, but not for ever.
neaten-aim-pinked = The cut edges ravel less.
# Cloth that does not ravel.
neaten-aim-firm = The cut edges are held and cannot scratch.

# Said only inside other messages of this file.
neaten-joins = the margins of the joins in { PIECE($pieces) }
# $several: the ring was closed of several panels, so there is more than one seam.
neaten-ends = { $several ->
    [yes] the margins of the side seams of { PIECE($pieces) }
   *[no] the margin of the side seam of { PIECE($pieces) }
 }
neaten-between = { $where ->
    [edge] the margin at { EDGE($beside) }
    [round] the margin round { PIECE($pieces) }
   *[between] the margin between { PIECE($pieces) }
 }

# As $place in the actions below.
neaten-place-joins = { neaten-joins }, all layers together, { $length } each
neaten-place-ends = { $several ->
    [yes] { neaten-ends }, all layers together, { $length } each
   *[no] { neaten-ends }, all layers together, { $length }
 }
neaten-place-between = { neaten-between }, all layers together, { $length }
# $layers: those of a stack or of a folded band are neatened as one.
neaten-place-edge = { $layers ->
    [1] { EDGE($edge) }, { $length }
    [2] { EDGE($edge) }, both layers together, { $length }
   *[other] { EDGE($edge) }, all layers together, { $length }
 }
# $longest: gores that differ have sides of several lengths.
neaten-place-sides = { EDGE($edge) }, { $length } to { $longest }

# $side: which of the two sides of a piece; it lies by itself yet.
neaten-side = { $side ->
    [start] { $each ->
        [gore] Lay a gore of { PIECE($piece) } right side up, its narrow end away from you. The start edge is the side at your left.
        [panel] Lay one piece of { PIECE($piece) } right side up, the top edge away from you. The start edge is the side at your left.
       *[piece] Lay { PIECE($piece) } right side up, the top edge away from you. The start edge is the side at your left.
    }
   *[end] { $each ->
        [gore] Lay a gore of { PIECE($piece) } right side up, its narrow end away from you. The end edge is the side at your right.
        [panel] Lay one piece of { PIECE($piece) } right side up, the top edge away from you. The end edge is the side at your right.
       *[piece] Lay { PIECE($piece) } right side up, the top edge away from you. The end edge is the side at your right.
    }
 }

## With an overlocker

neaten-overlock-ring = Begin at an upright seam. Overlock { $place }. Sew { $past } over the start, then run off the edge with a thread chain of { $tail }.
    .check = { neaten-overlock-flat.check }
    .remedy = { neaten-overlock-flat.remedy }
neaten-overlock-flat = Overlock { $place }. Run off the edge at both ends with a thread chain of { $tail }.
    .check = { $ravels ->
        [yes] Every layer is caught, and the knife took fray but no cloth.
       *[no] Every layer is caught, and the knife took only what stood out.
     }
    .remedy = Go over the stretch that was missed once more.
neaten-chain = Thread every chain on a blunt needle, draw it under the stitches and cut off the rest.
    .check = No loose chain hangs out.
neaten-chain-back = Fold every chain back on to its row of stitches, and sew over { $catch } of it with a small zigzag. Cut off the rest.
    .check = No loose chain hangs out, and the zigzag holds it.

## With a zigzag stitch

neaten-try-zigzag = { zigzag-set } Try it on the edge of an offcut.
    .check = The needle goes into the cloth and past its edge by turns, and the edge lies flat.
    .remedy = If the edge rolls in, make the stitch narrower.
neaten-zigzag-ring = Begin at an upright seam. Zigzag over { $place }. Sew { $past } over the start and a few stitches back. Cut the threads short.
    .check = { neaten-zigzag-flat.check }
    .remedy = { neaten-zigzag-flat.remedy }
neaten-zigzag-flat = Zigzag over { $place }. Sew a few stitches back at both ends. Cut the threads short.
    .check = Every layer is caught.
    .remedy = Go over the stretch that was missed once more.

## With pinking shears

neaten-pink = Pink { $place }. Take off no more than the points.
    .check = The points are even.
    .remedy = Go over the stretch that was missed once more.

## With the iron

# A long upright seam: its margins go to one side.
neaten-press = Press the margins of the upright seams of { PIECE($pieces) } flat to one side, from the wrong side, at every seam the same way round.
    .check = On the right side no fold lies beside a seam.
    .remedy = Pull the two pieces apart at the seam and press again.
