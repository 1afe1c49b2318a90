### Set pointed panels into slits at a bottom edge, so that only the hem widens.
### $slit: from the cut edge up; $wide: what one godet adds to the hem, $hangs: how far its corners hang below the edge.

godets-title = { $many ->
    [one] Set a godet into { EDGE($edge) }
   *[other] Set { $many } godets into { EDGE($edge) }
 }
    .number = { $wide }
godets-aim = { $many ->
    [one] The godet adds { $wide } to the hem.
   *[other] Each godet adds { $wide } to the hem.
 }

## Mark, hold and cut the slits

godets-mark = { $ring ->
    [yes] Mark { EDGE($edge) } every { $every }, { $many } marks in all, the first { $first } from { side-seam }. From each draw a line { $slit } straight up, at a right angle to the edge.
   *[no] Mark { EDGE($edge) } every { $every }, { $many } marks in all, the first { $first } from one end. From each draw a line { $slit } straight up, at a right angle to the edge.
 }
    .check = All lines end level.
    .tolerance = { $mark-off } more or less
    .remedy = Measure again from the edge, along the line.
godets-hold = Lay a patch of the same cloth, { $patch } square, under the upper end of each line, on the wrong side. Sew { $beside } beside the line up to its end, one stitch across, and down its other side, { $short }.
godets-cut = Cut along each line between the two rows, up to the last thread before the point.
    .check = The point opens flat, and no stitch is cut.
    .remedy = Sew round the point once more and cut closer.

## Set in

godets-pin = Lay one side of a godet on one side of its slit, right sides together. At the hem the two edges lie { $seam-width } deep in the seam; towards the point the slit slides out, until only its row is caught. { pin-start } from the point down.
godets-sew = Sew from the point down, { $seam-width } from the edge of { PIECE($godet) } and just beside the row of the slit, { $stitch }, a few stitches back at the point.
    .check = No row of the slit shows from the right side.
    .remedy = Sew once more a hair further in, from the point.
godets-other = Fold the godet over and sew its other side in the same way, again from the point down. Press the margins towards the skirt and trim the patch to { $patch-left }.
    .check = No pleat is caught at the point.
    .remedy = Unpick { $unpicked } to both sides of the point and sew them again.
godets-level = The corners of { PIECE($godet) } hang { $hangs } below the edge of the skirt. Draw a curve from seam to seam, level with that edge at both and just touching the lower edge in the middle, and cut along it.
    .check = The godet ends level with the skirt at both seams.
    .remedy = Trim what still hangs below.
godets-measure = Measure { EDGE($edge) }: { $length }.
    .check = It is { $length } long, and each godet ends level with the skirt.
    .tolerance = { $off } more or less
    .remedy = Cut off what stands below the edge of the skirt.
