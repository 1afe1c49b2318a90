### Roll an edge of thin cloth to a hem of a few millimetres.
### $edge: the edge that is hemmed.

rolled-hem-title = Roll the hem of { PIECE($edge) }
    .number = { $roll }
rolled-hem-aim = A very narrow hem holds the edge.

## With a hemming foot

rolled-hem-fit-foot = Fit a hemming foot for { $roll }. Try it on an offcut of the same cloth.
rolled-hem-thin-seams = Where a seam meets { EDGE($edge) }, cut the corners of its margins off slantwise, so that they pass through the foot.
rolled-hem-begin-ring = Wrong side up, fold the first { $first } of { EDGE($edge) } beside { side-seam } twice by { $roll }. Put the fold under the foot and the needle into it.
rolled-hem-begin-flat = Wrong side up, fold the first { $first } of { EDGE($edge) } at one end twice by { $roll }. Put the fold under the foot and the needle into it.
rolled-hem-sew-foot-ring = Sew along the fold. Then lead the raw edge into the scroll of the foot and sew on, { $stitch }, the edge held upright before the foot. Stop { $first } before the start and take the edge out of the scroll. Fold the rest by hand and sew over the start by three stitches: { $length } in all.
rolled-hem-sew-foot-flat = Sew along the fold. Then lead the raw edge into the scroll of the foot and sew on, { $length } in all, { $stitch }, the edge held upright before the foot.
rolled-hem-foot-off = Put the usual foot back on.

## By hand

rolled-hem-crease = Sew or crease a line { $twice } from { EDGE($edge) }, then trim loose threads.
rolled-hem-roll = Wrong side up, roll the edge between finger and thumb to { $roll }, a hand's length at a time.
rolled-hem-sew-hand = Slip stitch the roll down, a stitch every { $every }, { $length }: one thread of the cloth, then through the roll. Fasten the thread in the roll at both ends.

## With the overlocker

rolled-hem-set-overlocker = Set the overlocker for a rolled edge: stitch finger off, { $stitch }, lower looper tight. Try it on an offcut.
rolled-hem-sew-overlocker-ring = Right side up, sew { EDGE($edge) }, { $length }; let the knife take only loose threads. Sew { $past } over the start, then run off the edge.
rolled-hem-sew-overlocker-flat = Right side up, sew { EDGE($edge) }, { $length }; let the knife take only loose threads. Run off the edge at both ends.
rolled-hem-chain = Leave a thread chain of { $tail } at the start and the end. Thread each on a blunt needle, draw it under the stitches and cut off the rest.
    .check = No loose chain hangs out.
rolled-hem-set-back = Set the overlocker back for neatening.

## Look

rolled-hem-look = Look along all of { EDGE($edge) }.
    .check = The roll is { $roll } wide and no raw edge stands out.
    .tolerance = { $off } more or less
    .remedy = Unpick a hand's width on both sides of the place, roll it again and sew it.
rolled-hem-look-overlocker = { rolled-hem-look }
    .check = { rolled-hem-look.check }
    .tolerance = { rolled-hem-look.tolerance }
    .remedy = Trim what stands out, and sew over that stretch once more with the knife off.
