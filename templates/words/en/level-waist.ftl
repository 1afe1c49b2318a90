### Cut the top edge lower where the waist lies lower, so that the hem hangs level.

level-waist-title = Level the waist
level-waist-aim = The waist lies { $deepest } lower { $lowest }, so the edge is cut lower there and the hem hangs level.
# Nothing is taken up anywhere: the step has no actions.
level-waist-aim-level = The waist is level: nothing is taken up.
# Said only as parts of the aim above: where the waist lies lowest.
level-waist-in-front = in front
level-waist-at-the-sides = at the sides
level-waist-behind = behind

## Find front and back on each edge

level-waist-hold-ring = Hold { PIECE($edge) } as it is worn, { side-seam } at the left of the wearer.
level-waist-lay-flat = Lay { PIECE($edge) } flat, right side up, the top edge away from you. The two ends come to the left of the wearer.
level-waist-mark-ring = Mark { EDGE($edge) } in quarters, every { $quarter } from { side-seam }: the middle of the front, the other side, the middle of the back. Mark both faces.
    .check = The last quarter ends at the seam.
    .tolerance = { $quarter-off } more or less
    .remedy = Share the difference out among the four.
level-waist-mark-flat = { $open ->
    [yes] Mark { EDGE($edge) } in quarters, the first { $first } from the right end, then every { $quarter }: the middle of the front, the other side, the middle of the back. Mark both faces.
   *[no] Mark { EDGE($edge) } in quarters, every { $quarter } from the right end: the middle of the front, the other side, the middle of the back. Mark both faces.
 }
    .check = { $open ->
        [yes] The last quarter ends { $margin } before the left end.
       *[no] The last quarter ends at the left end.
     }
    .tolerance = { level-waist-mark-ring.tolerance }
    .remedy = { level-waist-mark-ring.remedy }
level-waist-tag = Pin a paper tag to the front mark and to the back mark.

## Draw and cut

# Said in place of a length.
level-waist-nothing = nothing
level-waist-dots = Measure down from the edge at each mark: { $front } at the front, { $side } at the sides, { $back } at the back. Make a dot there.
    .check = Nothing is taken up where the waist lies highest.
    .remedy = If front and back were changed over, rub the dots out and measure again.
level-waist-line = Draw a smooth line from dot to dot. Let it run level for a hand's width at the front and at the back. Draw the four marks down over the line: they are needed again.
    .check = The line has no corner at the sides.
    .remedy = Draw it again, a little rounder.
level-waist-cut = Cut along the line. This is the top edge now; all that follows is measured from it.
