### Gather a finished strip along one line or two and sew it flat on another piece.
### $lines: one along the middle of the strip, or two inside its long edges.

ruche-title = Sew { PIECE($strip) } on { PIECE($on) }
    .number = { $cloth } → { $length }
ruche-aim = { $cloth } of strip lies in { $length }: { $ratio } to 1.

## Mark

# A flat strip whose ends no seam will take: those of the piece are finished already.
ruche-ends = Fold { $under } of { PIECE($strip) } to the wrong side at both ends and sew the folds down, { $beside } from them.
ruche-mark-ring = { $parts ->
    [8] Mark { PIECE($strip) } in eighths, every { $cloth-part }, and { PIECE($on) } every { $part }, the first marks at the side seams.
   *[4] Mark { PIECE($strip) } in quarters, every { $cloth-part }, and { PIECE($on) } every { $part }, the first marks at the side seams.
 }
ruche-mark-flat = { $parts ->
    [8] Mark { PIECE($strip) } in eighths, every { $cloth-part }, and { PIECE($on) } every { $part }.
   *[4] Mark { PIECE($strip) } in quarters, every { $cloth-part }, and { PIECE($on) } every { $part }.
 }
ruche-mark-line = Mark a line on { PIECE($on) }, { line-place }.

## Gather

ruche-row = { $lines ->
    [two] Sew a row { $inset } inside each long edge of { PIECE($strip) }. { rows-runs }
   *[one] Sew a row along the middle of { PIECE($strip) }. { rows-runs }
 }
ruche-pull = { $parts ->
    [8] { $lines ->
        [two] At the other end pull the bobbin threads of both rows until every eighth measures { $part }. Wind these tails round a pin too.
       *[one] At the other end pull the bobbin thread until every eighth measures { $part }. Wind these tails round a pin too.
    }
   *[4] { $lines ->
        [two] At the other end pull the bobbin threads of both rows until every quarter measures { $part }. Wind these tails round a pin too.
       *[one] At the other end pull the bobbin thread until every quarter measures { $part }. Wind these tails round a pin too.
    }
 }
    .check = { $lines ->
        [two] { PIECE($strip, at: "start") } is { $length } long on both lines, and its gathers are even.
       *[one] { PIECE($strip, at: "start") } is { $length } long, and its gathers are even.
     }
    .tolerance = up to { $ease } short may be eased in
    .remedy = More than { $ease } short: let the gathers out. Too long: pull closer.

## Sew on

ruche-level = Lay the ends of { PIECE($strip) } level with the ends of { PIECE($on) }.
ruche-lay = { $lines ->
    [two] Lay { PIECE($strip) } on { PIECE($on) }, right side up, each row on its line, and { pin } it at the marks, then every { $spacing }.
   *[one] Lay { PIECE($strip) } on { PIECE($on) }, right side up, the row on its line, and { pin } it at the marks, then every { $spacing }.
 }
ruche-sew-ring = { $lines ->
    [two] Sew on each row, { $length } all round, { $stitch }. Let the end overlap the start by three stitches.
   *[one] Sew on the row, { $length } all round, { $stitch }. Let the end overlap the start by three stitches.
 }
    .check = Both edges of { PIECE($strip) } stand free and are even.
    .remedy = Unpick where the row left the line and sew it again.
ruche-sew-flat = { $lines ->
    [two] Sew on each row, { $length }, { $stitch }, a few stitches back at both ends.
   *[one] Sew on the row, { $length }, { $stitch }, a few stitches back at both ends.
 }
    .check = { ruche-sew-ring.check }
    .remedy = { ruche-sew-ring.remedy }
