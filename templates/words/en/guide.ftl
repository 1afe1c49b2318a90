### What the guide says round the work: at the machine before a step, where to stop, and the look at the end.

# The heading of steps that the maker gives no heading of her own.
part = The work
# Over the first work behind a letter that is left out.
letters-skip = { $many ->
    [one] No { $letters }? Letters are the same for every size. One that is missing stands for work that this guide does not need.
   *[other] No { $letters }? Letters are the same for every size. Those that are missing stand for work that this guide does not need.
 }
letters-skip-run = { $first } to { $last }

## Before a step

# $bobbins: how many full ones all rows take; 0 where nobody knows what one holds. $bobbin-thread: the thread on all of them together.
machine-wind = { $bobbins ->
    [0] wind two bobbins: all rows take about { $bobbin-thread } of lower thread, so wind an empty one again.
    [one] wind { $bobbins } bobbin: all rows take about { $bobbin-thread } of lower thread.
   *[other] wind { $bobbins } bobbins: all rows take about { $bobbin-thread } of lower thread.
 }
machine-trial = Put in the new needle and { machine-wind } For a trial sew { $trial } on a doubled offcut, { $stitch }.
    .check = The stitches look alike on both faces, and the cloth lies flat.
    .remedy = Thread upper and lower thread anew. Loops beneath: set the upper tension a number higher; loops on top: a number lower.
overlocker-trial = For a trial overlock { $trial } along the edge of a doubled offcut.
    .check = The loops of both faces meet on the cut edge, and the edge lies flat.
    .remedy = Edge wavy: set the differential feed a number higher; drawn in: a number lower. Loops that stand off the edge: tighten both loopers by a number.
machine-straight = Set the machine back from zigzag to straight, with a { $stitch }.
machine-zip-open = Open the zip a hand's width, so that the slider lies below the rows to come.
marks-on-net = Chalk falls through { $net }. Where an edge is marked, knot a bright thread twice round a strand { $clear } in from the cut edge, clear of seam and overlocker. Cut it out before a fold hides it, or at the end.
lines-on-net = No line shows on { $net }. Where one is to be drawn, lay paper tape along a ruler there, or a thread held by pins, and take it off when the line has served.
# $flat: of an offcut; it is drawn up as much as the work will be.
practise-gathering = Practise on { $flat } of offcut: write down the upper tension for seams, set it one number lower and the stitch at its longest. Sew rows { $first-row } and { $second-row } from the edge; pull both lower threads until it measures { $short }.
    .check = The threads slide without breaking, and the folds lie evenly.
    .remedy = If a thread breaks, loosen the upper tension a little, or sew shorter runs.
# $left: thread left on the old bobbin, of the length on a full one.
bobbin-fresh = Start with a fresh bobbin.
    .check = About { $left } of the { $full } is left on the old one: too little for the next row.
bobbin-fresh-within = { $sewn ->
    [one] Lay a full bobbin ready: it goes in once the first of the { $rows } rows to come is sewn.
   *[other] Lay a full bobbin ready: it goes in once { $sewn } of the { $rows } rows to come are sewn.
 }
    .check = About { $left } of the { $full } will then be left on the old one: too little for the next row.
bobbin-spare = { $spare ->
    [one] Wind { $spare } spare bobbin: each of these long rows takes more thread than one holds.
   *[other] Wind { $spare } spare bobbins: each of these long rows takes more thread than one holds.
 }

## Behind a step

stop = A good place to stop and put the work away.
stop-sitting = End of sitting { $sitting }. Put the work away here, pins counted.

## The last look

last-look = Last look
last-look-title = Look the garment over
last-look-aim = It is safe to put on.
# Where no band or casing has taken up the label that warns of fire.
last-look-label = Lay the label on the inside, near the top edge and beside a seam, the lettering in sight. Fold both its ends under and sew them down by hand, to a seam margin or to the inner layer alone.
    .check = It is held at both ends, and no stitch of it shows on the right side.
last-look-pins = Count the pins and needles.
    .check = As many are in the box as when you began.
    .remedy = Feel along every seam and the waist until the last one is found. Nobody puts the garment on before.
last-look-threads = Cut off all loose threads and take out the bright ones in the cloth.
# The bright ones came out before the cloth was starched.
last-look-loose-threads = Cut off all loose threads.
last-look-marks = Take out every mark: brush off the chalk, and damp away the marker as its maker says.
    .check = No mark shows on the right side.
    .remedy = Wash it out before you press there: heat sets some markers for good.
last-look-length = Hang it up and measure from the top edge to the hem: { $to-hem }.
    .check = It is the same in front, behind and at the sides.
    .tolerance = { $off } more or less
    .remedy = If one side hangs lower, look there for a seam that was sewn narrower, and sew it again.
# The hem is cut higher in front than behind.
last-look-dips = { $train ->
    [yes] Let the train down. Hang the garment up and measure from the top edge to the hem: { $front } in front, { $side } along both side seams, { $back } behind.
   *[no] Hang it up and measure from the top edge to the hem: { $front } in front, { $side } along both side seams, { $back } behind.
 }
    .check = Left and right are alike, and the hem falls evenly towards the back.
    .tolerance = { $off } more or less
    .remedy = Where left and right differ, look there for a seam that was sewn narrower, and sew it again.
# The waist was levelled: the garment is longer at some places than at others.
last-look-lengths = Hang it up and measure from the top edge to the hem: { $front } in front, { $side } at the sides, { $back } behind.
    .check = All three are right.
    .tolerance = { $off } more or less
    .remedy = Where it is longer, unpick the waist there and take the top edge up.
last-look-height = Ask the wearer to stand straight, without shoes. Measure from the floor up to the hem: { $above }.
    .check = It is the same in front, behind and at the sides.
    .tolerance = { $off } more or less
    .remedy = Where the hem hangs lower, take the top edge up there, and never trim the hem.
last-look-edges = Turn it inside out and look along every edge.
    .check = No edge frays, no layer is caught where it should not be.
    .remedy = Neaten or sew again what you find.
# Tapes draw up a train.
last-look-drawn-up = Draw the train up again, each cord knotted at its mark. Put it on with the shoes that go with it. Walk a few steps.
    .check = The hem clears the floor all round.
    .remedy = Take it off, draw every cord a little more, each by the same, and mark the place on each cord.
