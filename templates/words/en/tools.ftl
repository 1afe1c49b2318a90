### The list of tools; `.why` says what each is for.

## Machines

tool-machine = sewing machine with straight stitch
    .why = seams, gathering rows, topstitching
tool-zigzag = zigzag stitch
    .why = { $uses }
# Said only inside the message above.
tool-zigzag-neatening = neatening
tool-zigzag-elastic = joining elastic
tool-zigzag-bars = short bars
tool-overlocker = overlocker, threaded
    .why = neatening
tool-attachment = pleating attachment
    .why = gathering
tool-hand-needle = hand needle and thimble
    .why = sewing by hand
tool-iron = iron, ironing board
    .why = pressing seams and folds
tool-press-cloth = press cloth
    .why = between the iron and cloth that heat harms
tool-hemming-foot = hemming foot
    .why = rolling the hem
tool-fire-label = cotton tape, red pen that does not wash out
    .why = the label that warns of fire
# $size: the metric size and, in brackets, the older number.
tool-needle = machine needle { $size }
    .why = the lightest cloth of this garment

## Hand tools

tool-pinking-shears = pinking shears
    .why = neatening
tool-pins = pins, about { $number }
    .why = holding edges; count them out
tool-clips = clips, about { $number }
    .why = holding edges; count them out
# Where clips hold the edges, thread tails are wound round pins all the same.
tool-tail-pins = pins, about { $number }
    .why = holding thread tails; count them out
# Clips grip edges; a fold in the middle of the cloth is pinned.
tool-flat-pins = pins, about { $number }
    .why = holding folds that clips do not reach; count them out
tool-measuring = tape measure, fabric marker that washes out, scissors for cloth
    .why = measuring, marking, cutting
tool-ruler = long ruler, something with a square corner
    .why = straight lines and square ends
tool-tape = paper tape and paper tags
    .why = lines on the table to cut along, letters of the pieces
tool-weights = weights, such as full tins
    .why = holding the cloth still while you cut it
tool-seam-ripper = seam ripper
    .why = unpicking
tool-blunt-needle = blunt hand needle, thread in a bright colour
    .why = fastening thread ends, tagging side seams
tool-blunt-stick = blunt stick, such as a knitting needle
    .why = pushing corners out
tool-safety-pins = two safety pins
    .why = drawing in the elastic

## For starch

tool-brush = wide soft brush
    .why = starch
tool-spray = spray bottle or can
    .why = starch
tool-bowl = bowl or tub that holds the piece
    .why = starch
tool-pan = pan, long spoon, measuring jug
    .why = cooking starch
tool-sheet = old sheet
    .why = catching what drips
