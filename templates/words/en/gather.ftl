### Gather an edge to a shorter length.

gather-title = Gather { EDGE($edge) }
    .number = { $cloth } → { $short }
gather-aim = { $cloth } of cloth lies in { $short }: { $ratio } to 1.

## Marks

# $marked: the layers bear their marks already.
gather-hold-layers = { $layers ->
    [2] { $marked ->
        [yes] Hold both layers together, edges level, and work through both: their marks are those of the gathers.
       *[no] Hold both layers together, edges level, and work through both.
    }
   *[other] { $marked ->
        [yes] Hold all { $layers } layers together, edges level, and work through all of them: their marks are those of the gathers.
       *[no] Hold all { $layers } layers together, edges level, and work through all of them.
    }
 }

# The edge is a ring: folding begins at its side seam.
gather-fold-ring = { $parts ->
    [8] Fold { EDGE($edge) } in half three times, from { side-seam }. Mark the folds on both faces: every { $cloth-part } of flat cloth.
   *[4] Fold { EDGE($edge) } in half twice, from { side-seam }. Mark the folds on both faces: every { $cloth-part } of flat cloth.
 }
gather-fold-flat = { $parts ->
    [8] Fold { EDGE($edge) } in half three times, end to end. Mark the folds on both faces: every { $cloth-part } of flat cloth.
   *[4] Fold { EDGE($edge) } in half twice, end to end. Mark the folds on both faces: every { $cloth-part } of flat cloth.
 }
# More cloth goes to the back than to the front, so that even marks of a step before mean nothing.
gather-old-marks = Rub out the marks that { EDGE($edge) } has.
# Net is marked by loops of thread; some of the layers may be of net, or all.
gather-old-loops = { $seam ->
    [bright] Cut out the loops of thread that mark { EDGE($edge) }. The bright thread in the side seam stays.
   *[plain] Cut out the loops of thread that mark { EDGE($edge) }.
 }
gather-old-both = { $seam ->
    [bright] Rub out the marks that { EDGE($edge) } has, and cut out the loops of thread that mark its net. The bright thread in the side seam stays.
   *[plain] Rub out the marks that { EDGE($edge) } has, and cut out the loops of thread that mark its net.
 }
gather-mark-ring = Mark { EDGE($edge) } on both faces at { $marks } from { side-seam }, measured on the flat cloth. That seam goes to the middle of the back.
    .check = { $behind } of the cloth lies in the back half, the seam at the middle of the back.
    .remedy = If the front is the fuller one, the marks were laid from the wrong place: measure from the seam again.
gather-mark-flat = Mark { EDGE($edge) } on both faces at { $marks } from the left end, measured on the flat cloth.
    .check = { $behind } of the cloth lies in the back half, the ends at the middle of the back.
    .remedy = If the front is the fuller one, the marks were laid from the wrong place: measure from the ends again.

## With the pleating attachment

gather-set-by-swatch = Fit the pleating attachment, set to pleat at every stitch, depth at mark { $mark }, with the stitch length of your swatches: they say that this takes the cloth to 1/{ $ratio }.
gather-set-half = Fit the pleating attachment. Set it to pleat at every stitch, depth at mark 6: that takes the cloth to about half.
gather-set-begin = Fit the pleating attachment, set to pleat at every stitch, and begin at depth mark 6, which takes the cloth to about half; here it should take it to 1/{ $ratio }.
gather-try = Try it on a spare strip { $strip } long.
    .check = It comes out { $strip-short } long.
    .tolerance = { $strip-off }
    .remedy = If it is longer, set the depth a little deeper; if shorter, a little shallower. Try again.
gather-pleat = Pleat { EDGE($edge) }, { $first-row } from the cut edge, right side up, { $cloth } in one go.

## With two rows

gather-thread-needle = Thread a hand needle with a double thread for running stitches of about { $hand-stitch }.
gather-set-machine = { rows-set-machine }
gather-first-row = Sew a row { $first-row } from the cut edge. { rows-runs }
gather-second-row = Sew a second row the same way, { $second-row } from the cut edge, { $apart } from the first.
    .check = The rows do not cross.
gather-wind-tails = { $in-runs ->
    [yes] At one end of each run, put a pin across and wind the thread tails round it in a figure of eight.
   *[no] At one end of the rows, put a pin across and wind the thread tails round it in a figure of eight.
 }
gather-knot-tails = { $in-runs ->
    [yes] At one end of each run, knot the two upper tails together on their face and the two lower tails together on theirs. Cut them to { $knot }.
   *[no] At one end of the rows, knot the two upper tails together on their face and the two lower tails together on theirs. Cut them to { $knot }.
 }
    .check = A light pull at the other end does not draw them in.
    .remedy = Knot them once more.
gather-pull-machine = { $parts ->
    [8] At the other end pull both bobbin threads together until each eighth measures { $short-part } along the rows. Wind these tails round a pin.
   *[4] At the other end pull both bobbin threads together until each quarter measures { $short-part } along the rows. Wind these tails round a pin.
 }
gather-pull-hand = { $parts ->
    [8] At the other end pull both threads together until each eighth measures { $short-part } along the rows. Wind these tails round a pin.
   *[4] At the other end pull both threads together until each quarter measures { $short-part } along the rows. Wind these tails round a pin.
 }

## Measure and share out

gather-measure-ring = Measure the gathered edge all round: { $short }.
    .check = { gather-measure.check }
    .tolerance = { gather-measure.tolerance }
    .remedy = { gather-measure.remedy }
gather-measure-flat = Measure the gathered edge: { $short }.
    .check = { gather-measure.check }
    .tolerance = { gather-measure.tolerance }
    .remedy = { gather-measure.remedy }
# Said only as parts of the two above.
gather-measure =
    .check = { $has-target ->
        [yes] { $at-cut ->
            [yes] It is { $short } long, the length of { EDGE($target) }.
           *[no] It is { $short } long, the length of { EDGE($target) } on its seam line.
        }
       *[no] It is { $short } long.
     }
    .tolerance = { $has-target ->
        [yes] up to { $ease } short in all: the flat edge is eased in when you pin
       *[no] up to { $ease } short in all
     }
    .remedy = More than { $ease } short: let the gathers out. Too long: pull the gathers closer.
gather-spread = { $parts ->
    [8] Spread the gathers evenly with your fingers, eighth by eighth.
   *[4] Spread the gathers evenly with your fingers, quarter by quarter.
 }
gather-knot-pulled = Take out the pins that hold the thread tails, and knot these tails as at the other ends: upper to upper on the one face, lower to lower on the other. Cut them to { $knot }.
    .check = The edge still measures { $short }.
    .remedy = If a knot slipped, pull the gathers up again and knot closer to the cloth.
gather-set-back = { rows-set-back }
