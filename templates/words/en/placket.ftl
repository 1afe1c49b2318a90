### Open the top edge with a bound slit, so that the waist need not pass the hips.
### $edge is the top edge; $strip the strip that binds the slit.

placket-title = Open { EDGE($edge) } with a placket
    .number = { $slit }
# The opening was left in a seam: nothing is cut.
placket-title-seam = Bind the opening of { EDGE($edge) } with a placket
    .number = { $slit }
placket-aim = The slit of { $slit } lets the waist pass the hips; it overlaps by { $overlap }.

## The slit

placket-mark = Mark a straight line { $slit } down from { EDGE($edge) }, at the middle of the back or at the left side, { $clear } or more from any seam.
placket-stay = With a stitch of { $short } mm, sew a row that holds the slit. Begin at the top edge { $stay } beside the line, and come nearer and nearer to it, down to a point at its foot. Take one stitch across the point and sew up the other side the same way.
    .check = At the top each row is { $stay } from the line, at the foot they meet in a point.
    .tolerance = { $stay-off } more or less
    .remedy = Sew that side again beside the first row. A row too near the line is cut through.
# The slit goes on through a seam.
placket-fasten = The line crosses a seam about { $to-seam } down. On both sides of the line sew three stitches forth and back on that seam, { $stay } from the line; if the seam is sewn by hand, fasten its threads there by hand.
    .check = Pulled apart at the line, the seam holds on both sides.
    .remedy = Fasten it once more before you cut.
placket-cut = Cut along the line to one thread before the point.
    .check = The cut ends before the stitches.
    .remedy = If a stitch was cut, sew a new point just below it.
# In a seam that was left open.
placket-clip = At the foot of the opening cut into both margins of the seam, straight to its last stitch. From there up trim both margins to { $seam-width }.
    .check = The cuts end one thread before the stitch, and the seam below is whole.
    .remedy = If the stitch was cut, sew over the last { $past } of the seam.

## The strip

placket-spread = Spread the slit to a straight line. Lay { PIECE($strip) } under it, right sides together. At both ends their edges are level; at the foot the slit lies { $in-at-foot } inside the edge of { PIECE($strip) }. { pin-start } it.
placket-sew = With the slit on top, sew { $seam-width } from the edge of { PIECE($strip) }, just beside the row that holds the slit, { $both-sides }, { $stitch }.
    .check = At the foot { $foot } of the slit is caught and no fold lies in the seam.
    .remedy = Unpick { $past } at the foot, smooth it and sew it again.
placket-spread-seam = Spread the opening to a straight line. Lay { PIECE($strip) } under it, right sides together, all edges level, and both ends level with the top edge. { pin-start } it.
placket-sew-seam = With the opening on top, sew { $seam-width } from the edges, on the line of the seam, { $both-sides }, { $stitch }.
    .check = At the foot the row meets the last stitch of the seam, and no fold lies in it.
    .remedy = Unpick { $past } at the foot, smooth it and sew it again.
placket-press = Press the margin towards { PIECE($strip) }.
placket-fold = Press { $seam-width } of its free edge to the wrong side. Fold { PIECE($strip) } over the seam to the inside, the fold on the stitch line, and { pin } it.
placket-stitch = With the inside up, sew { $edge-stitch } from that fold, { $both-sides }.
    .check = { PIECE($strip, at: "start") } is { $overlap } wide all along.
    .tolerance = { $wide-off } more or less
    .remedy = Shift the fold on the stitch line and sew it again.

## The overlap

placket-turn-in = Turn { PIECE($strip) } to the inside along the side that lies on top; at a left side that is the front. On the side beneath it stands out by { $overlap }. { pin-start } it at the top.
placket-foot = Fold the slit right sides together, so that the two halves of { PIECE($strip) } lie on each other. Sew across their foot slantwise, { $slant }, through { PIECE($strip) } alone.
    .check = Closed, the sides overlap by { $overlap }; open, the top edge measures { $across }.
    .tolerance = { $across-off } more or less
    .remedy = Take the difference into the gathers or pleats, or into the nearest seam.
