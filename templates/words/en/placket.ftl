### Open the top edge with a bound slit, so that the waist need not pass the hips.
### $edge is the top edge; $strip the strip that binds the slit.

placket-title = Open { EDGE($edge) } with a placket
placket-aim = The slit of { $slit } lets the waist pass the hips; it overlaps by { $overlap }.

## The slit

placket-mark = Mark a straight line { $slit } down from { EDGE($edge) }, at the middle of the back or at the left side.
placket-stay = Sew along the line { $foot } to both sides of it with short stitches, down to a point at its foot.
placket-cut = Cut along the line to one thread before the point.
    .check = The cut ends before the stitches.
    .remedy = If a stitch was cut, sew a new point just below it.

## The strip

placket-spread = Spread the slit to a straight line. Lay { PIECE($strip) } on it, right sides together, and pin it: { $seam-width } of { PIECE($strip) }, and of the slit { $seam-width } at both ends, { $foot } at the foot.
placket-sew = Sew { $seam-width } from the edge of { PIECE($strip) }, { $both-sides }.
    .check = At the foot no pleat is caught.
    .remedy = Unpick { $past } at the foot, smooth it and sew it again.
placket-fold = Fold { $seam-width } of the free edge under, fold { PIECE($strip) } over the seam to the wrong side and pin it on the stitch line.
placket-stitch = Sew close to that fold, { $both-sides }.
    .check = { PIECE($strip, at: "start") } is { $overlap } wide all along.
    .tolerance = { $wide-off } more or less
    .remedy = Shift the fold on the stitch line and sew it again.

## The overlap

placket-turn-in = Turn { PIECE($strip) } to the inside along the side that lies on top; let it stand out by { $overlap } on the side beneath.
placket-foot = Sew the foot of { PIECE($strip) } slantwise, { $slant }, through its own layers only.
    .check = Closed, the sides overlap by { $overlap }; open, the top edge measures { $across }.
    .tolerance = { $across-off } more or less
    .remedy = Take the difference into the gathers or pleats, or into the nearest seam.
