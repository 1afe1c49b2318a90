### Sew a row on to a line across a piece, so that it falls from there.
### $edge: the top edge of the row; $on: the piece that carries it.

sew-on-title = Sew { PIECE($edge) } on { PIECE($on) }
    .number = { $from-edge }
sew-on-aim = { COUNT($edge) ->
    [one] { PIECE($edge, at: "start") } falls { $hangs } from a line { $length } long and hides its own seam.
   *[other] { PIECE($edge, at: "start") } fall { $hangs } from a line { $length } long and hide their own seam.
 }

## Mark

sew-on-mark-parts-ring = { $parts ->
    [8] Mark the line in eighths, every { $part }, the first at { side-seam }.
   *[4] Mark the line in quarters, every { $part }, the first at { side-seam }.
 }
sew-on-mark-parts-flat = { $parts ->
    [8] Mark the line in eighths, every { $part }.
   *[4] Mark the line in quarters, every { $part }.
 }

## Sew on

sew-on-lay = Lay { PIECE($edge) } on { PIECE($on) }, right sides together and hem upwards, the top edge { $seam-width } below the line.
    .check = The hem points to the top of { PIECE($on) }.
    .remedy = Turn it over: sewn the other way it shows its wrong side.
sew-on-pin = Match { match-places }, and { pin } there first. Then { pin } every { $spacing } between: about { pins-needed }.
sew-on-sew-ring = Sew { $seam-width } from the top edge, along the line, { $length } all round, { $stitch }. Let the end overlap the start by three stitches.
    .check = { PIECE($on, at: "start") } lies smooth beneath: no fold is caught.
    .remedy = Unpick that hand's width, smooth it and sew it again.
sew-on-sew-flat = Sew { $seam-width } from the top edge, along the line, { $length }, { $stitch }, a few stitches back at both ends.
    .check = { sew-on-sew-ring.check }
    .remedy = { sew-on-sew-ring.remedy }
sew-on-turn-down = Turn { PIECE($edge) } down over the seam and stroke the fold flat with your fingers.
    .check = The hem hangs { $hangs } below the fold all along, and no margin shows.
    .tolerance = { $level-off } more or less
    .remedy = Where it hangs askew, the edge strayed from the line: unpick there and sew again.
