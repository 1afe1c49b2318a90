### What every technique says alike. EDGE, PIECE and lengths ask these messages for their words.

## Pieces and edges

# $label (text): the maker's own word for the piece, such as "flounce". $mark: its number on the cutting plan.
# $form: bare where no sentence is built round it, as in a table.
piece = { $form ->
    [bare] { $label }
   *[full] the { $label }
 }
piece-alone = { PIECE($piece, form: "bare") }
# $pieces (text): one piece or a list of them, with articles. $count: how many.
edge = { $count ->
    [one] { $side ->
        [top] the top edge of { $pieces }
        [bottom] the bottom edge of { $pieces }
        [start] the start edge of { $pieces }
       *[end] the end edge of { $pieces }
    }
   *[other] { $side ->
        [top] the top edges of { $pieces }
        [bottom] the bottom edges of { $pieces }
        [start] the start edges of { $pieces }
       *[end] the end edges of { $pieces }
    }
 }
# Layers that are worked as one edge, by the name that the maker gave them, such as "skirt top"; in a guide in another
# language than the maker's ($named is no) by their pieces.
stack = { $named ->
    [yes] { $form ->
        [bare] { $name }
       *[full] the { $name }
    }
   *[no] { $form ->
        [bare] stacked edge of { $pieces }
       *[full] the stacked edge of { $pieces }
    }
 }
stack-layers-of = { $named ->
    [yes] { $form ->
        [bare] layers of the { $name }
       *[full] the layers of the { $name }
    }
   *[no] { $form ->
        [bare] layers of { $pieces }
       *[full] the layers of { $pieces }
    }
 }
side-seam = { $seam ->
    [bright] the side seam with the bright thread
   *[plain] the side seam
 }
# A seam in a maker's own sentence, for its place {seam}.
own-seam = the seam of { PIECE($pieces) }

# Numbers that follow each other: 5–8.
number-range = { $from }–{ $to }

## Numbers and units

unit = { $unit ->
    [mm] { $number } mm
    [cm] { $number } cm
    [m] { $number } m
    [yd] { $number } yd
    [ml] { $number } ml
    [l] { $number } l
   *[in] { $number } in
 }
stitch-inches = { $number } mm stitch ({ $per-inch } to the inch)
stitch = { $number } mm stitch
share = { $number } %
money = { $amount } { $currency }
# Several things behind each other, as in a table, and several statements.
row = { $before }, { $after }
clauses = { $before }; { $after }
then = { $before }, then { $after }

# How long something takes.
duration = { $hours ->
    [0] { $minutes } min
   *[other] { $minutes ->
        [0] { $hours } h
       *[other] { $hours } h { $minutes } min
    }
 }

## Work on like pieces

# Behind the head of an operation whose sentences are done on several pieces: $copies. $last: the letter of the last.
all-of-it = { $copies ->
    [2] { $runs ->
        [yes] Make both: a sentence with both, then the next; where it says so, several with one, then with the other.
       *[no] Make both: do each sentence with boxes a and b at one, then at the other, before you go on to the next.
    }
   *[other] { $runs ->
        [yes] Make all { $copies }: a sentence marked a to { $last } with all of them, then the next; where it says so, several with one, then with the next.
       *[no] Make all { $copies }: do each sentence marked a to { $last } with one after the other, before you go on to the next.
    }
 }
# The remedy of a sentence that is word for word that of an earlier one in the same operation.
remedy-again = As at { $sentence }.
# Behind the first of several sentences that are all done on one piece before the next piece.
run-of-sentences = { $copies ->
    [2] sentences { $first } to { $last } with one, then with the other
   *[other] sentences { $first } to { $last } with one, then with the next
 }
# Behind a step that is done at every join between the segments of a strip.
chain-joins = { $joins ->
    [one] { $joins } join
   *[other] { $joins } joins
 }

## What holds the edges

pin = { $hold ->
    [clips] clip
   *[pins] pin
 }
pin-start = { $hold ->
    [clips] Clip
   *[pins] Pin
 }

## Two edges that are sewn together

# Said only inside other messages: a piece that flares is narrower or wider at its cut edge than on its seam line.
marks-on-line = { $flared ->
    [yes] { " " }On the seam line that makes { $on-line }.
   *[no] { "" }
 }
# $marked: one of the two edges.
mark-parts-ring = { $parts ->
    [8] Mark { EDGE($marked) } in eighths on both faces, every { $part }, the first at { side-seam }.{ marks-on-line }
   *[4] Mark { EDGE($marked) } in quarters on both faces, every { $part }, the first at { side-seam }.{ marks-on-line }
 }
mark-parts-flat = { $parts ->
    [8] Mark { EDGE($marked) } in eighths on both faces, every { $part }.{ marks-on-line }
   *[4] Mark { EDGE($marked) } in quarters on both faces, every { $part }.{ marks-on-line }
 }
# Said only inside other messages: where both edges are matched first.
match-places = { $places ->
    [bright] the side seams, those with a bright thread, and the marks
    [some] the side seams, with the bright thread where there is one, and the marks
    [ends] both ends and the marks
   *[plain] the side seams and the marks
 }
# "12 pins", as many as one edge takes.
pins-needed = { $hold ->
    [clips] { $pins ->
        [one] { $pins } clip
       *[other] { $pins } clips
    }
   *[pins] { $pins ->
        [one] { $pins } pin
       *[other] { $pins } pins
    }
 }
# $on-top: the edge that lies on top at the machine; the pins are drawn out there.
match-and-pin = { $copies ->
    [one] Match { match-places }, and { pin } there first, from the side of { PIECE($on-top) }. Then { pin } every { $spacing } between: about { pins-needed } in all.
   *[other] Match { match-places }, and { pin } there first, from the side of { PIECE($on-top) }. Then { pin } every { $spacing } between: about { pins-needed } for each.
 }

## Ends that a seam closes to a ring

# $pieces: the tiers that the seam passes through; $tiers: whether there are several.
close-fold = { $tiers ->
    [yes] Fold { PIECE($pieces) } { faces-together } so that their ends meet, top to top, and { pin } them along { $length }. { tiers-meet }
   *[no] Fold { PIECE($pieces) } { faces-together } so that its two ends meet, top to top, and { pin } them along { $length }.
 }
    .check = It is not twisted: it lies flat as a band.
    .remedy = If it is twisted, take one end out and turn it over.
# Where a gore hangs.
gore-place = { $place ->
    [front] front
    [back] back
   *[side] side
 }
# Said only inside the message below: a gore with its number in the row.
close-row-gore = no. { $number } { gore-place }
# Gores with places of their own. $at-side: whether the seam lies at the side at every height.
close-row = Lay the { $copies } pieces of { PIECE($pieces) } side by side, right side up, narrow ends away from you, from the left: { $order }.
    .check = The last one is sewn to the first.
close-row-seam = { $at-side ->
    [yes] Chalk its number beside the name on each. The seam between no. { $after } and no. { $next } is the side seam at the left of the wearer.
   *[no] Chalk its number beside the name on each. The seam between no. { $after } and no. { $next } lies nearest to the left side of the wearer: all marks are measured from it.
 }
# Gores that meet with sides of unequal length.
close-unlike-by = the { $longer ->
    [front] front
    [back] back
   *[side] side
 } gore, { $by } beyond the { $shorter ->
    [front] front
    [back] back
   *[side] side
 } gore
close-unlike-trim = At the lower edge these stand out, for their sides slant more: { $unlike }. Trim each level with its neighbour, to nothing { $run } from the side.
    .check = All tops are level, and at the lower edge nothing stands out any more.
close-unlike-ease = Where sides slant more they are longer: { $unlike }. Pin tops and hems level first, and ease the rest in between.
    .check = Tops and hems are level, and no fold is pinned in.
# $copies panels become one ring.
close-panels = { $copies ->
    [2] { $tiers ->
        [yes] Lay both panels of { PIECE($pieces) } { faces-together }, top to top, and { pin } them along both side edges, { $length } each. { tiers-meet }
       *[no] Lay both pieces of { PIECE($pieces) } { faces-together }, top to top, and { pin } them along both side edges, { $length } each.
    }
   *[other] { $tiers ->
        [yes] Lay each panel of { PIECE($pieces) } on the next, { faces-together } and top to top, and the last on the first. { pin-start } the { $copies } pairs of sides, { $length } each. { tiers-meet }
       *[no] Lay each piece of { PIECE($pieces) } on the next, { faces-together } and top to top, and the last on the first. { pin-start } the { $copies } pairs of sides, { $length } each.
    }
 }
    .check = All top edges lie at the same end, and the ring is not twisted.
    .remedy = Take out the one that lies the wrong way, and turn it.
# Said only inside other messages.
faces-together = { $faces ->
    [wrong] wrong sides together
   *[right] right sides together
 }
tiers-meet = Bring the seams between the tiers exactly together, margins upwards, and { pin } there first.

## The machine

# In mm in every room, as machines are marked.
zigzag-set = Set the machine to zigzag, { $zigzag-wide } mm wide and { $zigzag-long } mm long.

## The label that warns of fire

# The words are those of the law, in the language of the country where the garment is worn.
fire-label-write = Write KEEP AWAY FROM FIRE in two lines on { $label-tape } of cotton tape, in red capitals { $letters } high or higher, with a pen that does not wash out. Leave the end that is sewn in free, as wide as a finger.

## Rows of long stitches that are pulled

rows-set-machine = Set the machine for gathering: the longest stitch, about { $long-stitch } mm, and the upper tension one number below that for seams, which stays written down.
# Said only inside other messages. $per-run: over how many of the marked parts a run goes.
rows-runs = { $in-runs ->
    [yes] { $per-run ->
        [one] Sew it in { $runs } runs, one from each mark to the next. Do not sew back, and leave { $tail } of thread hanging at both ends of each run.
       *[other] { $parts ->
            [8] Sew it in { $runs } runs over { $per-run } eighths each, from mark to mark. Do not sew back, and leave { $tail } of thread hanging at both ends of each run.
           *[4] Sew it in { $runs } runs over { $per-run } quarters each, from mark to mark. Do not sew back, and leave { $tail } of thread hanging at both ends of each run.
        }
    }
   *[no] Sew it in one run. Do not sew back, and leave { $tail } of thread hanging at both ends.
 }
rows-wind-tails = { $in-runs ->
    [yes] At one end of each run, put a pin across and wind the thread tails round it in a figure of eight.
   *[no] At one end of the row, put a pin across and wind the thread tails round it in a figure of eight.
 }
rows-set-back = Set the stitch back to { $seam-stitch } mm, and the upper tension to the number that you wrote down.
# The rows are seen: their tails go to the wrong side.
rows-tails-under = { $in-runs ->
    [yes] Take out the pins that hold the thread tails. At both ends of each run draw the upper threads to the wrong side, knot each to its lower one, and cut the tails to { $knot }.
   *[no] Take out the pins that hold the thread tails. At both ends draw the upper threads to the wrong side, knot each to its lower one, and cut the tails to { $knot }.
 }

## Thread tails, once pins hold the edge

tails-off-machine = { $in-runs ->
    [yes] Take out the pins that hold the thread tails. At both ends of each run knot every upper thread to its lower one, and cut the tails to { $knot }.
   *[no] Take out the pins that hold the thread tails. At both ends of each row knot every upper thread to its lower one, and cut the tails to { $knot }.
 }
tails-off-hand = { $in-runs ->
    [yes] Take out the pins that hold the thread tails. At both ends of each run knot the tails together, and cut the tails to { $knot }.
   *[no] Take out the pins that hold the thread tails. At both ends of the rows knot the tails together, and cut the tails to { $knot }.
 }

## Cloth cut in a ring

# $fall: from the upper edge of the ring, as it hangs, to its raw lower edge.
ring-drop-worn = Hang the garment up by its waist overnight: cloth cut in a ring drops. Measure { $fall } down from the upper seam of { PIECE($ring-piece) } all round, and cut off what hangs lower.
    .check = { EDGE($ring-edge, at: "start") } hangs level.
# It is not sewn to anything yet.
ring-drop-alone = Hang { PIECE($ring-piece) } up by its upper edge overnight: cloth cut in a ring drops. Measure { $fall } down from that edge all round, and cut off what hangs lower.
    .check = { ring-drop-worn.check }

## The iron

# $own (text): the maker's word for a fibre that has none here.
fibre = { $fibre ->
    [cotton] cotton
    [linen] linen
    [wool] wool
    [silk] silk
    [polyester] polyester
    [viscose] viscose
    [nylon] nylon
    [acetate] acetate
    [own] { $own }
   *[unknown] an unknown fibre
 }
# Said only inside the messages below. $supply: what nobody told the fibre of.
iron-unknown = the { $supply }, whose fibre is not known
# The heat is that of a trim, a zip or another cloth, and not of the cloth that is pressed.
iron-fibre-of = the { $fibre } of the { $supply }, which takes the least heat here
# Dots of care labels: ISO 3758.
iron-set-three-dots = Set the iron for { $fibre }: three dots, 200 °C, with steam. Try it on an offcut first.
iron-set-two-dots = Set the iron for { $fibre }: two dots, 150 °C, through a press cloth. Try it on an offcut first.
iron-set-one-dot = Set the iron for { $fibre }: one dot, 110 °C, no steam, through a dry press cloth. Try it on an offcut first.

## The bright thread, by which one of several upright seams is told from the others

# Said only inside other messages: the seam that an opening or the bright thread is in.
seam-named = { $which ->
    [numbered] the seam between no. { $after } and no. { $next }
    [any] one of the seams
   *[only] the seam
 }
tag-seam = { $opened ->
    [yes] On the right side tie a bright thread into the seam with the opening, below it, { $down } from the top edge: all marks are measured from this side seam.
   *[no] { $which ->
        [numbered] On the right side tie a bright thread into { seam-named }, { $down } below its top end: all marks are measured from this side seam.
        [any] On the right side tie a bright thread into one of these side seams, { $down } below the top: all marks are measured from it.
       *[only] On the right side tie a bright thread into this side seam, { $down } below the top: all marks are measured from it.
    }
 }
    .check = { $low ->
        [yes] It lies where the seam is sewn, its knot on the right side.
       *[no] It lies nearer to the top edge than to the bottom edge, its knot on the right side: there it can be drawn out later.
     }

## A gap that is unpicked in an upright seam

open-seam-press = Press open the upright seam that closed { PIECE($band) } to a ring.
# $opened: between the two rows of a channel, or between the top of the casing and its row.
open-seam = { $opened ->
    [rows] Choose the half of { PIECE($band) } that will lie inside and pin a tag to it. In that half open the upright seam that closed the ring between the two rows with a seam ripper, and nowhere else.
   *[row] In the half of the casing that lies inside, open the upright seam of { PIECE($band) } between the fold and the row with a seam ripper, { $channel }, and nowhere else.
 }
    .check = A safety pin goes in and finds its way along the channel. The seam of the outer half is whole.
    .remedy = If more has come open, sew it shut by hand up to the rows.
open-seam-bars = Sew three stitches by hand across the seam at each end of the opening, close beside the rows.
    .check = A pull does not open it any further.

## The holes for the ends of a cord

# Said only inside other messages.
cord-holes = { $kind ->
    [buttonholes] buttonholes
    [worked-eyelets] eyelets
   *[metal-eyelets] eyelets
 }
cord-hole = { $kind ->
    [buttonholes] buttonhole
    [worked-eyelets] eyelet
   *[metal-eyelets] eyelet
 }

## A line across a piece, measured from one of its edges as it lies now

# Said only inside other messages.
line-place = { $line-from ->
    [top-seam] { $from-edge } below the seam at its top
    [top-cut] { $from-edge } below its cut top edge
    [bottom-seam] { $from-edge } above the seam at its bottom
    [bottom-cut] { $from-edge } above its cut bottom edge
   *[bottom] { $from-edge } above its bottom edge
 }
line-across = Draw a line on the right side of { PIECE($on) }, { line-place }.
    .check = Measured at every hand's width, the distance is { $from-edge }.
    .tolerance = { $level-off } more or less
    .remedy = Rub out what strays and draw it again.
