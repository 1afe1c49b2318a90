### Fold a bias strip round a cord and lay it along an edge, so that its seam shows a ridge: piping.
### $strip: the piece that covers the cord; $in: the edge on which it is laid.

piping-title = Pipe { EDGE($in) }
    .number = { $thick }
piping-aim = The seam that follows shows a ridge { $thick } thick, from { $length } of { $cord }.

piping-fold = Fold { PIECE($strip) } in half along its length, wrong sides together, and lay the { $cord } in the fold. { pin-start } its cut edges level.
    .check = The cord lies in the fold all along, { $inside } inside the cut edges.
    .remedy = Push it into the fold with a fingernail and { pin } again.
piping-cover-ring = Set the longest stitch and the zip foot. Sew close beside the cord, { $length } all round. Cut the ends of the cord so that they meet and do not lap.
    .check = The cord cannot slip about, and the row does not go through it.
    .remedy = Unpick where the row struck the cord and sew it again beside it.
piping-cover-flat = Set the longest stitch and the zip foot. Sew close beside the cord, { $length }. Cut the ends of the cord { $seam-width } short of both ends, so that the side seam does not meet it.
    .check = The cord cannot slip about, and the row does not go through it.
    .remedy = Unpick where the row struck the cord and sew it again beside it.
piping-lay = Lay { PIECE($strip) } on the right side of { PIECE($piece) }, the cord inwards, all cut edges level with { EDGE($in) }, and { pin } it without pulling it. { $ring ->
    [yes] Side seam meets side seam.
   *[no] Begin at one end.
 }
    .check = It lies flat and does not draw the edge together.
    .remedy = Unpin it, let the strip lie slack and { pin } again.
piping-baste-ring = With the zip foot, sew on the first row, { $length } all round.
    .check = The cord stands along the edge in an even line.
    .remedy = Unpick where it wavers and sew that stretch again.
piping-baste-flat = With the zip foot, sew on the first row, { $length } from end to end.
    .check = { piping-baste-ring.check }
    .remedy = { piping-baste-ring.remedy }
piping-next = For the seam that follows leave the zip foot on, let this row look up at you, and sew a thread's width nearer to the cord. Then set foot and stitch back.
