### The page of a class or a size range, and the pages that cut for all of it.

## Contents

class-skip-to-guides = Skip to the guides
class-contents = On this page
class-guides = The guides
class-missing = Not made
class-chart = The size chart
class-order = One order for all
class-cutting = Cutting for all

## The guides

class-guides-are = The number stands first on the tag of every piece that is cut for all.
class-number = No.
class-for = For
class-cloth = Cloth
class-time = Time
# What is unseen is read aloud behind it. $whose: a name, a number or a size.
class-guide = Guide
    .unseen = for { $whose }
class-pdf = PDF
    .unseen = for { $whose }
# $number: of the file, where one can not hold all guides.
class-print-file = All guides in one, to print on both sides ({ $number })
# Beside the files above, where they are several.
class-print-guides-alone = These files hold the guides alone. The cutting for all is printed by itself: the ways to it stand under “{ class-cutting }”.
class-missing-are = No guide could be made for these. The message that was printed names the line to mend.

# Whose class page it is, where its file does not say.
class-every-size = every size
class-orders = Orders
class-of = a class of { $number }
# In the place of a name that could not be read.
class-line = line { $line } of the file

## The size chart

class-chart-are = { $rounding ->
    [none] Cut sizes are not rounded, and hold every allowance.
   *[other] Cut sizes are rounded up to { $rounding } and hold every allowance.
 }
class-chart-sizes = Size chart, { $sizes }
class-size = Size

## The order

class-apart = The same bought by each alone.
class-material = Material
class-together = Together
class-alone = Each alone
class-cost = Together: { $cost }, or { $head } a head when it is shared evenly.
class-cost-alone = Each alone: { $cost }, or { $head } a head.
class-saved = Together saves { $saved }, { $share } % of it.
# $materials (a list)
class-unpriced = Without a price, and not in these sums: { $materials }.
# $reels (number): how many one machine takes at once.
class-reels = { $reels ->
    [one] Reels are counted for all the thread together. Machines that sew at the same time need a reel each.
   *[other] Reels are counted for all the thread together. Places where people sew at the same time need up to { $reels } reels each.
 }
class-shopping-file = The list for the shop
class-materials-file = The materials as a table
# In the table of materials for programs.
class-garments = garments that use it
class-to-order = to order
class-order-cost = cost of the order
class-mean = { $garments ->
    [one] mean of { $garments } garment
   *[other] mean of { $garments } garments
 }

## Cutting for all

class-cutting-are = All pieces lie on one bolt of each cloth, each tag with the number of the person first.
class-cutting-file = The cutting plan for all, with steps
class-cutting-print = The cutting plan to print
# $part, $parts (numbers): of what is cut one after another.
class-cutting-file-part = Part { $part } of the cutting plan for all, with steps
class-cutting-print-part = Part { $part } of the cutting plan to print
# Heads the pages that cut for all, where a guide says whom it is for.
class-cutting-for = cutting for { $whose }
class-cutting-for-part = cutting for { $whose }, part { $part } of { $parts }
class-cutting-about = All pieces from one bolt of each cloth. The tag of every piece begins with the number of the person it is for: { $example } is copy a of piece { $piece } for number { $number }. The page with the guides says who the numbers are. Lay the pieces of each number in a pile of their own as you cut them.
# Where it is cut in parts.
class-cutting-parts-are = Cut the parts in their order: each goes on along the bolt where the one before it ended. Cloth that was washed whole is not washed again.
# Of who has pieces in a part. $numbers (a list), $count (number): of them.
class-cutting-piles-whole = { $count ->
    [one] With this part the pile of number { $numbers } is whole.
   *[other] With this part the piles of numbers { $numbers } are whole.
 }
class-cutting-piles-go-on = { $count ->
    [one] The pile of number { $numbers } goes on in a later part: keep it where more can be laid on it.
   *[other] The piles of numbers { $numbers } go on in a later part: keep them where more can be laid on them.
 }
# $example: a tag with its star. Planned for who left since, or was measured again.
class-cutting-spare = A star on a tag, as in { $example }, marks a piece that nobody needs any more: somebody left, or was measured again. Where its section is not cut yet, cut it off with the others and lay it by as spare cloth.
class-cutting-parts = Parts of the cutting
class-cutting-part = Part { $part }
# $joins (number)
class-joins = { $joins ->
    [one] { $joins } join over all copies
   *[other] { $joins } joins over all copies
 }
class-whole = whole

## Foot

class-end = Local rules and licensed practice come first. Class page { $key }.
