### The cutting plan of each cloth and the other ways to cut it, told by `furbelow cutting`.

# $usable: of the width, without the selvedges.
ways-cloth = { $cloth }: { $length } of { $width } wide, { $usable } of it to use
ways-cloth-folded = { $cloth }: { $length } of { $width } wide, { $usable } of it to use, folded lengthwise
ways-spare = spare of the width: { $spare }

## The plan

ways-section = { $across ->
    [yes] section { $number }, { $length } of the bolt, lanes over the width
   *[no] section { $number }, { $length } of the bolt
 }
ways-tapes = { $edge ->
    [start] tapes from the start: { $tapes }
    [fold] tapes from the fold: { $tapes }
   *[edge] tapes from the long edge: { $tapes }
 }
# $cuts: the marks and lengths of what is cut from it.
ways-lane = { $layer ->
    [flat] lane { $number }, { $depth } deep: { $cuts }
    [fold] lane { $number }, { $depth } deep on the fold: { $cuts }
    [upper] lane { $number }, { $depth } deep in the upper layer: { $cuts }
   *[under] lane { $number }, { $depth } deep in the under layer: { $cuts }
 }
# Its outer edge is the selvedge.
ways-lane-selvedge = { $layer ->
    [upper] lane { $number }, { $depth } deep at the selvedge of the upper layer: { $cuts }
    [under] lane { $number }, { $depth } deep at the selvedge of the under layer: { $cuts }
   *[flat] lane { $number }, { $depth } deep at a selvedge: { $cuts }
 }
ways-over = stays over
ways-panels = { $how ->
    [sides] section { $number }, { $length } of the bolt, panels chalked one by one, straight cuts from side to side
   *[cut] section { $number }, { $length } of the bolt, panels chalked one by one, cut round with shears
 }
ways-panel = { $mark }: { $from-end } to { $to-end } from the end, { $from-edge } to { $to-edge } from the long edge

## The cost

ways-cost = cost { $cost }
ways-costs = { $all }: cloth { $cloth }, { ways-joins } { $joins-cost }, { ways-set-ups } { $set-ups-cost }, { ways-cuts } { $cuts-cost }
ways-joins = { $joins ->
    [one] { $joins } join
   *[other] { $joins } joins
 }
ways-set-ups = { $set-ups ->
    [one] { $set-ups } set-up
   *[other] { $set-ups } set-ups
 }
ways-cuts = { $marked ->
    [yes] { $cuts ->
        [one] { $cuts } cut and marks
       *[other] { $cuts } cuts and marks
     }
   *[no] { $cuts ->
        [one] { $cuts } cut
       *[other] { $cuts } cuts
     }
 }
ways-unpriced = the cloth has no price, so a metre counts as 1
ways-bound = No plan costs less than { $bound }, { $share } below.

## What is left, and the other ways

ways-offcuts = offcuts worth keeping: { $offcuts }
ways-offcut = { $length } x { $width } of section { $section }
ways-none = none
ways-least = the least cloth for each number of joins and sections:
ways-way = { $joins ->
    [0] { $length } with none in { $sections }, cost { $cost }
    [one] { $length } with { $joins } join in { $sections }, cost { $cost }
   *[other] { $length } with { $joins } joins in { $sections }, cost { $cost }
 }
ways-sections = { $sections ->
    [one] { $sections } section
   *[other] { $sections } sections
 }
ways-chosen = chosen
ways-not-proven = not proven

## How to pick a way; the keys are those of a workroom file

ways-pick-here = To pick a way with fewer joins or sections, give --most-joins N and --most-sections N, here and with `make`,
ways-pick-room = or write `most joins: N` and `most sections: N` in the workroom. Within them the cheapest way is taken: for less
ways-pick-within = cloth with more joins, lower the `join price` and the `setup price` of the workroom.
