### Cut a long strip on the bias from one square.
### $lines: how many widths of the strip lie side by side in the square.

bias-strip-title = Cut { PIECE($piece) } on the bias
bias-strip-aim = A square of { $side } gives { $gives } of strip { $width } wide, pieced at 45 degrees.
bias-strip-cut-across = Draw a line across the square for { PIECE($piece) } from corner to corner, { $diagonal } long, and cut along it.
    .check = Both halves are alike, each with a right angle.
    .remedy = Trim the square until its sides are equal, and cut again.
bias-strip-first-seam = Lay the halves right sides together so that two of their straight sides meet. Their points stand out { $seam-width } at both ends. Sew { $seam-width } from these sides, { $stitch }, and press the margins apart.
    .check = Opened out it is a slanting four-sided piece with its two long edges on the bias.
    .remedy = If it is a triangle, unpick and join two other straight sides.
bias-strip-lines = On the wrong side draw lines along the bias edge, { $width } apart: { $lines } strips. Cut off what is left beyond the last line.
    .check = Every strip is { $width } wide.
    .tolerance = { $off } more or less
    .remedy = Draw the line again from the edge.
bias-strip-tube = Bring the other two straight sides right sides together to a tube, moved on by one strip. The first line meets the edge.
bias-strip-second-seam = Pin line on line, { $seam-width } from the edge, and sew there, { $stitch }. Press the margins apart.
    .check = One strip stands out at each end.
    .remedy = If none stands out, the tube was closed level: unpick it and move it on by one line.
bias-strip-cut = Begin at the strip that stands out and cut along the line, round and round, to the end.
    .check = It is one strip, { $gives } long.
    .remedy = Where the shears left the line, cut on from the next one.
bias-strip-trim = Cut it to { $length }, both ends square.
