### Sew a flat band with a fastening to an open top edge.
### $band is the band; $to the edge that it goes on.

fitted-waistband-title = Sew on { PIECE($band) }
fitted-waistband-aim = The waist closes to { $waist } and opens for the hips.

## Sew on

fitted-waistband-fold = Fold one long edge of { PIECE($band) } { $seam-width } to the wrong side and press the fold.
fitted-waistband-mark = Mark both in quarters: every { $quarter }, on { PIECE($band) } from { $seam-width } inside its ends.
fitted-waistband-lay = Lay the unfolded edge of { PIECE($band) } on { EDGE($to) }, right sides together, marks on marks, { PIECE($band) } standing out { $seam-width } at both ends; { pin } it.
    .check = The edge measures { $length } between the ends.
    .tolerance = { $edge-off } more or less
    .remedy = Too long: draw the gathers in or lay pleats deeper. Too short: let them out.
fitted-waistband-sew = Sew { $seam-width } from the edge, { $length }, { $stitch }.
    .check = Every layer is caught.

## Close the ends and fold over

fitted-waistband-ends = Fold { PIECE($band) } in half, right sides together, and sew each end { $seam-width } from its edge.
fitted-waistband-turn = Trim the corners, turn { PIECE($band) } right side out and press it.
    .check = It is { $depth } deep.
    .tolerance = { $fold-off } more or less
    .remedy = Press the fold again where it wanders.
fitted-waistband-inside = Lay its folded edge on the stitch line inside, { pin } it and sew { $edge-stitch } from the fold, { $length }.
    .check = The fold is caught all along.
    .remedy = Catch what was missed by hand.

## The fastening

fitted-waistband-button = Sew a buttonhole in the end that lies on top, the button's width and thickness long, and sew the button to the end beneath.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = { fitted-waistband-closed.remedy }
fitted-waistband-hook = Sew the hook inside the end that lies on top, and the bar to the end beneath.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = { fitted-waistband-closed.remedy }
fitted-waistband-snaps = Sew the snaps to both ends, { $snap-in } from their edges.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = { fitted-waistband-closed.remedy }
fitted-waistband-ties = Leave both ends as they are: the ties are sewn to them.
# Said only as parts of those above.
fitted-waistband-closed =
    .check = Closed with an overlap of { $overlap } the band measures { $waist }.
    .tolerance = { $waist-off } more or less
    .remedy = Move the button, bar or snap.
