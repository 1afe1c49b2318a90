### Sew two ties and stitch them to the ends of a waistband.

tie-ends-title = Sew ties to { PIECE($band) }
    .number = { $tie-long }
tie-ends-aim = The waist closes by ties of { $tie-long }.

## Each tie

tie-ends-fold = Fold each tie in half along its length, right sides together, and { pin } it.
tie-ends-sew = Sew { $seam-width } from the edges, { $stitch }, along the tie and across one end, { $around }. Leave the other end open.
tie-ends-turn = Trim the corners, turn the tie right side out with a blunt stick and press it.
    .check = It is { $depth } wide.
    .tolerance = { $wide-off } more or less
    .remedy = Roll the seam out with your fingers and press again.
tie-ends-turn-under = Fold { $under } of the open end to the inside of the tie and press it.

## On the band

tie-ends-lay = Lay { $lap } of that end on the inside of an end of { PIECE($band) } and { pin } it.
    .check = The tie stands out { $tie-long } beyond the band.
    .tolerance = { $length-off } more or less
    .remedy = Shift it before you sew.
tie-ends-stitch = Sew round the lap in a rectangle of { $lap } by { $depth }, and across it from corner to corner.
    .check = Pull hard: nothing gives.
    .remedy = Sew over the rectangle once more.
