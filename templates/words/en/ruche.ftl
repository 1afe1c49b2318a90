### Gather a finished strip along one line or two and sew it flat on another piece.
### $lines: one along the middle of the strip, or two inside its long edges.

ruche-title = Sew { PIECE($strip) } on { PIECE($on) }
ruche-aim = { $cloth } of strip lies in { $length }: { $ratio } to 1.

## Mark

# A flat strip whose ends no seam will take: those of the piece are finished already.
ruche-ends = Fold { $under } of { PIECE($strip) } to the wrong side at both ends and sew the folds down, { $beside } from them.
ruche-mark = Mark { PIECE($strip) } in quarters, every { $cloth-part }, and { PIECE($on) } every { $part }.
ruche-mark-line = Mark a line on { PIECE($on) }, { $above } above its bottom edge.

## Gather

ruche-row = { $lines ->
    [two] Sew a row of the longest stitch { $inset } inside both its long edges; do not sew back, and leave { $tail } of thread at both ends.
   *[one] Sew a row of the longest stitch along its middle; do not sew back, and leave { $tail } of thread at both ends.
 }
ruche-pull = { $lines ->
    [two] Pull the bobbin thread of each row until every quarter measures { $part }.
   *[one] Pull the bobbin thread of the row until every quarter measures { $part }.
 }
    .check = { $lines ->
        [two] { PIECE($strip, at: "start") } is { $length } long on both lines.
       *[one] { PIECE($strip, at: "start") } is { $length } long.
     }
    .tolerance = up to { $ease } short may be eased in
    .remedy = More than { $ease } short: let the gathers out. Too long: pull closer.

## Sew on

ruche-level = Lay the ends of { PIECE($strip) } level with the ends of { PIECE($on) }.
ruche-lay = { $lines ->
    [two] Lay { PIECE($strip) } on { PIECE($on) }, right side up, each row on its line, and { pin } it at the quarters, then every { $spacing }.
   *[one] Lay { PIECE($strip) } on { PIECE($on) }, right side up, the row on its line, and { pin } it at the quarters, then every { $spacing }.
 }
ruche-knot = At both ends knot every upper thread to its lower one, and cut the tails to { $knot }.
ruche-sew = { $lines ->
    [two] Sew on each row, { $length }, { $stitch }.
   *[one] Sew on the row, { $length }, { $stitch }.
 }
    .check = Both edges of { PIECE($strip) } stand free and are even.
    .remedy = Unpick where the row left the line and sew it again.
