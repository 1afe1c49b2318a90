### What was proved before cutting, and how: a claim, and what the rehearsal showed.

proof-sizes = Cut sizes less seams and turns are the finished sizes
proof-sizes-measured = { $pieces ->
    [one] re-measured on { $pieces } kind of piece
   *[other] re-measured on { $pieces } kinds of piece
 }

proof-gap = The gap for the elastic was open in time and is closed
proof-gap-closed = closed: { $gaps }
proof-gap-none = no casing has a gap
# Said only inside "closed".
proof-gap-in = { $gap } in { PIECE($piece) }
proof-gap-in-cord = { $gap } in { PIECE($piece) }, where the cord comes out
proof-gap-in-elastic = { $gap } in { PIECE($piece) }, where the elastic comes out
proof-seam-gaps = A gap left in a seam is filled or closed
proof-seam-gap-filled = { $gap } in the seam of { PIECE($piece) }

proof-gathers = Every gathered edge is held by a seam
proof-gathers-sewn = { $edges ->
    [one] { $edges } gathered edge is sewn in
   *[other] { $edges } gathered edges are sewn in
 }

proof-hem-level = The hem hangs level
proof-hem-above-floor = { PIECE($piece) } ends { $height } above the floor
proof-hem-above-floor-places = { PIECE($piece) } ends { $front } in front, { $side } at the sides and { $back } behind above the floor

proof-edges-match = The edges match at every seam
proof-edges-matched = { $seams ->
    [one] { $seams } seam joins edges of one length
   *[other] { $seams } seams join edges of one length
 }

proof-hidden = What lies under stays hidden
proof-hidden-above = { PIECE($piece) } ends { $left } above the hem
proof-hidden-layers = from the outside in the layers end at { $ends }

proof-one-garment = Every piece is used and the garment is one thing
proof-one-garment-pieces = { $pieces ->
    [one] the one piece is sewn
   *[other] all { $pieces } pieces hang together
 }

proof-opening = It goes on over the hips, and it holds at the waist
proof-opening-flat = { $flat } flat for { $girth } of body
proof-opening-cord = a cord draws it in
proof-opening-stretch = the elastic stretches { $stretch }
proof-opening-stretch-rated = the elastic stretches { $stretch } of its { $rated }
proof-opening-band = open, { $way-in } round for { $passes }; closed, { $waist } at the waist
proof-opening-none = the garment has no casing and no placket

proof-no-raw-edge = No edge is left to ravel
proof-edges-finished = { $edges ->
    [one] { $edges } edge is hemmed, neatened, sewn or enclosed
   *[other] { $edges } edges are hemmed, neatened, sewn or enclosed
 }
proof-edges-stay-raw = { $edges } may stay raw, for the cloth does not ravel

proof-no-raw-margin = No seam margin is left to ravel
proof-margins = of { $seams } seams { $neatened } are neatened, { $enclosed } enclosed and { $free } in cloth that does not ravel

proof-used = Everything that is bought is used
proof-used-materials = { $materials ->
    [one] { $materials } material is used
   *[other] { $materials } materials are used
 }
proof-used-materials-thread = { $materials ->
    [one] { $materials } material and the thread are used
   *[other] { $materials } materials and the thread are used
 }

proof-elastic = The elastic carries the weight of the garment
proof-elastic-none = not asked: no elastic is drawn in at a waist that is known
proof-elastic-no-weight = not asked: a cloth has no weight, so that of the garment is unknown
proof-elastic-load = about { $weight } on elastic { $wide } wide that is { $less } shorter than the waist
proof-elastic-limit = up to { $limit } any elastic shorter than the waist will do
proof-elastic-limit-heavy = up to { $limit } any elastic shorter than the waist will do, above that one that is { $usual } shorter

proof-thickness = No seam is thicker than the machine takes
proof-thickest = the thickest is about { $thick }
proof-thickest-none = nothing is seamed

proof-clear = Nothing lies in the way of anything else
proof-clear-things = { $things ->
    [one] { $things } thing lies on the cloth
   *[other] { $things } things lie on the cloth, each clear of the others
 }

proof-numbers = Every number can be sewn and used
proof-numbers-within = { $numbers ->
    [one] { $numbers } number lies within its limits
   *[other] { $numbers } numbers lie within their limits
 }

proof-fullness = The cloth takes the fullness at every line
proof-fullness-held = { $stretches ->
    [one] { $stretches } stretch is held as its cloth takes it
   *[other] { $stretches } stretches are held as their cloth takes it
 }

proof-length = The depths add up to the finished length
proof-length-sum = { $depths } = { $length }

proof-rings = Every ring goes over the body and leaves room at its place
proof-rings-passed = { $rings ->
    [one] { $rings } ring below the top, { $narrowest } when it is opened
   *[other] { $rings } rings below the top, the narrowest { $narrowest } when it is opened
 }
proof-rings-none = no ring lies below the top
proof-rings-no-hips = not asked: the spec does not measure the hips

proof-held = Something holds it at its top
proof-held-ring = { EDGE($edge, at: "start") }, { $rest } at rest
proof-held-cord = a cord at { EDGE($edge) }
proof-held-tied = a cord that is tied round the waist
proof-held-band = a band that closes
proof-held-straps = straps over the shoulders
proof-held-none = nothing that is known

proof-way-round = Cloth shows its right face and hangs the right way up
proof-way-round-shown = every layer and pattern was looked at

proof-no-bag = What is sewn together above and below is equally long between
proof-no-bag-shown = no layer bags

proof-rows-covered = A row that is to hide the seam of the row below it hangs over it
proof-rows-covered-by = { PIECE($row, at: "start") } hangs { $over } over the seam below

proof-measures = The measures of the body are not swapped
proof-measures-shown = waist, hips and heights were compared

proof-ends = Loose ends clear the floor and suit the wearer
proof-ends-shown = cords, ribbons and bows were followed to their ends
proof-held-by-maker = something else, as the spec says

# The reason stands beside it, in the words of whoever wrote the spec.
proof-accepted = Meant so

proof-heat = Nothing is pressed hotter than it takes
proof-heat-shown = each time the iron is set for the coolest that it can touch
