### What to buy: amounts, descriptions, and where each material goes.

## Amounts

buy-volume = { $amount } ml
# A powder, to be weighed.
buy-mass = { $amount } g
# $length: of thread on one reel.
buy-reels = { $reels ->
    [one] { $reels } reel of { $length }
   *[other] { $reels } reels of { $length }
 }
# What is sewn on singly: zips, eyelets, buttons.
buy-pieces = { $pieces ->
    [one] { $pieces } piece
   *[other] { $pieces } pieces
 }

## Descriptions: what is said of a material behind its name

buy-long = { $length } long
buy-wide = { $width } wide
# Of thread whose colour the spec does not say.
buy-colour-as = in the colour of the { $cloth }
buy-stretches = stretches by { $stretch } or more
# $class: what the fibres take; any where no class of dye is for all of them. $fibres (a list)
buy-dye = { $class ->
    [acid] acid dye, for { $fibres }
    [disperse] disperse dye, for { $fibres }
    [reactive] reactive dye, for { $fibres }
    [direct] direct dye, for { $fibres }
   *[any] dye for { $fibres }
 }

# A fastener that the spec does not list. $kind
fastener = { $kind ->
    [hook-and-bar] hook and bar
    [hook-and-eye] hook and eye
    [snap] snap fastener
    [flat-button] flat button
   *[button] button
 }

## Where it goes

# Thread.
use-seams = all seams
# Said behind the use of thread.
use-reels-at-once = { $sewing ->
    [0] the overlocker takes { $reels } reels at once
   *[other] the overlocker takes { $reels } reels at once, and the sewing machine one beside them
 }
use-bobbins = { $bobbins ->
    [one] wind { $bobbins } bobbin first
   *[other] wind { $bobbins } bobbins first
 }
use-trim = trim on { PIECE($piece) }
use-binding = binding of { PIECE($piece) }
use-ribbon = ribbon in { PIECE($piece) }
use-zip = the opening
use-fastening = the waist
use-opening = the opening below the waist
use-elastic-end = the end of the elastic
use-interfacing = interfacing of { PIECE($piece) }
use-petersham = the waist
use-sewn-elastic = the edge that it draws in
use-hang-loops = hang loops
use-bustle-tape = bustle tapes
use-bustle-rings = bustle rings
use-bustle-cord = bustle cords
use-channel = channel on { PIECE($piece) }
use-hoop = hoop in { PIECE($piece) }
use-shirring = shirring of { PIECE($piece) }
use-elastic = elastic in { PIECE($piece) }
use-cord = cord in { PIECE($piece) }
use-piping = piping of { PIECE($piece) }
use-holes = holes for the cord in { PIECE($piece) }
use-dye = dyeing { PIECE($piece) }
use-dye-trim = dyeing the { $trim }
use-starch = stiffening { PIECE($piece) }
use-agent = treating { PIECE($piece) } against fire
# A way of working that the maker describes herself, by its name.
use-own = { $name }

## The table of materials for programs

bom-width = width { $amount }
bom-length = length { $amount }
bom-weight = weight { $amount }
bom-stretch = stretch { $amount }
bom-reel = reel { $amount }
# The English cotton count of a thread.
bom-count = Ne { $amount }
# The headings of its columns.
bom-name = name
bom-code = code
bom-consumption = consumption per piece
bom-supplier = supplier
bom-cost = cost
bom-specification = specification
bom-colour = colour
bom-size = size
bom-placement = placement
# Zips and fastenings are counted.
bom-pieces = pieces
