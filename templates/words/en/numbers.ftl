### What a number of a booklet is, in the table that has it for each size, by the name that its message has for the value.
### $name (text): that name. $kind (text): what sort of number it is.

number-is = { $name ->
    [above] how far above
    [across] straight across
    [after] from the one before
    [air-far] distance of the warm air
    [all-loops] how many loops
    [along] along the arc
    [apart] how far apart
    [around] all the way round
    [at] from the corner to a mark
    [back] behind
    [bar] length of the bar
    [bar-in] the bar, from its edge
    [basting] basting stitch
    [before] from the front
    [begins] where it begins
    [behind] share behind
    [below] how far below
    [beneath] the end beneath
    [beside] how far beside
    [beyond] how far beyond
    [bobbin-thread] thread on the bobbins
    [bobbins] how many bobbins
    [bone-length] length of the boning
    [both-sides] both sides together
    [broad] wide end
    [button] width of the button
    [button-in] the button, from the edge
    [buttonhole] length of the buttonhole
    [by] how much longer
    [casing] the casing all round
    [catch] how much is caught
    [channel] width of the channel
    [channels] how many channels
    [clear] distance kept
    [clip-short] up to the stitches
    [clips] from cut to cut
    [close] beside the edge
    [cloth] { $kind ->
    [shorter] how much shorter
    [snip] depth of a snip
    [snips] from snip to snip
        [weight] weight of the cloth
       *[other] the cloth, flat
     }
    [cloth-part] flat cloth from mark to mark
    [copies] how many alike
    [cord-long] length of the cord
    [corner] from the stitches at the corner
    [count] how many
    [cover] past the stitch line
    [cross] the cross, from the end
    [cut] length to cut
    [cut-depth] depth to cut
    [deep] depth
    [deepest] deepest place
    [degrees] angle in degrees
    [depth] depth
    [diagonal] both diagonals
    [dots] dots in a row
    [down] how far down
    [drawn] { $kind ->
        [length] drawn in
       *[other] how many are drawn
     }
    [drawn-in] drawn in
    [ease] short in all
    [edge] from the edge
    [edge-off] tolerance of the edge
    [edge-stitch] from the fold
    [end] turned under at each end
    [ends] at the ends
    [every] from one to the next
    [fall] length down from the seam
    [far] to the far corner
    [farthest] the last centre, beyond the edge
    [fast] for the fixed end
    [fell] width of the fold
    [finish] to finish an end
    [first] the first
    [first-row] first row from the edge
    [first-turn] first turn
    [flat] laid flat
    [fold] to fold under
    [foot] at the foot
    [from-edge] from the edge
    [from-fold] from the fold
    [from-seam] from the seam
    [front] in front
    [gap] the gap
    [gap-end] where the gap ends
    [gap-from] where the gap begins
    [gap-to] where the gap ends
    [gives] length of the strip
    [gores] how many gores
    [grams] weight in grams
    [half] half of it
    [half-apart] from the end to the first
    [half-back] to both sides behind
    [half-fast] folded under at the end
    [half-finish] each fold of the end
    [half-front] to both sides in front
    [half-hem] each fold of the end
    [half-over] stretched, laid flat
    [half-shown] half of what shows
    [hangs] how far it hangs below
    [heading] the heading
    [hem] at the hem
    [high] height
    [hole] the hole
    [hook-in] the hook, from its edge
    [in-at-foot] in at the foot
    [inner] the inner arc
    [inside] from the edge, inside the line
    [intake] taken in by each
    [joins] how many joins
    [knot] the knot, from the edge
    [label-tape] tape for the label
    [lap] the lap
    [layer-deep] depth of a layer
    [layers-over] the layers, longer by
    [left] what is left
    [lefts] of each tape drawn up
    [leg] each side to the point
    [length] length along the edge
    [letters] height of the letters
    [lies] the edge as it is cut
    [line] the line, above the edge
    [lines] how many strips
    [lining-over] the lining, longer by
    [liquid] how much liquid
    [long] length
    [long-stitch] long stitch
    [longest] the longest line
    [loop] loop of elastic
    [loops] how many loops
    [lower] along the lower edge
    [many] how many of them
    [margin] from the edges
    [mark] to mark { $which }
    [marks] from the start to each mark
    [middle] from the end to the middle
    [more] { $kind ->
        [length] more by
       *[other] how many more
     }
    [narrow] narrow end
    [near] to the near corner
    [near-fold] beside the fold
    [needed] length that is sewn on
    [next] the next
    [now] the opening as it is now
    [number] which one
    [on-line] from mark to mark on the seam line
    [open] what is open
    [open-at-hem] open above the hem
    [opening] the opening
    [others] how many others
    [out] buttoned out to
    [outer] the outer arc
    [over] stretched to
    [overlap] the overlap
    [panels] how many panels
    [part] from mark to mark
    [patch-left] what is left of the patch
    [parts] how many parts
    [past] how far past
    [patch] side of the patch
    [per-run] parts in a run
    [pins] about how many pins
    [places] how many places
    [pleats] how many pleats
    [plies] how many plies
    [quarter] a quarter
    [radius] radius
    [ratio] cloth to edge
    [reach] to reach the button
    [rest] how far the seam follows
    [ribbon-length] length of the ribbon
    [rings] how many rings
    [roll] thickness of the roll
    [round] all round
    [round-top] round the top
    [row] the row, from the edge
    [rows] how many rows
    [run] from the side
    [run-out] where it ends
    [runs] how many runs
    [seam-stitch] stitch for seams
    [seam-width] width of the seam
    [second] second turn
    [second-row] second row from the edge
    [second-turn] second turn
    [seconds] how many seconds
    [segment] segment { $which }
    [sewn] length that is sewn
    [shift] how far the centre moves
    [short] { $kind ->
        [length] the gathered edge
       *[other] short stitch
     }
    [short-part] each part, gathered
    [shortest] the shortest line
    [shown] what shows of each
    [shows] what shows
    [side] at the sides
    [slant] along the slant
    [slit] the slit
    [slots] from buttonhole to buttonhole
    [space] space between
    [spacing] from pin to pin
    [spare] to try it on
    [stacked] how many in all
    [stay] the row that holds it
    [stitch] stitch
    [stitched] length that is sewn
    [stitches] how many stitches
    [stop] the stop, below the edge
    [stretch] the stretch left
    [tail] thread tail
    [taken] what is taken up
    [tape-length] length of the tape
    [tape-each] length of each tape
    [tapes] how many tapes
    [thick] thickness
    [times] how often
    [to-come] margin that follows
    [tie-long] length of the tie
    [to-hem] from the top edge to the hem
    [top] at the top
    [trial] strip for the trial
    [trial-short] the trial, drawn in
    [triangle] side of the triangle
    [trim] margin that is left
    [tucks] how many tucks
    [turn] the turn
    [turn-width] how much is turned in
    [twice] to the second line
    [under] turned under
    [understitch] beside the seam
    [united-states] at most in the United States
    [up] how far it is drawn up
    [upper] along the upper edge
    [waist] the waist
    [whole] the joined length
    [wide] width
    [width] width
    [zigzag-long] length of the zigzag
    [zigzag-wide] width of the zigzag
   *[other] { number-of-kind }
 }
# Where a number has no name of its own.
number-of-kind = { $kind ->
    [stitch] stitch length
    [count] how many
    [share] share
    [ratio] ratio
    [weight] weight
    [volume] volume
    [money] price
   *[length] length
 }
