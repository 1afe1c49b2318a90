### Turn a seam margin to one side and topstitch it down.
### $onto: the piece that the margin is laid flat against.

# $seams: where the seams run, each said as `turn-seam-between`.
turn-seam-title = { COUNT($seams) ->
    [one] Topstitch the seam { $seams }
   *[other] Topstitch the seams { $seams }
 }
    .number = { $from-seam }
turn-seam-between = between { PIECE($pieces) }
turn-seam-aim = The margin is held and cannot scratch.

# $gathered: one of the two edges is gathered.
turn-seam-press = { $way ->
    [up] { $gathered ->
        [yes] Turn the margin up, flat against the wrong side of { PIECE($onto) }, and press it so. Press the margin alone: the iron flattens gathers.
       *[no] Turn the margin up, flat against the wrong side of { PIECE($onto) }, and press it so.
    }
   *[down] { $gathered ->
        [yes] Turn the margin down, flat against the wrong side of { PIECE($onto) }, and press it so. Press the margin alone: the iron flattens gathers.
       *[no] Turn the margin down, flat against the wrong side of { PIECE($onto) }, and press it so.
    }
 }
    .check = No fold is pressed in along the seam on the right side.
    .remedy = Pull the two pieces apart at the seam and press again.
turn-seam-sew-ring = With the right side up, sew { $from-seam } from the seam on { PIECE($onto) }, { $stitch }, { $length } all round, from a side seam on. Let the end overlap the start by three stitches. { turn-seam-feel }
    .check = { turn-seam-feel.check }
    .remedy = { turn-seam-feel.remedy }
turn-seam-sew-flat = With the right side up, sew { $from-seam } from the seam on { PIECE($onto) }, { $stitch }, { $length }, a few stitches back at both ends. { turn-seam-feel }
    .check = { turn-seam-feel.check }
    .remedy = { turn-seam-feel.remedy }
# Said only inside the two above.
turn-seam-feel = { $way ->
    [up] Feel that the margin lies up.
   *[down] Feel that the margin lies down.
 }
    .check = The margin is caught all along and no fold lies under the row.
    .remedy = Unpick the stretch where it slipped, turn the margin back and sew it again.
