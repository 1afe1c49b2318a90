### The two edges of a seam with their marks and pins, before they are sewn.
### $to: the pieces of the upper edge, $edge: those of the edge below.

figure-marks-above = { PIECE($to, at: "start") }
figure-marks-below = { $under ->
    [yes] { PIECE($edge, at: "start") }, underneath at the machine
   *[no] { PIECE($edge, at: "start") }, on top at the machine
 }
figure-marks-other-seam = other seam
figure-marks-every = a mark every { $part }

figure-marks-hold-ring = The edges are rings: the first and the last mark are the same side seam. { figure-marks-hold }
figure-marks-hold-flat = The first and the last mark are the two ends. { figure-marks-hold }
# Said only inside the two above.
figure-marks-hold = { $hold ->
    [clips] Clips at the marks first, then every { $spacing }.
   *[pins] Pins at the marks first, then every { $spacing }.
 }

figure-marks-alt = { $hold ->
    [clips] { PIECE($to, at: "start") } above and { PIECE($edge) } below, each { $length } long, with { $parts } equal stretches marked every { $part } and clips at the marks and between them.
   *[pins] { PIECE($to, at: "start") } above and { PIECE($edge) } below, each { $length } long, with { $parts } equal stretches marked every { $part } and pins at the marks and between them.
 }
figure-marks-caption = Match mark to mark, right sides together.
