### Turn an edge up to the right side and sew a trim over the raw edge.
### $edge: the edge that is finished; $trim: what the trim is called.

edge-with-trim-title = Edge { PIECE($edge) } with { $trim }
edge-with-trim-aim = { COUNT($edge) ->
    [one] { EDGE($edge, at: "start") } is finished and cannot fray.
   *[other] { EDGE($edge, at: "start") } are finished and cannot fray.
 }

## Lay and fold

edge-with-trim-begin-ring = Begin at { side-seam }: lay the raw end of the { $trim } there, right side up, over { EDGE($edge) }.
    .check = If one of its two edges is straight, that edge is up, and the shaped edge is down.
edge-with-trim-begin-flat = Begin at the left end: lay the raw end of the { $trim } there, right side up, over { EDGE($edge) }.
    .check = { edge-with-trim-begin-ring.check }
edge-with-trim-fold = Fold { EDGE($edge) } up { $turn } to the right side under the { $trim }, a stretch of { $stretch } at a time as you sew.
    .check = The lower edge of the { $trim } is level with the fold.

## Sew the lower edge of the trim

edge-with-trim-sew-ring = Sew { $row } from the fold, { $stitch }, a few stitches back at the start. Stop { $stretch } before you come round to the start, the needle down.
    .check = The raw edge is hidden under the trim everywhere.
    .remedy = Where it peeps out, unpick that stretch, fold a little deeper and sew it again.
edge-with-trim-sew-flat = Sew { $row } from the fold, { $stitch }, { $length } in all, a few stitches back at both ends.
    .check = { edge-with-trim-sew-ring.check }
    .remedy = { edge-with-trim-sew-ring.remedy }

## Join the ends of the trim round a ring

edge-with-trim-cut = Cut the { $trim } { $overlap } past its start.
edge-with-trim-lap = Fold { $half } of the cut end under, and lay the fold { $half } over the start.
    .check = The fold lies straight across, and no raw end shows.
    .remedy = If it does not reach, unpick a hand's width and lay the trim again with less pull.
edge-with-trim-close = Sew on to the fold, and a few stitches back: { $length } in all.
    .check = The join of the trim lies at { side-seam }.

## Sew the upper edge of a wide trim

edge-with-trim-second-row-ring = Sew a second row { $below } below the upper edge of the { $trim }, { $stitch }, { $length }. Let the end overlap the start by three stitches.
edge-with-trim-second-row-flat = Sew a second row { $below } below the upper edge of the { $trim }, { $stitch }, { $length }. Sew a few stitches back at both ends.
edge-with-trim-sew-lap = Sew the folded end down across the { $trim }, { $below } from its fold, a few stitches back at both ends.
