### Sew a folded band over the top edge: it encloses the seam and holds elastic or a cord.
### $band is the band; $to the edge that it goes on; $seam the side seam of the skirt, $band-seam that of the band.

band-casing-title = Sew on { PIECE($band) }
    .number = { $depth }
band-casing-aim = { $holds ->
    [cord] The top edge is enclosed and a channel for the cord is open at the gap.
   *[elastic] The top edge is enclosed and a channel for the elastic is open at the gap.
 }
band-casing-aim-holes = The top edge is enclosed, and a channel for the cord opens at its two { cord-holes }.

# Said only inside the messages below.
band-casing-top = { COUNT($to) ->
    [one] { EDGE($to) }
   *[other] the top edge of the skirt
 }
band-casing-seam = { $band-seam ->
    [bright] the side seam with the bright thread
   *[plain] the side seam
 }

## Marks

band-casing-fold = Fold one long edge of { PIECE($band) } { $seam-width } to the wrong side and press the fold.
# The half with the holes comes to the outside.
band-casing-fold-holes = Fold the long edge of { PIECE($band) } that lies nearer to the { cord-holes } { $seam-width } to the wrong side and press the fold.
band-casing-mark = { $parts ->
    [8] Mark { band-casing-top } in eighths on both faces, every { $part }, the first at { side-seam }.{ marks-on-line }
   *[4] Mark { band-casing-top } in quarters on both faces, every { $part }, the first at { side-seam }.{ marks-on-line }
 }
# The marks of pleats are there still.
band-casing-mark-pleats = { $parts ->
    [8] Mark { band-casing-top } in eighths on both faces, in another colour than the pleats, every { $part }, the first at { side-seam }.{ marks-on-line }
   *[4] Mark { band-casing-top } in quarters on both faces, in another colour than the pleats, every { $part }, the first at { side-seam }.{ marks-on-line }
 }
band-casing-mark-band = Mark the unfolded edge of { PIECE($band) } the same way, the first mark at { band-casing-seam }.
# What came out otherwise than planned: the top edge, $top, and the band, $length, are not equally long.
band-casing-mark-band-own = { $parts ->
    [8] Mark the unfolded edge of { PIECE($band) } in eighths of its own length, every { $part }, the first mark at { band-casing-seam }.
   *[4] Mark the unfolded edge of { PIECE($band) } in quarters of its own length, every { $part }, the first mark at { band-casing-seam }.
 }
# The top edge bears marks from an earlier step.
band-casing-mark-band-alone = { $parts ->
    [8] Mark the unfolded edge of { PIECE($band) } in eighths, every { $part }, the first at { band-casing-seam }. The top edge has its marks already.
   *[4] Mark the unfolded edge of { PIECE($band) } in quarters, every { $part }, the first at { band-casing-seam }. The top edge has its marks already.
 }

## Lay

band-casing-turn = Turn the skirt inside out, its top edge up.
band-casing-label = Lay the label on the inside, on { PIECE($inner) } beside { side-seam }, the lettering towards you. One end is level with the top edge: the seam of the band catches it. { pin-start } it there.
# Which face of the skirt lies inside: the wrong side of its only or innermost layer, ...
band-casing-slip = Slip { PIECE($band) } over it, wrong side out: the right side of the band against the wrong side of { PIECE($inner) }.
    .check = The unfolded edge is level with the top edge, and the pressed fold hangs down.
# ... the right side of a lining that is worn towards the legs, ...
band-casing-slip-lining = Slip { PIECE($band) } over it, wrong side out: the right side of the band against the right side of { PIECE($inner) }, which is outermost now.
    .check = { band-casing-slip.check }
# ... or cloth with two like faces.
band-casing-slip-either = Slip { PIECE($band) } over it, wrong side out: the right side of the band against the inside of { PIECE($inner) }.
    .check = { band-casing-slip.check }
band-casing-front = Turn the band on the skirt until the middle between the two { cord-holes } lies at the mark that is the middle of the front.
band-casing-pin = { pin-start } { band-casing-seam } of the band to the first mark, then the other marks, then every { $spacing }.
    .check = { $alike ->
        [yes] The band lies without a tuck; both measure { $length }.
       *[no] The band measures { $length } and the top edge { $top }; what is longer is spread between the marks without a tuck.
     }
    .tolerance = { $off } more or less
    .remedy = Share the difference out between the marks. If it is more, sew the side seam of the band again to fit.

## Sew and fold over

band-casing-sew = { $gathered ->
    [yes] Turn the work so that the gathers lie on top; there you sew from the inside of the ring. Sew { $seam-width } from the edge, { $stitch }, { $length } all round; let the end overlap the start by three stitches.
   *[no] Sew { $seam-width } from the edge, { $stitch }, { $length } all round; let the end overlap the start by three stitches.
 }
    .check = Every layer is caught.
    .remedy = Sew again where a layer slipped out, { $past } past it on both sides.
band-casing-fold-up = Turn the skirt right side out. Fold the band up, away from the skirt, the whole margin inside it, and press the seam.
band-casing-cover = Bring the folded edge over to the outside until it covers the stitch line by { $cover }, and { pin } it.
    .check = The band is { $depth } deep all round.
    .tolerance = { $fold-off } more or less
    .remedy = Shift the fold until it covers the stitch line everywhere. If the band is still less deep, it was cut too narrow: cut a new one { $cut-depth } deep.
band-casing-gap = Mark a gap of { $gap }: from { $beside } to { $gap-end } to the right of { band-casing-seam } of the band, as you look at the right side. Make a line at each end of it.
band-casing-gap-front = Mark a gap of { $gap } at the middle of the front, { $quarter } from { band-casing-seam } of the band, half of it to each side. Make a line at each end of it.
band-casing-topstitch = With the right side up, topstitch { $edge-stitch } from the lower fold from one line of the gap round to the other, { $stitch }, { $stitched }. Sew a few stitches back at both ends.
    .check = The gap is open and the channel is { $channel } wide inside.
    .tolerance = { $fold-off } more or less
    .remedy = Unpick what closes the gap.
band-casing-topstitch-round = With the right side up, topstitch { $edge-stitch } from the lower fold all round, { $stitch }, { $stitched }; let the end overlap the start by three stitches.
    .check = The fold is caught all round and the channel is { $channel } wide inside.
    .tolerance = { $fold-off } more or less
    .remedy = Unpick where the row ran off the fold, and sew that stretch again.
