### Roll an edge of thin cloth to a hem of a few millimetres.
### $edge: the edge that is hemmed.

rolled-hem-title = Roll the hem of { PIECE($edge) }
rolled-hem-aim = A very narrow hem holds the edge.
rolled-hem-caution = Keep your fingers two finger-widths from the needle.

## With a hemming foot

rolled-hem-fit-foot = Fit a hemming foot for { $roll }. Try it on an offcut of the same cloth.
rolled-hem-begin-ring = Fold the first { $first } of { EDGE($edge) } twice by { $roll }, at { side-seam }, and put it under the needle.
rolled-hem-begin-flat = Fold the first { $first } of { EDGE($edge) } twice by { $roll }, at one end, and put it under the needle.
rolled-hem-sew-foot = Lead the raw edge into the scroll of the foot and sew { $length }, { $stitch }; hold the edge upright before the foot.

## By hand

rolled-hem-crease = Sew or crease a line { $twice } from { EDGE($edge) }, then trim loose threads.
rolled-hem-roll = Roll the edge between finger and thumb to { $roll }, a hand's length at a time.
rolled-hem-sew-hand = Slip stitch the roll down, a stitch every { $every }, { $length }: one thread of the cloth, then through the roll.

## With the overlocker

rolled-hem-set-overlocker = Set the overlocker for a rolled edge: stitch finger off, short stitch, lower looper tight. Try it on an offcut.
rolled-hem-sew-overlocker = Sew { EDGE($edge) } right side up, { $length }; let the knife take only the fray.

## Look

rolled-hem-look = Look along { EDGE($edge) }, { $length }.
    .check = The roll is { $roll } wide and no raw edge stands out.
    .tolerance = { $off } more or less
    .remedy = Unpick a hand's width on both sides of the place, roll it again and sew it.
