### A cord in its casing.

figure-cord-through = The cord in its channel
figure-cord-front = middle of the front
figure-cord-lengths = Lengths, to one scale
figure-cord-casing = casing { $casing }
figure-cord-length = cord { $cut }
figure-cord-behind = At the middle of the back the cord is sewn to the band.
figure-cord-alt = { $knotted ->
    [yes] A cord of { $cut } in a casing of { $casing }, both ends out of a gap of { $gap } at the middle of the front, each end knotted, a bar of zigzag at both ends of the gap.
   *[no] A cord of { $cut } in a casing of { $casing }, both ends out of a gap of { $gap } at the middle of the front, each end folded under and sewn, a bar of zigzag at both ends of the gap.
 }
figure-cord-caption = Both ends come out of the gap and cannot slip back: the cord is held behind.
