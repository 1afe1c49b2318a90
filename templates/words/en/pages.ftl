### The fixed words of a guide: its page, its PDF, its Markdown and its JSON.
### Values are finished texts unless a note says otherwise.

## Head and aids of the page

page-skip-to-steps = Skip to the steps
# Whose guide it is, where it is a size and not a person.
page-size = size { $size }
page-aids = Reading aids
page-large-print = Large print
page-dark = Dark
page-progress = Progress
page-steps-done = Steps done
# $done, $steps (numbers)
page-done = { $done } of { $steps } done
page-next = Next to do
page-go-to-step = Go to step
# Stands in the empty field for the number of a step.
page-step-number = F3
page-go = Go
# Foot of a sheet of paper. $sheet, $sheets: its number, and how many there are.
page-sheet = { $sheet } of { $sheets }

## Headings of the parts

page-contents = In this guide
page-garment = The garment
page-measurements = Measurements
page-cautions = Take care
page-tools = Tools
page-materials = Materials
page-cutting = Cutting
page-proved = What was proved before cutting
# The same in the list of contents.
page-proved-short = What was proved
page-notes = Notes from the maker
page-reasons = Where the numbers come from

## Measurements

page-rounded = Cut sizes are rounded up to { $rounding }.
# $units: those of the spec, where the guide speaks in others.
page-reasons-units = { $units ->
    [inches] The reasons are worked out in inches.
   *[cm] The reasons are worked out in cm.
 }
page-numbers-units = { $units ->
    [inches] The numbers are worked out in inches.
   *[cm] The numbers are worked out in cm.
 }
# $reasons: the heading of that part, as a link.
page-reasons-told = { $reasons } is told near the end.
page-measurement = Measurement
page-length = Length
page-comes-from = Where it comes from

## Why a number is what it is

# $numbers: one number or a list of them. What is unseen is read aloud behind it.
page-why = Why { $numbers }
    .unseen = for the { $piece }
# $told: what the number comes from, such as a sum.
page-then-rounded = { $told }, then rounded up
page-told-above = see above
page-told-by-name = ask for it by name

## Cautions

# The words that head a caution.
page-kind = { $kind ->
    [needle] Needles and pins
    [blade] Blades
    [heat] Hot iron
    [flame] Flame
    [steam] Steam
    [aerosol] Spray
    [dye] Dye
    [trip] Long hems
    [child] Children
   *[other] Take care
 }
page-kind-head = { page-kind }.

## Materials

page-materials-are = What to buy, and how much of it is really needed.
page-material = Material
page-buy = Buy
page-cost = Cost
page-need = Need
page-need-amount = need { $amount }
page-for = For
page-for-use = For: { $use }

## Cutting

page-cut-sizes-are = Cut sizes hold every allowance: add nothing. Finished sizes are what shows.
page-letter = Letter
page-piece = Piece
page-cloth = Cloth
page-cut = Cut
page-depth = Depth
page-finished = Finished
page-note = Note
page-cut-size = { $length } long, { $depth } deep

## Steps

page-check = Check
page-tolerance = May be off
page-remedy = If not
# Between a head and what stands behind it on the same line.
page-colon = :

## Foot

page-end = Local rules and licensed practice come first. Guide { $key }.
