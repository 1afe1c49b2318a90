### Ease a slightly longer edge in, so that it lies smooth on a shorter one.

ease-in-title = Ease in { EDGE($edge) }
    .number = { $cloth } → { $short }
ease-in-aim = { $cloth } of cloth lies in { $short }, and no fold stands.

# The edge is a ring: folding begins at its side seam.
ease-in-fold-ring = { $parts ->
    [8] Fold { EDGE($edge) } in half three times, from { side-seam }. Mark the folds on both faces: every { $cloth-part } along the cut edge.
   *[4] Fold { EDGE($edge) } in half twice, from { side-seam }. Mark the folds on both faces: every { $cloth-part } along the cut edge.
 }
ease-in-fold-flat = { $parts ->
    [8] Fold { EDGE($edge) } in half three times, end to end. Mark the folds on both faces: every { $cloth-part } along the cut edge.
   *[4] Fold { EDGE($edge) } in half twice, end to end. Mark the folds on both faces: every { $cloth-part } along the cut edge.
 }
ease-in-set = { rows-set-machine }
ease-in-row = Sew one row { $row } from the cut edge of { EDGE($edge) }. { rows-runs }
ease-in-pull = { $parts ->
    [8] Pull the bobbin threads a little, from both ends, until each eighth measures { $short-part } along the row. Stroke the cloth along the row with your fingertips.
   *[4] Pull the bobbin threads a little, from both ends, until each quarter measures { $short-part } along the row. Stroke the cloth along the row with your fingertips.
 }
    .check = The cloth is rounded a little along the row, and no fold stands.
    .remedy = Where a fold stands, let the thread out there and stroke the cloth to both sides.
ease-in-measure-ring = Measure the eased edge all round, along the row: { $short }.
    .check = { ease-in-measure.check }
    .tolerance = { ease-in-measure.tolerance }
    .remedy = { ease-in-measure.remedy }
ease-in-measure-flat = Measure the eased edge along the row: { $short }.
    .check = { ease-in-measure.check }
    .tolerance = { ease-in-measure.tolerance }
    .remedy = { ease-in-measure.remedy }
# Said only as parts of the two above.
ease-in-measure =
    .check = { $has-target ->
        [yes] It is { $short } long, the length of { EDGE($target) } on its seam line.
       *[no] It is { $short } long.
     }
    .tolerance = { $ease }
    .remedy = Too long: pull a little more. Too short: let the thread out.
ease-in-knot = { $in-runs ->
    [yes] At both ends of each run knot the two threads together. Cut them to { $knot }.
   *[no] At both ends of the row knot the two threads together. Cut them to { $knot }.
 }
    .check = The edge still measures { $short }.
    .remedy = If a knot slipped, pull the thread up again and knot closer to the cloth.
ease-in-set-back = { rows-set-back }
