### Sew a zip into the opening of a seam.
### $way: centred, lapped or invisible. $from-edge: how long the opening is from the edge as it lies now; $opening: when finished.

zip-title = Sew a zip into { PIECE($pieces) }
    .number = { $opening }
zip-aim = { $way ->
    [centred] The opening of { $opening } closes with the zip ({ $zip }) in the middle.
    [lapped] The opening of { $opening } closes with the zip ({ $zip }) under a lap of { $lap }.
   *[invisible] The opening of { $opening } closes with the zip ({ $zip }) and looks like the seam.
 }
zip-shorten = Close the zip. { $opening } below its upper end sew a bar by hand, ten tight stitches over both rows of teeth, and cut the zip off { $below } below the bar.

## Prepare

zip-baste = Baste the opening: sew it shut for the time being on the seam line, { $margin } from the edges, { $from-edge } down from the top, with stitches of { $basting } mm and without sewing back.
zip-press-open = Press both margins apart, along the opening and a hand's width below it.
# The opening may lie at the side or behind.
zip-choose = Decide which side lies beneath: at a left side that is the back, at the middle of the back the right half.
# Said only inside another message: which gore that is, where they are numbered.
zip-number = { $numbered ->
    [yes] { " " }(no. { $next })
   *[no] { "" }
 }
zip-fold-out = { $place ->
    [side] With the wrong side up, turn the margin on the side of the back{ zip-number } over the row of long stitches, towards the front. Fold it back on itself so that its fold stands { $near } beyond the row, and press it.
    [back] With the wrong side up, turn the margin of the right half over the row of long stitches, towards the left half. Fold it back on itself so that its fold stands { $near } beyond the row, and press it.
   *[either] With the wrong side up, turn the margin of the side beneath over the row of long stitches, towards the other. Fold it back on itself so that its fold stands { $near } beyond the row, and press it.
 }
    .check = The fold stands { $near } beyond the row all along the opening, right side up, and runs out below it.
    .remedy = Unfold the margin and press it again.
zip-press-coils = Open the zip. With the tip of the iron press both tapes from the inside, so that the teeth stand up from them.
    .check = The needle can come down right beside the teeth.
    .remedy = Press again, without touching the teeth for long.

## Sew

zip-lay-centred = { $bare ->
    [yes] Turn the work inside up. Lay the closed zip face down on the margins, its teeth on the basting and its upper stop { $stop } below the cut edge. Pin both tapes.
   *[no] Turn the work inside up. Lay the closed zip face down on the margins, its teeth on the basting and its upper stop level with the top. Pin both tapes.
 }
# Said only inside other messages.
zip-below-stop = { $cut-off ->
    [yes] { $below } below the bar
   *[no] { $below } below the lower stop, which you feel through the cloth
 }
zip-turn-corner = Needle down, lift the foot, turn the work, lower the foot.
zip-foot-on = Fit the zip foot beside the needle.
    .check = Turn the wheel one whole turn by hand: the needle passes clear of the foot.
zip-foot-off = Take the zip foot off and fit the usual foot.
    .check = { zip-foot-on.check }
zip-sew-centred = Turn it right side up. With the zip foot sew { $beside } beside the seam from the top edge to { zip-below-stop }. { zip-turn-corner }
zip-sew-round = Sew across, turn again in the same way, and sew up the other side to the top edge, { $stitch }.
    .check = Both rows run { $beside } beside the seam, and the tape is caught all along inside.
    .tolerance = { $hair-off } more or less
    .remedy = Unpick that row and sew it again along a chalked line.
zip-stop-at = { $bare ->
    [yes] { $stop } below the cut edge
   *[no] level with the top
 }
zip-fold-work = { $place ->
    [side] Turn the work inside out. Fold it along the seam, the front on the back, right sides together.
    [back] Turn the work inside out. Fold it along the seam, the left half on the right half, right sides together.
   *[either] Turn the work inside out. Fold it along the seam, the side that laps over on the side beneath, right sides together.
 }
    .check = The fold of the margin stands out beyond the seam, right side up.
    .remedy = If it lies hidden, turn the work over.
zip-lay-beneath = Slide the closed zip, right side up, under the fold that stands out. Its teeth lie close beside the fold, its upper stop { zip-stop-at }. Pin it.
zip-sew-beneath = With the zip foot sew { $near-fold } from the fold, from the top edge to its end, { $from-edge }, { $stitch }. Only the fold and this tape lie under the needle; the rest of the work lies beyond the seam.
    .check = The slider passes the fold freely.
    .remedy = Unpick and lay the fold a little further from the teeth.
zip-lay-lap = Spread the work right side up, the zip closed. Pin the other tape under the lap.
zip-sew-lap = On the lap sew { $lap } beside the seam from the top edge to { zip-below-stop }. { zip-turn-corner } Sew across to the seam, { $stitch }.
    .check = The lap covers the teeth all along and its row is straight.
    .tolerance = { $hair-off } more or less
    .remedy = Unpick that row and sew it again along a chalked line.
zip-unpick = Take the basting out of the opening from the right side and pull out the threads.
zip-lay-invisible = { $bare ->
    [yes] Lay one half of the open zip face down on the right side of its margin, the teeth on the line of the seam, the upper stop { $stop } below the cut edge. Pin the tape to the margin.
   *[no] Lay one half of the open zip face down on the right side of its margin, the teeth on the line of the seam, the upper stop level with the top. Pin the tape to the margin.
 }
zip-lay-other = Lay the other half on the other margin the same way and pin it.
    .check = The zip is not twisted: closed, it lies flat on the inside.
    .remedy = Take one half off and turn it over.
zip-sew-invisible = Set the zip foot close beside the teeth. Sew each half to its margin from the top down to the end of the opening, { $from-edge }, { $stitch }, a few stitches back at both ends.
    .check = Closed, no tape is seen from the right side; about { $tail } of the zip hangs free below.
    .remedy = Sew again a thread nearer to the teeth.
zip-close-foot = Close the zip, lift its free end out of the way, and sew the seam up to the two rows with the zip foot.
    .check = No hole is left at the end of the opening.
    .remedy = Sew three stitches by hand across it.
zip-try = Open and close the zip three times.
    .check = It runs freely and lies flat.
    .remedy = Where it catches, a row lies too near the teeth: unpick it there and sew it further off.
