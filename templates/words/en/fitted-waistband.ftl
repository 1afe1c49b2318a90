### Sew a flat band with a fastening to an open top edge.
### $band is the band; $to the edge that it goes on.

fitted-waistband-title = Sew on { PIECE($band) }
    .number = { $waist }
fitted-waistband-aim = The waist closes to { $waist } and opens for the hips.
# Ties close it: the next step sews them on.
fitted-waistband-aim-ties = { PIECE($band, at: "start") } is { $length } long and ready for its ties.

## Marks

# Said only inside the messages here. $underlap: one end of the band stands out, beneath the other.
fitted-waistband-from-ends = { $underlap ->
    [yes] { $seam-width } from the end on top and { $beneath } from the other
   *[no] { $seam-width } from both ends
 }
# Which end lies on top, as the opening lies on the wearer.
fitted-waistband-on-top = { $place ->
    [side] The end on top is that of the front.
    [back] The end on top is that of the left half.
   *[either] The end on top is that of the front at a left side, of the left half at the middle of the back.
 }
fitted-waistband-stands-out = { $underlap ->
    [yes] It stands out { $seam-width } at the end on top and { $beneath } at the other.
   *[no] It stands out { $seam-width } at both ends.
 }
# $stiffened: interfacing lies on the half that is sewn on.
fitted-waistband-fold = { $stiffened ->
    [yes] Fold the long edge of { PIECE($band) } that is on the half without interfacing { $seam-width } to the wrong side and press the fold.
   *[no] Fold one long edge of { PIECE($band) } { $seam-width } to the wrong side and press the fold.
 }
fitted-waistband-hold = Hold { PIECE($band) } to { EDGE($to) } as it will be sewn, the unfolded edge level with it, and pin a tag to the end that will lie on top. { fitted-waistband-on-top }
fitted-waistband-mark = { $parts ->
    [8] Mark { EDGE($to) } in eighths from end to end, every { $part }.{ marks-on-line }
   *[4] Mark { EDGE($to) } in quarters from end to end, every { $part }.{ marks-on-line }
 }
# The marks of pleats are there still.
fitted-waistband-mark-pleats = { $parts ->
    [8] Mark { EDGE($to) } in eighths from end to end, every { $part }, in another colour than the pleats.{ marks-on-line }
   *[4] Mark { EDGE($to) } in quarters from end to end, every { $part }, in another colour than the pleats.{ marks-on-line }
 }
fitted-waistband-mark-band = Mark the unfolded edge of { PIECE($band) } { fitted-waistband-from-ends }, and every { $part } between.
# The top edge bears marks from an earlier step.
fitted-waistband-mark-band-alone = Mark the unfolded edge of { PIECE($band) } { fitted-waistband-from-ends }, and every { $part } between. The top edge has its marks already.

## Sew on

# The piece flares, so its margin is narrower than the seam line.
fitted-waistband-snip = The cut edge of { PIECE($skirt) } is { $shorter } shorter than its seam line. Snip its margin every { $snips }, { $snip } deep, so that it spreads.
    .check = No snip comes nearer to the seam line than { $clear }.
    .remedy = Where one goes too deep, sew the seam as much further in there.
fitted-waistband-lay = { $face ->
    [right] Lay the unfolded edge of { PIECE($band) } on { EDGE($to) }, right sides together, marks on marks. { fitted-waistband-stands-out } { pin-start } it.
   *[other] Lay the unfolded edge of { PIECE($band) }, right side down, on the outside of { EDGE($to) }, marks on marks. { fitted-waistband-stands-out } { pin-start } it.
 }
    .check = On the seam line it is { $length } between the ends.
    .tolerance = { $edge-off } more or less
    .remedy = { $folds ->
        [gathers] Too long: pull the gathers closer. Too short: let them out.
        [pleats] Too long: lay some pleats a little deeper. Too short: a little less deep.
       *[flat] Share the difference out between the marks.
     }
fitted-waistband-sew = Sew { $seam-width } from the edge, { $length }, { $stitch }, a few stitches back at both ends.
    .check = Every layer is caught.
    .remedy = Sew again where a layer slipped out, { $past } past it on both sides.
fitted-waistband-press = Fold { PIECE($band) } up and press the seam, the whole margin towards the band.

## Close the ends and fold over

fitted-waistband-half = Fold { PIECE($band) } in half along its length, right sides together, the pressed fold level with the stitch line.
fitted-waistband-ends = Turn the skirt down, out of the way. On each end sew from the fold down to the stitch line, { $seam-width } from the edge, just clear of the skirt.
    .check = Both ends lie level with the edges of the opening.
    .remedy = Unpick the end and sew it again where it belongs.
fitted-waistband-end-on-top = Turn the skirt down, out of the way. On the end on top sew from the fold down to the stitch line, { $seam-width } from the edge, just clear of the skirt.
    .check = The end lies level with the opening.
    .remedy = Unpick the end and sew it again where it belongs.
fitted-waistband-end-beneath = On the end beneath unfold the pressed margin, both long edges level. Sew from the fold down, { $seam-width } from the edge, turn at the stitch line with the needle in the cloth, and sew along that line as far as the skirt.
    .check = The end stands out { $overlap } beyond the opening, and its lower edge is sewn shut.
    .remedy = Unpick the end and sew it again where it belongs.
fitted-waistband-turn = Cut the margin at the corners off slantwise, { $corner } from the row. Turn { PIECE($band) } right side out, push the corners out and press it.
    .check = It is { $depth } deep.
    .tolerance = { $fold-off } more or less
    .remedy = Press the fold again where it wanders.
fitted-waistband-label = Push one end of the label { $seam-width } under the folded edge at the middle of the band, the lettering in sight, and { pin } it.
fitted-waistband-inside = Lay the folded edge on the stitch line inside and { pin } it. With the inside up, sew { $edge-stitch } from the fold, { $length }, { $stitch }.
    .check = The fold is caught all along.
    .remedy = Catch what was missed by hand.

## The fastening

# $half: half of the overlap.
fitted-waistband-buttonhole = Mark a buttonhole in the end that lies on top: along the middle of the band, from { $half } inside the end, as long as the button is wide and thick together. Sew it as your machine does buttonholes, try one on an offcut first. Then set the machine back to a straight stitch.
fitted-waistband-cut = Cut the buttonhole open with a seam ripper, a pin across each of its ends.
fitted-waistband-button = Lay the ends over each other by { $overlap }. Make a dot through the buttonhole, { $half } from the end beneath, and sew the button there.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = Sew the button on again where it belongs.
fitted-waistband-hook = Sew the hook inside the end that lies on top, { $hook-in } from its edge. Sew the bar on the outside of the end beneath, { $bar-in } from its edge.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = Sew the bar on again where it belongs.
fitted-waistband-snaps = Lay the ends over each other by { $overlap }. Sew the flat halves of two snaps inside the end that lies on top, { $snap-in } from its edge, and the other halves where they meet the end beneath.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = Sew the halves beneath on again where they belong.
fitted-waistband-ties = Leave both ends as they are: the ties are sewn to them.
# Said only as parts of those above.
fitted-waistband-closed =
    .check = Closed with an overlap of { $overlap } the band measures { $waist }.
    .tolerance = { $waist-off } more or less
