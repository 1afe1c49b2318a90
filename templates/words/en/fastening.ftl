### Close an opening at its finished top edge with a hook, snaps or an eye, where no band does.
### $edge is the open top edge; $overlaps: its ends lie over each other, by $overlap.

fastening-title = Close the opening at the waist
fastening-aim = The waist closes to { $waist } and opens for the hips.
# A band closes the top: this closes the rest of the opening below it.
fastening-title-under = Close the opening below the band
fastening-aim-under = The opening does not gape below the band.

fastening-lay = { $overlaps ->
    [yes] Lay the opening closed, its ends over each other by { $overlap } and level at the top, and hold them with a pin.
   *[no] Lay the opening closed, its ends side by side and level at the top, and hold them with a pin.
 }
    .check = Closed, { EDGE($edge) } measures { $waist } round.
    .tolerance = { $off } more or less
    .remedy = Shift the ends until it does.
# Said only inside other messages. $marked: every place has a mark.
fastening-at = { $marked ->
    [yes] at each mark
   *[no] { $below } below the top edge
 }
fastening-lay-under = { $overlaps ->
    [yes] Close the band. Lay the edges of the opening below it over each other by { $overlap } and hold them with pins.
   *[no] Close the band. Lay the edges of the opening below it side by side and hold them with pins.
 }
    .check = The opening lies flat, and its edges end level.
    .tolerance = { $off } more or less
    .remedy = Shift one edge up or down until they do.
# Several: the first at the top, the others below it.
fastening-mark = Mark the places of { $count } fasteners: the first { $below } below the top edge, the next every { $apart } down the opening.
    .check = There are { $count } marks, on both ends.
fastening-mark-under = { $count ->
    [one] Mark the place of the fastener, { $apart } below the band.
   *[other] Mark the places of { $count } fasteners: the first { $apart } below the band, the next every { $apart } down the opening.
 }
    .check = There is a mark for each on both edges.
fastening-hook = Sew the hook inside the end that lies on top, { fastening-at }, its bend { $hook-in } inside the end. Sew round both holes and across the bend, without a stitch showing outside.
    .check = It does not move when you pull.
    .remedy = Sew round it once more.
fastening-bar = Sew the bar on the outside of the end beneath, { $bar-in } from its edge, where the hook meets it.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Sew the bar on again where it belongs.
fastening-eye = Sew the eye inside the other end, where the hook meets it, so that it stands out just beyond the end.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Sew the eye on again where it belongs.
fastening-snap-on-top = Sew the flat half of a snap inside the end that lies on top, { fastening-at } and { $snap-in } from its end: four stitches through each hole.
    .check = No stitch shows outside, and it does not move when you pull.
    .remedy = Sew it on again through the inner layer alone.
fastening-snap-beneath = Press it on the end beneath, mark where its middle meets, and sew the other half there.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Sew the half beneath on again where it belongs.
# Said only as parts of those above.
fastening-closed =
    .check = { $under ->
        [yes] Closed, the opening lies flat, and its edges end level.
       *[no] Closed, the waist measures { $waist } round and its ends are level.
     }
    .tolerance = { $off } more or less

## Buttons

fastening-buttonhole = Mark a buttonhole { $buttonhole } long in the end that lies on top, { fastening-at }: at right angles to the edge, from { $half } inside it. Where only one layer lies there, pin a square of firm cloth behind it, { $patch } each way. Sew it as your machine does buttonholes, but first one on an offcut as thick.
    .check = The button goes through the one on the offcut, and does not slip out by itself.
    .remedy = Sew it a little longer or shorter, and try again.
fastening-cut = Cut the buttonhole open with a seam ripper, a pin across each of its ends.
fastening-button = Lay the opening closed again. Push a pin through the buttonhole, { $beyond } inside its outer end, and mark the end beneath there, { $button-in } from its edge. Sew the button on the mark, with a short stem of thread below it.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Sew the button on again where it belongs.
fastening-loop = At the edge of the end that lies on top, { fastening-at }, carry a strong thread four times to and fro over { $button }, so slack that the button just goes through. Sew buttonhole stitches over it, close beside each other, from end to end.
    .check = The button goes through and does not slip out by itself.
    .remedy = Work it again, tighter or slacker.
fastening-loop-button = Lay the opening closed, pull the loop straight and mark the other end in the middle of the loop. Sew the button on the mark, with a short stem of thread below it.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Sew the button on again where it belongs.
