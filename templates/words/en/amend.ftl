### What was measured on the way, what to do about it, and the guide from there on.
### `.step` says a message as the beginning of a step, with a capital; the message itself stands in a list.

## What was measured. $copy: of several like pieces the one that was measured, 0 where it is the only one.

amend-cloth = the width of the { $cloth }
    .step = The width of the { $cloth }
amend-bolt = the length of the { $cloth }
    .step = The length of the { $cloth }
amend-shrinkage = the shrinkage of the { $cloth }
    .step = The shrinkage of the { $cloth }
amend-elastic = the { $elastic }, the loop at rest
    .step = The { $elastic }, the loop at rest
amend-edge = { $copy ->
    [0] { EDGE($edge) }
   *[other] { EDGE($edge) }, copy { $letter }
 }
    .step = { $copy ->
        [0] { EDGE($edge, at: "start") }
       *[other] { EDGE($edge, at: "start") }, copy { $letter }
     }
# $stack: the name that the maker gave to layers that are worked as one edge.
amend-stack = { $copy ->
    [0] the stacked edge { $stack }
   *[other] the stacked edge { $stack }, copy { $letter }
 }
    .step = { $copy ->
        [0] The stacked edge { $stack }
       *[other] The stacked edge { $stack }, copy { $letter }
     }
amend-ring = { $copy ->
    [0] { PIECE($piece) } all round
   *[other] { PIECE($piece) } all round, copy { $letter }
 }
    .step = { $copy ->
        [0] { PIECE($piece, at: "start") } all round
       *[other] { PIECE($piece, at: "start") } all round, copy { $letter }
     }
amend-ring-edge = { $along ->
    [cut] { $copy ->
        [0] { EDGE($edge) }, all round along the cut edge
       *[other] { EDGE($edge) }, all round along the cut edge, copy { $letter }
    }
    [line] { $copy ->
        [0] { EDGE($edge) }, all round on the seam line
       *[other] { EDGE($edge) }, all round on the seam line, copy { $letter }
    }
   *[no] { $copy ->
        [0] { EDGE($edge) }, all round
       *[other] { EDGE($edge) }, all round, copy { $letter }
    }
 }
    .step = { $along ->
        [cut] { $copy ->
            [0] { EDGE($edge, at: "start") }, all round along the cut edge,
           *[other] { EDGE($edge, at: "start") }, all round along the cut edge, copy { $letter },
        }
        [line] { $copy ->
            [0] { EDGE($edge, at: "start") }, all round on the seam line,
           *[other] { EDGE($edge, at: "start") }, all round on the seam line, copy { $letter },
        }
       *[no] { $copy ->
            [0] { EDGE($edge, at: "start") }, all round,
           *[other] { EDGE($edge, at: "start") }, all round, copy { $letter },
        }
     }
amend-cut-length = { $copy ->
    [0] { PIECE($piece) }, cut length
   *[other] { PIECE($piece) }, cut length, copy { $letter }
 }
    .step = { $copy ->
        [0] { PIECE($piece, at: "start") }, cut length
       *[other] { PIECE($piece, at: "start") }, cut length, copy { $letter }
     }
amend-cut-depth = { $copy ->
    [0] { PIECE($piece) }, cut depth
   *[other] { PIECE($piece) }, cut depth, copy { $letter }
 }
    .step = { $copy ->
        [0] { PIECE($piece, at: "start") }, cut depth
       *[other] { PIECE($piece, at: "start") }, cut depth, copy { $letter }
     }

## How it measures

amend-length = { $length }
# Nobody measured it: it was gathered to the length that the first guide gave.
amend-length-assumed = { $length } by the first guide
amend-share = { $share }
amend-as-planned = as planned
amend-short = { $wanted } wanted, { $gap } short ({ $share } %)
amend-long = { $wanted } wanted, { $gap } too long ({ $share } %)
amend-share-reckoned = { $share } reckoned with
amend-bolt-enough = { $wanted } needed, { $gap } to spare

## What to do. $gap: by how much it is off. $metre: how much of that falls on each metre.

# Said only inside the messages below: how much of a difference falls on each metre or yard.
amend-each = { $per ->
    [yard] { $metre } in each yard
   *[metre] { $metre } in each metre
 }
amend-none = within the rounding: go on
    .step = Within the rounding: go on.
amend-ease = ease in { $gap } as you sew, { amend-each }
    .step = Ease in { $gap } as you sew, { amend-each }.
amend-trim = take the edge it is sewn to in by { $gap }, to { $length }
    .step = Take the edge it is sewn to in by { $gap }, to { $length }.
amend-choose = the choice is yours: ease in { $gap }, { amend-each }, or let the gathers out by as much
    .step = The choice is yours: ease in { $gap }, { amend-each }, or let the gathers out by as much.
amend-let-out = let the gathers out by { $gap }, { amend-each }
    .step = Let the gathers out by { $gap }, { amend-each }.
amend-closer = pull the gathers closer by { $gap }, { amend-each }
    .step = Pull the gathers closer by { $gap }, { amend-each }.
amend-pleats-out = let the pleats out by { $gap } in all, the same from each
    .step = Let the pleats out by { $gap } in all, the same from each.
amend-pleats-in = take { $gap } more into the pleats in all, the same into each
    .step = Take { $gap } more into the pleats in all, the same into each.
amend-row-out = let the thread of the row out by { $gap }, { amend-each }
    .step = Let the thread of the row out by { $gap }, { amend-each }.
amend-row-in = pull the thread of the row closer by { $gap }, { amend-each }
    .step = Pull the thread of the row closer by { $gap }, { amend-each }.
amend-bolt-short = buy { $gap } more before you cut, or choose a way to cut with more joins
    .step = Buy { $gap } more before you cut, or choose a way to cut with more joins.
amend-bolt-buy = buy { $gap } more before you cut
    .step = Buy { $gap } more before you cut.
amend-cut-anew = the cutting is planned anew
    .step = The cutting is planned anew.
amend-follows = it stays so, and the numbers after it follow
    .step = It stays so, and the numbers after it follow.
# Copies that are sewn to one and are not equally deep: $length is the depth that all get.
amend-level-it = cut it to { $length } at its bottom edge, level with the copies it is sewn to
    .step = Cut it to { $length } at its bottom edge, level with the copies it is sewn to.
amend-level-others = cut the copies it is sewn to level with it at the bottom edge, to { $length }
    .step = Cut the copies it is sewn to level with it at the bottom edge, to { $length }.
amend-follows-at-hem = it is taken to be short at its bottom edge, and the numbers after it follow
    .step = It is taken to be short at its bottom edge, and the numbers after it follow.
# One of a pair, such as a pocket.
amend-follows-pair = it stays so, and its numbers follow; where it is to match the other, cut that to { $length } as well
    .step = It stays so, and its numbers follow. Where it is to match the other, cut that to { $length } as well.
amend-cut-to = cut it to { $wanted }
    .step = Cut it to { $wanted }.
amend-sewn = it is sewn in already: go on
    .step = It is sewn in already: go on.
amend-go-on = go on
    .step = Go on.

## The guide from here on

# Behind whose guide it is.
amend-wearer = { $whose }, from here on as measured
amend-part = As measured
amend-title = Put right what was measured
amend-aim = Everything measures what the next steps count on.
# $what, $measured, $off and $todo are messages from above.
amend-step = { $what } measures { $measured }: { $off }. { $todo }
amend-step-gathers = { $what } measures { $measured }: { $off }. { $todo }
    .check = Each quarter measures { $quarter }, all four { $whole }.
    .remedy = Share the gathers out again from mark to mark.
amend-step-choose = { $what } measures { $measured }: { $off }. { $todo }
    .check = If you let the gathers out, each quarter measures { $quarter }, all four { $whole }. If you ease, leave them; when the seam is pinned, no cloth hangs between the pins.
    .remedy = Share the gathers out again from mark to mark.
amend-step-row = { $what } measures { $measured }: { $off }. { $todo }
    .check = { amend-step-gathers.check }
    .remedy = Stroke the cloth along the row from mark to mark.
# Two edges that are to be sewn to one another and no longer have one length; $copy as above. $metre: of it, on each metre.
amend-shared = { $alike ->
    [yes] { $copy ->
        [0] { EDGE($longer) }, { $long }, is now { $gap } longer than { EDGE($shorter) }, { $short }: mark each in parts of its own length, and share that out evenly where they are sewn together, { amend-each }
       *[other] copy { $letter }: { EDGE($longer) }, { $long }, is now { $gap } longer than { EDGE($shorter) }, { $short }: mark each in parts of its own length, and share that out evenly where they are sewn together, { amend-each }
    }
   *[no] { $copy ->
        [0] { EDGE($longer) } is now { $gap } too long for { EDGE($shorter) }: share that out evenly where they are sewn together, { amend-each }
       *[other] copy { $letter }: { EDGE($longer) } is now { $gap } too long for { EDGE($shorter) }: share that out evenly where they are sewn together, { amend-each }
    }
 }
amend-step-shared = { $alike ->
    [yes] { $copy ->
        [0] { EDGE($longer, at: "start") }, { $long }, is now { $gap } longer than { EDGE($shorter) }, { $short }. Mark each in parts of its own length, and where the two are sewn together, share that out evenly from pin to pin, { amend-each }.
       *[other] Of copy { $letter }: { EDGE($longer) }, { $long }, is now { $gap } longer than { EDGE($shorter) }, { $short }. Mark each in parts of its own length, and where the two are sewn together, share that out evenly from pin to pin, { amend-each }.
    }
   *[no] { $copy ->
        [0] { EDGE($longer, at: "start") } is now { $gap } too long for { EDGE($shorter) }. Where the two are sewn together, share that out evenly from pin to pin, { amend-each }.
       *[other] Of copy { $letter }: { EDGE($longer) } is now { $gap } too long for { EDGE($shorter) }. Where the two are sewn together, share that out evenly from pin to pin, { amend-each }.
    }
 }
    .check = No fold is caught in the seam.
    .remedy = Unpick that hand's width, spread the cloth and sew it again.
# Work that single copies have to themselves: behind its title, and where it is done on several of them. $letters: of
# these copies; $count: how many. $own: whether their numbers are others than planned.
amend-copies-title = { $own ->
    [yes] { $count ->
        [one] { $title }: copy { $letters }, with its own numbers
       *[other] { $title }: copies { $letters }, with their own numbers
    }
   *[no] { $count ->
        [one] { $title }: copy { $letters }
       *[other] { $title }: copies { $letters }
    }
 }
amend-some-of-it = { $runs ->
    [yes] Make these { $count }: { $letters }. Do a sentence with each of them, then the next; where it says so, do several with one, then with the next.
   *[no] Make these { $count }: { $letters }. Do each sentence with one piece after the other, before you go on to the next sentence.
 }

## The report

amend-report = { $title }, { $whose }, as measured
amend-report-line = { $what }: { $measured }; { $off }
amend-same = nothing changes in the steps that follow
amend-same-copy = nothing changes for copy { $letter }
amend-same-others = nothing changes for the other copies
amend-same-meet = nothing changes from where the copies meet
amend-changes = what changes in the steps that follow:
amend-changes-copy = what changes for copy { $letter }:
amend-changes-others = what changes for the other copies:
amend-changes-meet = what changes from where the copies meet:
