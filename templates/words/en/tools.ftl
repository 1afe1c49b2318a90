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
tool-zigzag-buttonhole = the buttonhole
tool-zigzag-own = where a step says so
tool-overlocker = overlocker, threaded
    .why = neatening
tool-attachment = pleating attachment
    .why = gathering
tool-hand-needle = hand needle and thimble
    .why = sewing by hand
tool-iron = iron, ironing board
    .why = pressing seams and folds
tool-press-cloth = two press cloths: clean, thin cotton
    .why = between the iron and cloth that heat harms; one stays dry
tool-zip-foot = zip foot
    .why = sewing beside the teeth of a zip
tool-hemming-foot = hemming foot
    .why = rolling the hem
tool-fire-label = cotton tape, red pen that does not wash out
    .why = the label that warns of fire
tool-label = cotton tape, pen that does not wash out
    .why = the label
# $size: the metric size and, in brackets, the older number.
tool-needle = machine needle { $size }, new
    .why = getting through the heaviest cloth and the thickest seam

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
tool-tape-measure = tape measure
    .why = measuring
tool-markers = tailor's chalk, fabric marker that washes out
    .why = marking inside the seam allowance; on net, which chalk falls through, the marker, or a loop of bright thread; try both on an offcut and wash them out
tool-shears = shears for cloth, small scissors
    .why = cutting cloth, cutting threads
tool-ruler = long ruler, something with a square corner
    .why = straight lines and square ends
tool-tape = paper tape, paper tags, pen and paper
    .why = lines on the table to cut along, tags of the pieces, numbers to write down
tool-weights = weights, such as full tins
    .why = holding the cloth still while you cut it
tool-seam-ripper = seam ripper
    .why = unpicking
tool-blunt-needle = blunt hand needle, thread in a bright colour
    .why = fastening thread ends, tagging side seams
tool-blunt-stick = blunt stick, such as a knitting needle
    .why = pushing corners out
tool-safety-pins = two safety pins
    .why = drawing in the elastic, holding its lap
tool-safety-pin = safety pin or bodkin
    .why = drawing in the cord
tool-small-safety-pins = small safety pins, one for each bustle tape
    .why = holding the ends of the cords
tool-bodkin = bodkin
    .why = threading through a channel or lace
tool-awl = awl, cork
    .why = piercing holes
tool-eyelet-tool = setting tool of the eyelets
    .why = closing eyelet and washer
tool-glue = textile glue
    .why = cut ends that must not fray
tool-large-paper = large sheet of paper
    .why = the centre of an arc beside the cloth

## For boning

tool-eye-protection = eye protection
    .why = cutting boning
tool-bone-cutters = strong cutters that suit the boning
    .why = cutting boning
tool-bone-caps = caps or strong tape for the ends of the boning
    .why = ends that can't work through

## For starch

tool-brush = wide soft brush, bowl
    .why = putting on starch
tool-spray = spray bottle or can
    .why = putting on starch
tool-bowl = bowl or tub that holds the piece
    .why = putting on starch
tool-pan = pan, long spoon
    .why = cooking starch
tool-measuring-jug = measuring jug
    .why = measuring liquids
tool-scale = scale that shows tenths of a gram
    .why = weighing dye
tool-dye-pan = pan, cup, spoon and tongs kept for dye, never for food
    .why = dyeing
tool-gloves = gloves and a dust mask
    .why = dye powder and the hot bath
tool-sheet = old sheet, dry cloth
    .why = catching and dabbing up what drips
tool-hair-dryer = hair dryer held in the hand
    .why = warm air between the layers
tool-form = dress form, or a basket and a stand
    .why = letting the garment dry in its shape
tool-board = stiff board
    .why = drying the trim without creases
# Whatever is made is hung up and measured at the end.
tool-hanger = hanger with clips
    .why = hanging up the garment
