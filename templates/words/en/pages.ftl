### The fixed words of a guide: its page, its PDF, its Markdown and its JSON.
### Values are finished texts unless a note says otherwise.

## Head and aids of the page

page-skip-to-steps = Skip to the steps
# Whose guide it is, where it is a size and not a person.
page-size = size { $size }
page-aids = Reading aids
# Links to the guides of the other sizes, where several are made together.
page-sizes = Sizes
page-every-size = All sizes
page-languages = Languages
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
# One sentence with its drawing at a time, for the sewing table.
page-one-step = One step at a time
page-step-back = Back
page-step-on = Next step
page-all-steps = All steps
page-larger = Enlarge the drawing
page-close = Close
page-go = Go
# Foot of a sheet of paper. $sheet, $sheets: its number, and how many there are.
page-sheet = { $sheet } of { $sheets }

## Headings of the parts

# What a reader of books tells of the file to who needs it read aloud or made large.
page-book-read = Every drawing has its alternative in words, with the numbers that it shows. The contents, headings and tables lead through the guide, and nothing in it moves, flashes or sounds.
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

## The first pages

page-glance = At a glance
# $sittings (number)
page-plan = { $sittings ->
    [1] The work: cutting and one sitting
   *[other] The work: cutting and { $sittings } sittings
 }
# Of work that was begun: the cloth is cut.
page-plan-left = { $sittings ->
    [1] The work that is left: one sitting
   *[other] The work that is left: { $sittings } sittings
 }
page-begin = Before you begin
page-measure = Measure yourself
# $whose: a size or a wearer.
page-measure-told = Over thin clothes, the tape level and not tight, another person reading it. The numbers of this guide are for { $whose }: if yours differ by more than a finger's width, have it made for you.
# Over the empty lines of the form.
page-yours = yours
page-choose-size = Choose your size
page-whole = The whole work in one table
page-whole-told = For who has made one before. The letter leads to the sentences and their drawings.
page-what = what
page-the-number = the number
page-time = time
page-on-sheet = page
page-pieces = The pieces
page-words = Words of the craft
page-kept = How it is kept
page-hint-new = New to this? Go from the first letter to the last. Each sentence stands beside its drawing; tick it when it is done. The words and the signs of the drawings are told at the end.
page-hint-done = Done it before? One table has the whole work: a letter, a number, a time.
page-hint-lost = Lost your place? The letters at the foot of each page show where you are. G3 is sentence 3 of G.
# $claims (number)
page-proved-line = { $claims ->
    [one] Proved before cutting, for these measures: { $claims } claim. It stands in the guide on the screen, with its numbers.
   *[other] Proved before cutting, for these measures: { $claims } claims. They stand in the guide on the screen, with their numbers.
 }

## Measurements

page-rounded = { $rounding ->
    [none] Cut sizes are not rounded.
   *[other] Cut sizes are rounded up to { $rounding }.
 }
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
    [chemical] Chemicals
    [trip] Long hems
    [child] Children
   *[other] Take care
 }
page-kind-head = { page-kind }.

## Materials

page-materials-are = What to buy, and how much of it is really needed.
page-material = Material
page-buy = Buy
# In the guide of a class, which buys together.
page-given = Take
page-given-are = What is given out to you, and what lies in your pile.
page-cost = Cost
page-need = Need
page-need-amount = need { $amount }
page-for = For
page-for-use = For: { $use }

## Cutting

page-cut-sizes-are = Cut sizes hold every allowance: add nothing. Finished sizes are what shows. On its tag a piece has its number from here and a letter for each copy: 1a, 1b. Where a copy is cut in segments, 1a·2 is the second of 1a.
page-letter = Letter
page-piece-number = No.
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
# $place: the letter and number of a sentence that a drawing of the same stands beside, such as C2.
page-drawn-at = Like the drawing at { $place }.
page-remedy = If not
# Between a head and what stands behind it on the same line.
page-colon = :

## Foot

page-end = Local rules and licensed practice come first. Guide { $key }.
