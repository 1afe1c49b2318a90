### Close an opening at its finished top edge with a hook, snaps or an eye, where no band does.
### $edge is the open top edge; $overlaps: its ends lie over each other, by $overlap.

fastening-title = Close the opening at the waist
fastening-aim = The waist closes to { $waist } and opens for the hips.

fastening-lay = { $overlaps ->
    [yes] Lay the opening closed, its ends over each other by { $overlap } and level at the top, and hold them with a pin.
   *[no] Lay the opening closed, its ends side by side and level at the top, and hold them with a pin.
 }
    .check = Closed, { EDGE($edge) } measures { $waist } round.
    .tolerance = { $waist-off } more or less
    .remedy = Shift the ends until it does.
# Several: the first at the top, the others below it.
fastening-mark = Mark the places of { $count } fasteners: the first { $below } below the top edge, the next every { $apart } down the opening.
    .check = There are { $count } marks, on both ends.
fastening-hook = Sew the hook inside the end that lies on top, { $below } below the top edge, its bend { $hook-in } inside the end. Sew round both holes and across the bend, without a stitch showing outside.
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
fastening-snap-on-top = Sew the flat half of a snap inside the end that lies on top, { $below } below the top edge and { $snap-in } from its end: four stitches through each hole.
    .check = No stitch shows outside, and it does not move when you pull.
    .remedy = Sew it on again through the inner layer alone.
fastening-snap-beneath = Press it on the end beneath, mark where its middle meets, and sew the other half there.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Sew the half beneath on again where it belongs.
# Said only as parts of those above.
fastening-closed =
    .check = Closed, the waist measures { $waist } round and its ends are level.
    .tolerance = { $waist-off } more or less
