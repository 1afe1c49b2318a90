### The list to take to the shop. Values are finished texts unless a note says otherwise.

shopping-title = Shopping for { $title }, { $whose }
# $garments (number)
shopping-class = { $garments ->
    [one] { $whose }: { $garments } garment
   *[other] { $whose }: { $garments } garments
 }

## A material

# $amount: what is needed of it. $use: where it goes.
shopping-needed = needed: { $amount }, for { $use }
shopping-widths = the widths compared:
# $joins (number)
shopping-width = { $joins ->
    [one] { $width } wide: { $amount }, { $cost }, { $joins } join
   *[other] { $width } wide: { $amount }, { $cost }, { $joins } joins
 }
shopping-width-chosen = { shopping-width }, chosen
shopping-no-price = no price
# $reels (number)
shopping-thread = { $looped ->
    [yes] { $reels ->
        [one] needle { $needle }, bobbin { $bobbin }, looper { $looper }, { $waste } for waste; { $reels } reel on the machine at once
       *[other] needle { $needle }, bobbin { $bobbin }, looper { $looper }, { $waste } for waste; { $reels } reels on the machines at once
    }
   *[no] { $reels ->
        [one] needle { $needle }, bobbin { $bobbin }, { $waste } for waste; { $reels } reel on the machine at once
       *[other] needle { $needle }, bobbin { $bobbin }, { $waste } for waste; { $reels } reels on the machines at once
    }
 }
# $bobbins (number)
shopping-bobbins = { $bobbins ->
    [one] wind { $bobbins } bobbin
   *[other] wind { $bobbins } bobbins
 }
# $materials: a list.
shopping-cut-to = The spec does not say how these are sold: { $materials }. Their lengths are rounded up to { $step }, as shops usually cut them; ask in yours.

## What it comes to

# Two asterisks on either side make a text bold.
shopping-cost = Materials: **{ $cost }**
# $materials (a list)
shopping-cost-without = Materials: **{ $cost }**, without { $materials }
shopping-work = Work: about **{ $time }**, cutting included
shopping-labour = Labour: { $labour }; all together { $cost }
# $margin: in percent.
shopping-price = Price to ask: **{ $price }**, margin of { $margin } % of the cost

## Bought together

shopping-together = Bought together, and by each alone
