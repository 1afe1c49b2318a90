### Cutting: the list of pieces, and every step from the bolt to the last piece.
### $cloth: the maker's word for the cloth. $mark: a piece's tag as on the drawing, such as 2b.

## The list

cut-whole = whole
cut-joins = { $joins ->
    [one] { $joins } join
   *[other] { $joins } joins
 }
# Of several copies together.
cut-joins-in-all = { $joins ->
    [one] { $joins } join in all
   *[other] { $joins } joins in all
 }
cut-finished = { $length } x { $depth }
cut-finished-folded = { $length } x { $depth }, folded
cut-finished-gores = { $gores } gores, { $depth } deep

## Before the first cut

cutting-title = Cut the { $cloth }
    .number = { $length }
cutting-aim = { $sections ->
    [one] { $sections } section. Cut sizes hold every allowance: add nothing.
   *[other] { $sections } sections. Cut sizes hold every allowance: add nothing.
 }

# $trims: laces, ribbons, tapes and cords that the steps sew on.
cutting-wash-trims = Wash and dry the { $trims } as the garment will be washed, before you measure any of it: a trim that shrinks later puckers its edge.
    .check = { COUNT($trims) ->
        [one] It is dry all through and lies flat.
       *[other] They are dry all through and lie flat.
     }
    .remedy = Press what has curled through a cloth, the iron at one dot, and let it cool.
# Said only inside the messages below. Dots of care labels: ISO 3758.
cutting-dots = { $dots ->
    [1] one dot, 110 °C, no steam
    [2] two dots, 150 °C
   *[3] three dots, 200 °C, with steam
 }
cutting-wash = Wash and dry the { $cloth } before cutting: it shrinks about { $shrinks }. Press it, the iron at { cutting-dots }.
    .check = It is dry all through and lies flat.
    .remedy = Dry it longer, and press it again along its length.
# No shrinkage is given, and its fibre is known to shrink.
cutting-wash-unknown = Wash and dry the { $cloth } before cutting, as the garment will be washed: new cloth shrinks, and by how much is not said. Press it, the iron at { cutting-dots }.
    .check = { cutting-wash.check }
    .remedy = { cutting-wash.remedy }
# Said only inside the messages below.
cutting-straighten = { $made ->
    [net] Straighten the end that you begin at: cut across along one row of holes.
    [woven] Straighten the end that you begin at: pull out one thread that runs across, and cut along the gap that it leaves.
   *[close] Straighten the end that you begin at: rule a line square to the long edge, and cut along it.
 }
cutting-selvedges = Cut off the selvedges of the { $cloth }. { cutting-straighten }
    .check = At least { $length } of length is left.
    .remedy = If it is too short, buy what is missing before you cut anything.
# The plan takes nearly all of the width.
cutting-selvedges-wide = { cutting-selvedges }
    .check = At least { $width } of width is left, and { $length } of length.
    .remedy = { $eked ->
        [yes] If it is up to { $hair } narrower, cut { $shorter } as long as it is wide, and { $longer } longer by all that they lack. If it is narrower still, buy it wider. If it is too short, buy what is missing before you cut anything.
       *[no] If it is narrower than { $width }, buy it wider, or have the plan made anew for your width. If it is too short, buy what is missing before you cut anything.
     }
# Some pieces have an edge on the selvedge.
cutting-selvedges-kept = Leave the selvedges of the { $cloth } on: some are edges of pieces. { cutting-straighten }
    .check = { cutting-selvedges.check }
    .remedy = { cutting-selvedges.remedy }
cutting-selvedges-kept-wide = { cutting-selvedges-kept }
    .check = { cutting-selvedges-wide.check }
    .remedy = { cutting-selvedges-wide.remedy }
# Where an earlier part of the cutting ended on this cloth. $kept (yes or no): whether its selvedges stay on.
cutting-goes-on = { $kept ->
    [yes] Go on with the { $cloth } where the part before ended: that end is straight. The selvedges stay on.
   *[no] Go on with the { $cloth } where the part before ended: that end is straight. Cut off the selvedges where they are still on.
 }
    .check = { cutting-selvedges-wide.check }
    .remedy = { cutting-selvedges-wide.remedy }
cutting-fold = Fold the { $cloth } lengthwise, right sides together, so that its two long edges meet.
    .check = Both layers lie flat, and the fold is straight.
    .remedy = Open it, straighten the end again and fold it anew.
# The faces of the cloth are alike.
cutting-fold-alike = Fold the { $cloth } lengthwise, so that its two long edges meet.
    .check = { cutting-fold.check }
    .remedy = { cutting-fold.remedy }

## A section

# Said only inside the messages below. $net: chalk falls through it.
cutting-line-put = { $net ->
    [yes] set a row of pins
   *[no] chalk a line
 }
cutting-chalk = { $made ->
    [net] Set a row of pins straight across the { $cloth }, along the holes, { $length } from its cut end: chalk falls through.
   *[close] Chalk a line straight across the { $cloth }, { $length } from its cut end.
 }
    .check = Both ends of the line are { $length } from the cut end.
    .tolerance = { $off }
    .remedy = { $made ->
        [net] Set the pins anew before you cut.
       *[close] Rub the line out and chalk it again before you cut.
     }
cutting-section = Cut along the line: this is section { $number } of { $sections }.
cutting-section-only = Cut along the line: this is the one section.
# Other sections of this cloth keep theirs.
cutting-selvedges-here = Cut the selvedges off this section: no piece of it keeps one.
# $taped: whether tapes lie on the table, which have a drawing of their own.
cutting-tags = Write paper tags as on the drawing of the section{ $taped ->
    [yes] { " " }(not that of the tapes)
   *[no] { "" }
 }. Pin each on as its piece is cut, near the edge that is up there, its top, on the wrong side: the duller face. Where both look alike, choose now.
    .check = { $tags ->
        [one] { $tags } tag. A tag comes off when its piece is sewn.
       *[other] { $tags } tags. A tag comes off when its piece is sewn.
     }
# The faces of the cloth are alike.
cutting-tags-alike = Write paper tags as on the drawing of the section{ $taped ->
    [yes] { " " }(not that of the tapes)
   *[no] { "" }
 }. Pin each on as its piece is cut, near the edge that is up there, its top. This cloth has no right side: the tagged face is the wrong side.
    .check = { cutting-tags.check }
# How is said at the first section of the cloth.
cutting-tags-again = Write the tags of this section too, and pin each on as its piece is cut, in the same way as before.
    .check = { cutting-tags.check }
# Rectangles that pieces are cut from later on.
cutting-tags-cut-again = To be cut once more later: { PIECE($pieces) }. There the tag says only which piece it is; the step that cuts it says which edge is up.

## Lanes, over tapes on the table

# $tapes: the distances of the tapes.
cutting-tapes-along = { COUNT($tapes) ->
    [one] Stick a paper tape along the table. Its far side lies { $tapes } from the near edge of the table.
   *[other] Stick paper tapes along the table. Their far sides lie { $tapes } from the near edge of the table.
 }
    .check = { $beyond ->
        [yes] Each tape runs along the whole table and down over both its ends, where you see it when the cloth covers the rest. The last one is at its distance at both ends.
       *[no] Each tape goes a hand beyond the section at both ends, and the last one is at its distance at both.
     }
    .tolerance = { $tape-off }
    .remedy = Measure again from the same edge, never from tape to tape. If the table is too small, work on the floor: one more tape there is the near edge.
# Tapes of an earlier section lie on the table.
cutting-tapes-along-anew = { cutting-tapes-along } Take up the tapes that lie elsewhere.
    .check = { cutting-tapes-along.check }
    .tolerance = { cutting-tapes-along.tolerance }
    .remedy = { cutting-tapes-along.remedy }
cutting-tapes-across = { COUNT($tapes) ->
    [one] Stick a paper tape across the table. Its far side lies { $tapes } from the left end of the table.
   *[other] Stick paper tapes across the table. Their far sides lie { $tapes } from the left end of the table.
 }
    .check = { cutting-tapes-along.check }
    .tolerance = { cutting-tapes-along.tolerance }
    .remedy = Measure again from the same end, never from tape to tape. If the table is too small, work on the floor: one more tape there is the left end.
cutting-tapes-across-anew = { cutting-tapes-across } Take up the tapes that lie elsewhere.
    .check = { cutting-tapes-along.check }
    .tolerance = { cutting-tapes-along.tolerance }
    .remedy = { cutting-tapes-across.remedy }
# An earlier section has the same tapes.
cutting-tapes-stay = Leave the tapes as they lie, { $tapes } from the { $from ->
    [end] left end
   *[edge] near edge
 } of the table.
    .check = None of them has come loose.
cutting-draw-along = Draw the { $cloth } over the tapes, straight and without pull, so that a side that had a selvedge lies level with the near edge. Lay weights on it.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# The lane nearest to the maker keeps its selvedge.
cutting-draw-along-kept = Draw the { $cloth } over the tapes, straight and without pull, so that one selvedge lies level with the near edge. Lay weights on it.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
cutting-draw-along-folded = Draw the { $cloth } over the tapes, straight and without pull, so that the fold lies level with the near edge. Lay weights on it.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Of folded cloth only what lies at the selvedges is cut.
cutting-draw-no-tapes = Lay the { $cloth } on the table, straight and without pull, so that the fold lies level with the near edge. Lay weights on it.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Lanes over the width of the cloth.
cutting-draw-turned = Turn the { $cloth } a quarter round and draw it over the tapes, straight and without pull, so that its cut end lies level with the near edge. Lay weights on it.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
cutting-draw-across = Draw the { $cloth } along the table over the tapes, straight and without pull, so that its cut end lies level with the left end. Lay weights on it.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# The other sections of this cloth are cut folded.
cutting-draw-across-open = Open the fold out: this section is cut in one layer. { cutting-draw-across }
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
cutting-draw-turned-open = Open the fold out: this section is cut in one layer. { cutting-draw-turned }
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Said only as parts of the four above.
cutting-draw =
    .check = It lies flat, and does not slip when you push it.
    .remedy = Lift the weights, draw it straight again and put on more of them.
# Said only inside the messages below.
cutting-lane-count = { $lanes ->
    [one] { $lanes } lane
   *[other] { $lanes } lanes
 }
cutting-slit = { COUNT($tapes) ->
    [one] Cut along the far side of the tape: { cutting-lane-count }. Where cloth hides a tape, { cutting-line-put } from end to end.
   *[other] Cut along the far side of each tape: { cutting-lane-count }. Where cloth hides a tape, { cutting-line-put } from end to end.
 }
# The section is longer than the table.
cutting-slit-beyond = { cutting-slit } At the end of the table draw the next stretch over and go on along the same tapes.
# Lanes at the far selvedge, or on folded cloth at both, which lie together there.
cutting-slit-selvedge = { $folded ->
    [yes] Pin the two selvedges together. { $depth } from them { cutting-line-put } from end to end, and cut along it through both layers: lanes { $lanes }.
   *[no] { $depth } from the far selvedge { cutting-line-put } from end to end, and cut along it: lane { $lanes }.
 }
    .check = It is { $depth } from the selvedge at both ends and in the middle.
    .tolerance = { $off }
    .remedy = Measure again from the selvedge before you cut.
# $pieces: marks of pieces.
cutting-selvedge-stays = Leave the selvedge on { $pieces }: it is the { $edge ->
    [top] top
   *[bottom] bottom
 } edge, finished as it is.
# Lanes that lie one on the other, beside the fold.
cutting-slit-fold = Cut along the fold too: lanes { $lanes } hang together there.
# $layer: of folded cloth, where the lane lies; fold: it holds the fold, and its depth is that when opened out.
cutting-lane-whole = { $layer ->
    [flat] Lane { $lane }, { $depth } deep, is { $piece }, uncut.
    [fold] Open out lane { $lane }, which holds the fold. It is { $depth } deep: this is { $piece }, uncut.
    [upper] Lane { $lane }, the upper layer, { $depth } deep, is { $piece }, uncut.
   *[under] Lane { $lane }, the under layer, { $depth } deep, is { $piece }, uncut.
 }
# Several lanes of one layer, each a piece as it comes off the table.
cutting-lanes-whole = Tag these lanes, which are cut no further: { $lanes }.
# Said only inside the message above.
cutting-lane-named = lane { $lane } is { $piece }
cutting-lane = { $layer ->
    [flat] From lane { $lane }, { $depth } deep, cut, square across and from one end on: { $cuts }.
    [fold] Open out lane { $lane }, which holds the fold. It is { $depth } deep: from it cut { $cuts }.
    [upper] From lane { $lane }, the upper layer, { $depth } deep, cut { $cuts }.
   *[under] From lane { $lane }, the under layer, { $depth } deep, cut { $cuts }.
 }
# A short section that is one strip: a ruler does, and no tape is laid.
cutting-strip-off = Measure { $length } along the cut end of section { $number }, { cutting-line-put } square across and cut along it: that is { $piece }.
    .check = It is { $length } long at both its long edges.
    .tolerance = { $off }
    .remedy = Straighten the end that is askew.
cutting-lane-over = { $layer ->
    [flat] Lane { $lane }, { $depth } deep, stays over.
    [fold] Lane { $lane }, which holds the fold, stays over.
    [upper] Lane { $lane }, the upper layer, { $depth } deep, stays over.
   *[under] Lane { $lane }, the under layer, { $depth } deep, stays over.
 }
# Said only inside the three above.
cutting-length-for = { $length } for { $piece }

## Panels that lie freely

cutting-lay = Lay the { $cloth } flat on the table, wrong side up, a cut end at your left and a side that had a selvedge near you: the near side. Lay weights on it.
    .check = It lies without a crease and without pull.
cutting-lay-alike = Lay the { $cloth } flat on the table, either face up, a cut end at your left and a side that had a selvedge near you: the near side. Lay weights on it.
    .check = { cutting-lay.check }
# Said only inside the two below.
cutting-measure-on = Where the table ends, { cutting-line-put } across and write down how far it is from the cut end: then draw the cloth on and measure on from that line.
cutting-lay-beyond = { cutting-lay } { cutting-measure-on }
    .check = { cutting-lay.check }
cutting-lay-alike-beyond = { cutting-lay-alike } { cutting-measure-on }
    .check = { cutting-lay.check }
cutting-panel = { $net ->
    [yes] With rows of pins along a ruler mark { $mark }:
   *[no] Chalk { $mark } with a ruler:
 } { $near-end } to { $far-end } from the cut end, { $near-side } to { $far-side } from the near side.
    .check = It is { $length } long on both sides and { $width } wide at both ends.
    .tolerance = { $off }
    .remedy = Measure again from the end and the edge, never from panel to panel.
cutting-round = Cut round each panel along its lines with shears, the outermost first.
    .check = { $panels ->
        [one] { $panels } panel cut. No straight cut from side to side parts them all.
       *[other] { $panels } panels cut. No straight cut from side to side parts them all.
     }
cutting-part-end = { COUNT($marks) ->
    [one] Cut straight through along the line { $at } from the cut end: { $marks } comes away.
   *[other] Cut straight through along the line { $at } from the cut end: { $marks } come away.
 }
cutting-part-side = { COUNT($marks) ->
    [one] Cut straight through along the line { $at } from the near side: { $marks } comes away.
   *[other] Cut straight through along the line { $at } from the near side: { $marks } come away.
 }
cutting-over-end = Cut straight through along the line { $at } from the cut end: what lies beside { $marks } stays over.
cutting-over-side = Cut straight through along the line { $at } from the near side: what lies beside { $marks } stays over.
cutting-over-end-all = Cut straight through along the line { $at } from the cut end: what lies beside the panels stays over.
cutting-over-side-all = Cut straight through along the line { $at } from the near side: what lies beside the panels stays over.
cutting-trim = Cut off what stays over beside { $marks }, along the lines.

## After the last cut

# Nothing that is left is large enough for other work.
cutting-keep-small = Keep what is left of the { $cloth } until the garment is done: stitches and the iron are tried on it, and mends are cut from it.
cutting-keep = Keep for later what is large enough of the { $cloth }, each piece tagged with its size.
    .check = It is { $sizes }. Keep the smaller ones until the garment is done, to try stitches on and for mends.
# Said only inside the message above.
cutting-size = { $length } x { $width }
cutting-sizes = { $number } of { $length } x { $width }
