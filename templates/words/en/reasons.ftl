### Where the numbers come from, for a reader who has not seen the maker's file.

## What a number is called

reason-of-piece = { $measure } of { PIECE($piece) }
reason-of-material = { $measure } of the { $material }
# A number that an operation asks for, by the operation's title.
reason-for = { $label } for “{ $title }”
# The measures of a piece or a material; said alone, too.
reason-length = finished length
reason-depth = finished depth
reason-start-takes = allowance at the start
reason-end-takes = allowance at the end
reason-top-takes = allowance at the top
reason-bottom-takes = allowance at the bottom
reason-count = number
reason-hem-round = round the hem
reason-top-to-hem = length from the top
reason-top-round = round the top
reason-used = length used
reason-used-weight = weight used

## What it comes from

reason-same = the same as the { $same }
reason-same-of = the { $same } of “{ $title }”
reason-body = a body measure
reason-choice = a choice, { $place }
reason-choice-made = a choice made for this guide
# A line of the maker's file.
reason-place = line { $line } of { $file }
reason-written = { $asked ->
    [yes] { $shown ->
        [yes] { $placed ->
            [yes] written for “{ $title }” as { $formula } on { $place }
           *[no] written for “{ $title }” as { $formula }
        }
       *[no] { $placed ->
            [yes] written for “{ $title }” on { $place }
           *[no] written for “{ $title }”
        }
    }
   *[no] { $shown ->
        [yes] { $placed ->
            [yes] written as { $formula } on { $place }
           *[no] written as { $formula }
        }
       *[no] { $placed ->
            [yes] written on { $place }
           *[no] written
        }
    }
 }
reason-workroom = set by the workroom
reason-usual-step = as shops usually cut it, where the spec does not say
reason-one = one, as no count is written
reason-none = none, as the repeat does not go so far
reason-as-worked = as it is cut and worked
reason-before-drawn = round the top, before it is drawn in

# What is bought: the plan of a cloth, thread, and all else.
reason-plan-proven = the cutting plan: { reason-plan-joins }, proven to be the cheapest of its kind
reason-plan = the cutting plan: { reason-plan-joins }, at most { $share } dearer than the best
reason-plan-joins = { $joins ->
    [one] { $joins } join in { reason-plan-sections }
   *[other] { $joins } joins in { reason-plan-sections }
 }
reason-plan-sections = { $sections ->
    [one] { $sections } section
   *[other] { $sections } sections
 }
reason-needle = what the needle sews off in all seams, { $share } of waste in it
reason-bobbin = what the bobbin sews off in all seams, { $share } of waste in it
reason-looper = what the looper sews off in all seams, { $share } of waste in it
reason-steps-use = what the steps use of it, and the spare that the spec asks for
reason-square-end = bought for the end that is cut straight first

# How long the work takes.
reason-time-sewing = { $seams ->
    [one] { $seams } seam of about { $metres } m at the pace of the workroom
   *[other] { $seams } seams, about { $metres } m in all, at the pace of the workroom
 }
reason-time-handling = { $ends ->
    [0] taking up and fastening off { $seams } seams
   *[other] taking up and fastening off { $seams } seams, and { $ends } bundles of thread ends
 }
reason-time-set-ups = { $changes ->
    [one] { $changes } change of machine, foot, stitch or thread
   *[other] { $changes } changes of machine, foot, stitch or thread
 }
reason-time-pinning = { $pins } pins placed and taken out again
reason-time-gathering = drawing up and spreading about { $metres } m
reason-time-cutting = { $sections ->
    [0] marking and cutting about { $metres } m
   *[other] marking and cutting about { $metres } m, cloth laid { $sections } times
 }
reason-time-pressing = pressing about { $metres } m
reason-time-tended = standing by
reason-time-look = the last look at the finished garment

# The units that numbers are worked out in, where the guide speaks in others.
reason-units-cm = cm
reason-units-inches = inches

## Rounding

reason-rounded = rounded up to { $step }: { $before } becomes { $after }
# The finished size comes out otherwise than the cut size.
reason-rounded-cut = cut size rounded up to { $step }: { $before } becomes { $after }; finished { $finished-before } becomes { $finished-after }

## Functions in a formula; a bracket with their numbers follows.

reason-max = the largest of
reason-min = the smallest of
reason-round-up = rounded up
reason-round-down = rounded down
reason-round-near = rounded
