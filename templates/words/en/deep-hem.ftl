### Turn up a deep hem and fasten it by hand or by machine.
### $edge: the edge that is hemmed.

deep-hem-title = Turn up a deep hem at { EDGE($edge) }
deep-hem-aim = A hem of { $depth } weights the edge.

deep-hem-turn-under = Fold { EDGE($edge) } { $under } to the wrong side and press the fold.
deep-hem-fold-up = Fold it up by { $depth }, press the lower fold, and { pin } it, seams first.
    .check = The hem is { $depth } deep all along.
    .tolerance = { $off } more or less
    .remedy = Unfold and press again where it wanders.
deep-hem-fasten-hand = Slip stitch the upper fold down, a stitch every { $every }, { $length }: one thread of the skirt, then along inside the fold; do not pull tight.
    .check = No stitch puckers and none shows on the right side.
    .remedy = Snip the stitch that puckers and sew it looser.
deep-hem-fasten-machine = Sew close to the upper fold, { $length }, { $stitch }.
    .check = The fold is caught everywhere.
    .remedy = Sew the missed stretch again.
