### Sew the gap of a casing shut.

close-gap-title = Close the gap
    .number = { $gap }
close-gap-aim = The casing is closed all round.

# The row of a band shows on the right side, that of a folded casing on the wrong side.
close-gap-sew = { $band ->
    [yes] With the right side up, pull the casing flat at the gap alone. Sew the { $gap } shut, { $stitch }, in line with the first row and { $past } over it at both ends.
   *[no] With the inside up, pull the casing flat at the gap alone. Sew the { $gap } shut, { $stitch }, in line with the first row and { $past } over it at both ends.
 }
    .check = The row is unbroken and the elastic is not caught: it slides under your finger.
    .remedy = If the elastic is caught, unpick the row and sew it again nearer to the fold.
# Several rows, each with its gap.
close-gap-sew-rows = { $band ->
    [yes] With the right side up, sew the gaps of the { $rows } rows shut, the one next to the fold first. Pull the casing flat at the gap alone: { $gap } each, { $stitch }, in line with its row and { $past } over it at both ends.
   *[no] With the inside up, sew the gaps of the { $rows } rows shut, the one next to the fold first. Pull the casing flat at the gap alone: { $gap } each, { $stitch }, in line with its row and { $past } over it at both ends.
 }
    .check = Every row is unbroken, and each elastic slides under your finger.
    .remedy = If an elastic is caught, unpick that row and sew it again clear of it.
# The opening lies in the upright seam of a band, across the channel.
close-gap-seam = Draw the two folds of the opening together by hand with small stitches, { $gap } in all, and fasten the thread inside.
    .check = The seam is whole again, and the elastic slides under your finger.
    .remedy = If the elastic is caught, take the stitches out and sew through the cloth alone.

## The gap in a seam

close-gap-aim-seam = The seam of { PIECE($pieces) } is sewn all along.
close-gap-sew-seam = Turn { PIECE($pieces) } inside out and lay the two margins level at the gap. Sew the { $gap } shut, { $seam-width } from the edges, { $stitch }, in line with the seam and { $past } over it at both ends.
    .check = Seen from the right side the seam is unbroken.
    .remedy = Where it steps, unpick that stretch and sew it again on the line.
