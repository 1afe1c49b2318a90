### The first pages: the garment at a glance, the plan of the sittings, measuring, words of the craft; and how it is kept.

## At a glance

# The imprint: who designed the garment, which version of the guide it is, and on what terms it is handed on.
front-author = Design
front-version = Version
front-licence = Licence
front-size = Size
# $measures: those of the body that the guide is made to.
front-size-with = { $whose }: { $measures }
front-measure = { $name } { $value }
front-length = Length
front-length-hem = { $length }, round the hem { $hem }
front-cloth = Cloth
front-cloth-of = { $cloth } { $amount }
front-cost = Materials cost
front-cost-without = { $cost }, without { $materials }
front-time = Time
front-time-waits = { $time }, besides { $waits }
front-wait-wash = washing and drying before the cutting
front-wait-hang = hanging overnight before { $place }
front-wait-dry = { $overnight ->
    [yes] drying overnight at { $place }
   *[no] drying at { $place }
 }
front-weight = Weight
front-skill = Skill
front-skill-hand = you sew by hand
front-skill-straight = you sew a straight seam by machine
front-skill-zigzag = you sew a straight seam and a zigzag
front-skill-overlocker = you sew a straight seam and use an overlocker
# $can: one of those above. $place: the letter of the operation that gathers first.
front-skill-taught = { $can }; gathering is taught at { $place }
front-cutting = Cutting
# $waits: what takes hours in this sitting and is no work.
front-sitting-waits = besides { $waits }

## Measuring

front-how = { $name ->
    [height] from the crown of the head straight down to the floor, without shoes
    [neck-girth] round the base of the neck
    [chest-girth] level round the fullest part of the chest, under the arms
    [waist-girth] level round, midway between the lowest rib and the top of the hip bone
    [waist-height] from there straight down to the floor, without shoes
    [hip-girth] level round the fullest part of the seat
    [hip-height] from there straight down to the floor, without shoes
    [hip-depth] from the waist down to the fullest part of the seat
   *[knee-height] from the middle of the kneecap straight down to the floor
 }
front-floor = floor, no shoes
front-drawn = { $number }: { $how }
front-measuring = Where the tape lies.
front-measuring-alt = A person standing, seen from the front, with a numbered line for each measure. { $lines }.

## Words of the craft

term-right-side = right side, wrong side
    .means = the face of the cloth that shows when the garment is worn, and the other one
term-margin = margin
    .means = the cloth between a seam and its cut edge
term-selvedge = selvedge
    .means = the firm edge along both sides of the cloth as it is sold
term-sew-back = sew back
    .means = two or three stitches backwards over the last ones, so that a row does not open
term-gore = gore
    .means = a panel of a skirt that is wider at the hem than at the top
term-baste = baste
    .means = sew long stitches that hold for a time and are taken out again
term-lap = lap
    .means = a fold of cloth that lies over something and hides it
term-interfacing = interfacing
    .means = a stiff cloth with glue on one side, pressed on behind to keep a piece firm
term-bustle = bustle
    .means = the folds behind into which a train is drawn up
term-gather = gather
    .means = draw a long edge up on threads until it is as long as a short one
term-run = run
    .means = a row of long stitches from one mark to the next
term-bobbin-thread = bobbin thread
    .means = the lower thread of a row; it is the one that you pull
term-ease = ease in
    .means = share a little extra length out between pins, so that no fold is caught
# So far as a hand is wide: how much of a row is unpicked, and how far a tape goes on. $hand: its width.
term-hand = hand's width
    .means = about { $hand }
term-neaten = neaten
    .means = sew round a cut edge, so that it can't fray or scratch
term-topstitch = topstitch
    .means = a row on the right side that holds down what lies under it
term-raw-edge = raw edge
    .means = an edge as it was cut
term-casing = casing
    .means = a channel of cloth for elastic or a cord
term-strip = strip
    .means = a long straight piece, cut whole or in segments that are joined
term-offcut = offcut
    .means = what is left of a cloth when the pieces are cut; stitches and heat are tried on it
term-bodkin = bodkin
    .means = a blunt flat needle that is pushed through a channel; a closed safety pin does as well
term-ring = ring
    .means = a piece whose two ends are sewn together
term-layer = layer
    .means = one of several pieces that lie on each other and are sewn as one

## How it is kept

# $fibres: those of its cloths.
after-wash = It is of { $fibres }: wash it as the most delicate of these asks. Where no label tells, by hand in lukewarm water, without wringing, and hang it up to dry.
    .head = Washing
# $places: the letters of the operations that stiffen it.
after-starch = Starch washes out. Stiffen it again after each wash, as at { $places }.
    .head = Starching again
after-store = Hang it up clean and dry, by the waist, away from heaters and flames. Do not press it flat: what lies folded for long keeps the folds.
    .head = Storing
after-label = { $fire ->
    [yes] Write on a second tape, and sew it by hand beside the one that warns of fire: whose it is or the size, the year, { $fibres }.
   *[no] Write on a tape, and sew it by hand inside the waist: whose it is or the size, the year, { $fibres }.
 }
    .head = Label
