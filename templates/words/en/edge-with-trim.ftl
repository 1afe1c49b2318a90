### Turn an edge up to the right side and sew a trim over the raw edge.
### $edge: the edge that is finished; $trim: what the trim is called.

edge-with-trim-title = Edge { PIECE($edge) } with { $trim }
    .number = { $turn }
edge-with-trim-aim = { COUNT($edge) ->
    [one] { EDGE($edge, at: "start") } is finished and cannot fray.
   *[other] { EDGE($edge, at: "start") } are finished and cannot fray.
 }

## Before it is sewn

# The edge is raw, and its cloth ravels.
edge-with-trim-hide = Lay the { $trim } over the raw edge of an offcut.
    .check = The raw edge does not show through.
    .remedy = If it shows, as under open lace, zigzag over { EDGE($edge) } first, 3 mm wide and 2 mm long, and set the machine back to straight: raw threads come out through the holes.

## Lay and fold

edge-with-trim-begin = Lay the work right side up. Fold the first { $stretch } of { EDGE($edge) } { $turn } up to the right side.
edge-with-trim-begin-ring = Begin at { side-seam }: lay the raw end of the { $trim } along this fold, right side up too, its outer edge level with it.
    .check = If one edge of the { $trim } is shaped, that edge lies outward, and the straight edge inward.
edge-with-trim-begin-flat = Begin at one end: lay the { $trim } along this fold, right side up too, its outer edge level with the fold and its raw end with the end of the cloth.
    .check = { edge-with-trim-begin-ring.check }
# The ends of the cloth are finished already: the trim's ends are folded under.
edge-with-trim-begin-folded = Fold { $under } of the end of the { $trim } under. Begin at one end: lay the { $trim } along this fold, right side up too, its outer edge level with it and its folded end with the end of the cloth.
    .check = { edge-with-trim-begin-ring.check }
edge-with-trim-fold = Go on folding { EDGE($edge) } { $turn } to the right side under the { $trim }, a stretch of { $stretch } at a time as you sew.
    .check = The outer edge of the { $trim } is level with the fold.

## Sew the outer edge of the trim

edge-with-trim-sew-ring = Sew { $row } from the fold, { $stitch }, a few stitches back at the start. Stop { $stretch } before you come round to the start, the needle down.
    .check = The raw edge is hidden under the trim everywhere.
    .remedy = Where it peeps out, unpick that stretch, fold a little deeper and sew it again.
edge-with-trim-sew-flat = Sew { $row } from the fold, { $stitch }, { $length } in all, a few stitches back at both ends. Cut the { $trim } level with the end of the cloth.
    .check = { edge-with-trim-sew-ring.check }
    .remedy = { edge-with-trim-sew-ring.remedy }
edge-with-trim-sew-folded = Sew { $row } from the fold, { $stitch }, a few stitches back at the start. Stop { $stretch } before the end, the needle down.
    .check = { edge-with-trim-sew-ring.check }
    .remedy = { edge-with-trim-sew-ring.remedy }

## Finish the ends of the trim

edge-with-trim-cut = Cut the { $trim } { $overlap } past its start.
edge-with-trim-lap = Fold { $half } of the cut end under, and lay the fold { $half } over the start.
    .check = The fold lies straight across, and no raw end shows.
    .remedy = If it does not reach, unpick a hand's width and lay the trim again with less pull.
edge-with-trim-close = Sew on to the fold, and a few stitches back: { $length } in all.
    .check = The join of the trim lies at { side-seam }.
edge-with-trim-end-folded = Cut the { $trim } { $under } past the end of the cloth and fold that much under. Sew on to the fold, and a few stitches back: { $length } in all.
    .check = The fold is level with the end of the cloth, and no raw end shows.
    .remedy = If it does not reach, unpick a hand's width and lay the trim again with less pull.

## Sew the inner edge of a wide trim

edge-with-trim-second-row-ring = Sew a second row { $below } from the inner edge of the { $trim }, { $stitch }, { $length }. Let the end overlap the start by three stitches.
edge-with-trim-second-row-flat = Sew a second row { $below } from the inner edge of the { $trim }, { $stitch }, { $length }, a few stitches back at both ends.
edge-with-trim-sew-lap = Sew the folded end down across the { $trim }, { $below } from its fold, a few stitches back at both ends.
edge-with-trim-sew-ends = Sew both folded ends down across the { $trim }, { $below } from their folds, a few stitches back at both ends.

## Sew the trim along the raw edge, then turn both up together

# The wrong side is up, the right side of the trim too: turned up, the trim shows.
edge-with-trim-along-ring = Lay the work wrong side up. Begin at { side-seam }: lay the { $trim } along { EDGE($edge) }, right side up. Its outer edge is level with the raw edge.
    .check = If one edge of the { $trim } is shaped, that edge lies away from the raw edge.
edge-with-trim-along-flat = Lay the work wrong side up. Begin at one end: lay the { $trim } along { EDGE($edge) }, right side up. Its outer edge is level with the raw edge, its end with the end of the cloth.
    .check = { edge-with-trim-along-ring.check }
edge-with-trim-along-folded = Lay the work wrong side up, one end before you. Fold { $under } of the end of the { $trim } under and lay it along { EDGE($edge) }, right side up, its outer edge level with the raw edge and its fold with the end of the cloth.
    .check = { edge-with-trim-along-ring.check }
edge-with-trim-along-sew-ring = Sew { $row } from the raw edge, { $stitch }, a few stitches back at the start. Stop { $stretch } before the end, the needle down.
    .check = { edge-with-trim-along-sew-flat.check }
    .remedy = { edge-with-trim-along-sew-flat.remedy }
edge-with-trim-along-sew-flat = Sew { $row } from the raw edge, { $stitch }, { $length } in all, a few stitches back at both ends. Cut the { $trim } level with the end of the cloth.
    .check = The edge of the { $trim } is level with the raw edge all along, and neither is stretched.
    .remedy = Where they slipped, unpick that stretch and sew it again.
# Several alike: the trim runs from one to the next.
edge-with-trim-along-sew-chain = Sew { $row } from the raw edge, { $stitch }, { $length } for each. At its end cut neither the { $trim } nor the threads: lay the next close behind and sew on.
    .check = { edge-with-trim-along-sew-flat.check }
    .remedy = { edge-with-trim-along-sew-flat.remedy }
edge-with-trim-apart = Cut the chain of { $copies } apart, the { $trim } level with the ends of the cloth.
edge-with-trim-turn-both = Fold { $trim } and cloth up together, { $turn } to the right side, a stretch of { $stretch } at a time as you sew.
    .check = The raw edge lies inside, between the cloth and the { $trim }. The first row is not seen from the wrong side.
    .remedy = Where the row peeps out at the fold, fold a little deeper.
edge-with-trim-topstitch-ring = With the right side up, topstitch { $below } from the upper edge of the { $trim }, { $stitch }, { $length }. Let the end overlap the start by three stitches.
    .check = Every stitch holds the { $trim } and the cloth.
    .remedy = Where it missed the { $trim }, sew that stretch again.
edge-with-trim-topstitch-flat = With the right side up, topstitch { $below } from the upper edge of the { $trim }, { $stitch }, { $length }, a few stitches back at both ends.
    .check = { edge-with-trim-topstitch-ring.check }
    .remedy = { edge-with-trim-topstitch-ring.remedy }
