### An edge with its marks, then one stretch of the two edges pinned together, before they are sewn.
### $to: the pieces of the upper edge, $edge: those of the edge sewn to it; $up: those on top at the machine, $under: those below.

figure-marks-edge = { PIECE($to, at: "start") }
figure-marks-other-seam = other seam
figure-marks-every = a mark every { $part }
figure-marks-both-faces = { $ring ->
    [yes] Both ends are the side seam. A corner is turned: mark both faces.
   *[no] A corner is turned: mark both faces.
 }
figure-marks-alt = { PIECE($to, at: "start") }, the edge { $length } long, with { $parts } equal stretches marked every { $part } on both faces.

figure-pinned-up = { PIECE($up, at: "start") }, wrong side up
figure-pinned-mark = mark
figure-pinned-below = Below, where the corner is turned: { PIECE($under) }, right side up, the edges level.
figure-pinned-alt = { $hold ->
    [clips] One stretch of both edges, level, { PIECE($up) } on top with its wrong side up and { PIECE($under) } below, right sides together; a clip at the mark and one every { $spacing }.
   *[pins] One stretch of both edges, level, { PIECE($up) } on top with its wrong side up and { PIECE($under) } below, right sides together; a pin at the mark and one every { $spacing }.
 }
figure-pinned-caption = Match mark to mark, right sides together.
