### Stitch rows along a casing, for several rows of elastic.
### $piece: the band, or the piece whose edge was folded down; $band: which of the two.

divide-casing-title = Divide the casing into { $channels } channels
    .number = { $channel }
divide-casing-aim = { $channels } channels lie below each other, each { $channel } wide, for a row of elastic each.

divide-casing-mark = { $band ->
    [yes] { $rows ->
        [one] Draw a line round the casing on the right side, { $channel } below the fold.
       *[other] Draw { $rows } lines round the casing on the right side: the first { $channel } below the fold, each next one { $channel } further down.
     }
   *[no] { $rows ->
        [one] Draw a line round the casing on the inside, { $channel } below the fold.
       *[other] Draw { $rows } lines round the casing on the inside: the first { $channel } below the fold, each next one { $channel } further down.
     }
 }
    .check = From each line to the next, and from the last to the row of the casing, it is { $channel }.
    .tolerance = { $off } more or less
    .remedy = Wipe off the line that lies wrong and draw it again.
# The gap lies in the row of the casing, and each new row leaves the same stretch open.
divide-casing-sew-gap = Sew along each line from one end of the gap round to the other, { $sewn }, { $stitch }, so that a gap of { $gap } stays open right above the first. Sew a few stitches back at both ends.
    .check = An offcut of the elastic slides through each channel, and the gaps lie above each other.
    .remedy = Unpick the row where the offcut sticks, and sew it again on its line.
# The gap is a slit across the channel, in a seam: the rows run over it.
divide-casing-sew = Sew along each line all round, { $sewn }, { $stitch }, across the opened seam too. Let the end overlap the start by three stitches.
    .check = An offcut of the elastic slides through each channel, and each has its own opening in the seam.
    .remedy = Unpick the row where the offcut sticks, and sew it again on its line.
