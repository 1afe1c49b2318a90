### Lay a gathered or flat strip along an edge, so that its seam catches it.
### $edge: the edge of the strip; $in: the piece on whose edge it is laid.

catch-in-title = Lay { PIECE($edge) } in the seam of { PIECE($in) }
    .number = { $seam-width }
catch-in-aim = The seam that follows catches { EDGE($edge) }; it then comes { $hangs } out of it.

# It is laid on the lower edge of a piece and falls over what is sewn to it, ...
catch-in-lay-below = Lay { PIECE($edge) } on { PIECE($in) }, right sides together, its hem towards the middle of { PIECE($in) }, both cut edges level.
    .check = The hem points away from the cut edges, and the wrong side is up.
    .remedy = Turn it over: sewn the other way it shows its wrong side.
# ... or on the upper edge of the piece that it falls over.
catch-in-lay-above = Lay { PIECE($edge) } on { PIECE($in) }, both right sides up, its hem towards the middle of { PIECE($in) }, both cut edges level.
    .check = The hem points away from the cut edges, and the right side is up.
    .remedy = Turn it over: sewn the other way it shows its wrong side.
catch-in-pin = Match { match-places }, and { pin } there first. Then { pin } every { $spacing } between: about { pins-needed }.
catch-in-baste-ring = Sew { $row } from the edge with the longest stitch, { $length } all round. The seam follows { $rest } further in and hides this row.
    .check = { $folds ->
        [gathers] The gathers lie evenly, and no fold is bunched at the marks.
       *[flat] The strip lies without a tuck.
     }
    .remedy = Unpick that hand's width, share it out again and sew it again.
catch-in-baste-flat = Sew { $row } from the edge with the longest stitch, { $length } from end to end. The seam follows { $rest } further in and hides this row.
    .check = { catch-in-baste-ring.check }
    .remedy = { catch-in-baste-ring.remedy }
