### The drawings of the cutting: sections with their lanes or panels, and the tapes on the table.
### $cloth: the maker's word for the cloth. $piece: a piece's tag, with its part where it has one.

## A section on the cloth

figure-cutting-section = Section { $section }
figure-cutting-bolt = cut { $length } of the { $cloth } from the bolt
figure-cutting-lane = { $lane }: { $depth }
# Below a section: a lane whose names have no room on it or beside it.
figure-cutting-lane-names = Lane { $lane }, { $depth } deep, from the left: { $pieces }.
figure-cutting-fold = fold
figure-cutting-selvedge = selvedge
figure-cutting-between = { $width } between the selvedges
figure-cutting-over = { $length } × { $width }

## What the drawing of sections says in words

figure-cutting-caption = { $first ->
    [yes] How to cut the { $cloth }: section { $from } of { $sections }, to scale. Cloth hatched both ways stays over.
   *[no] How to cut the { $cloth }: sections { $from } to { $to } of { $sections }, to scale. Cloth hatched both ways stays over.
 }
# Each section has another scale.
figure-cutting-caption-scales = { $first ->
    [yes] How to cut the { $cloth }: section { $from } of { $sections }, each section to a scale of its own. Cloth hatched both ways stays over.
   *[no] How to cut the { $cloth }: sections { $from } to { $to } of { $sections }, each section to a scale of its own. Cloth hatched both ways stays over.
 }
figure-cutting-opened = Folded cloth is drawn opened out, the under layer below the fold.
figure-cutting-panels = Panels lie as on the table, a side that had a selvedge near you; their ends are measured from the left, their sides from that near side.
figure-cutting-unproven = It is the best plan found in the work allowed; another could cost { $gap } less at most.
# $rows: its lanes or panels.
figure-cutting-alt = Section { $section }, { $length } of the { $cloth }: { $rows }.
# Said only inside the message above.
figure-cutting-alt-panel = { $piece } lies { $near-end } to { $far-end } from the cut end and { $near-side } to { $far-side } from the near side
figure-cutting-alt-lane = { $layer ->
    [flat] lane { $lane }, { $depth } deep, holds { $pieces }
    [fold] lane { $lane } on the fold, { $depth } deep, holds { $pieces }
    [upper] lane { $lane } in the upper layer, { $depth } deep, holds { $pieces }
   *[under] lane { $lane } in the under layer, { $depth } deep, holds { $pieces }
 }
figure-cutting-alt-piece = { $piece } { $length }
figure-cutting-alt-nothing = nothing

## Tapes on the table

figure-tapes-sections = { $count ->
    [one] Section { $sections }
   *[other] Sections { $sections }
 }
figure-tapes-from-edge = tapes measured from the near edge of the table
figure-tapes-from-end = tapes measured from the left end of the table
figure-tapes-lanes = { COUNT($lanes) ->
    [one] lane { $lanes }
   *[other] lanes { $lanes }
 }
figure-tapes-lanes-deep = { COUNT($lanes) ->
    [one] lane { $lanes }, { $depth } deep
   *[other] lanes { $lanes }, { $depth } deep
 }
# Of a lane on the fold half its depth lies in each layer.
figure-tapes-half = { $depth } half
figure-tapes-level = near edge of the table, long edge of the cloth level with it
figure-tapes-level-folded = near edge of the table, fold level with it
figure-tapes-level-turned = near edge of the table, cut end level with it
figure-tapes-level-end = left end of the table, cut end level with it
figure-tapes-number = { $number }:
figure-tapes-caption = Guide tapes on the table for the { $cloth }, their distances to scale. Cut along the thick line of each tape, its far side.
figure-tapes-alt-edge = { $count ->
    [one] Section { $sections }: tapes at { $tapes } from the near edge of the table.
   *[other] Sections { $sections }: tapes at { $tapes } from the near edge of the table.
 }
figure-tapes-alt-end = { $count ->
    [one] Section { $sections }: tapes at { $tapes } from the left end of the table.
   *[other] Sections { $sections }: tapes at { $tapes } from the left end of the table.
 }
# Said only inside the two above.
figure-tapes-alt-tape = { COUNT($lanes) ->
    [one] { $distance } (lane { $lanes })
   *[other] { $distance } (lanes { $lanes })
 }
