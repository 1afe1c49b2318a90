### What a guide calls the measures of a body and the numbers of a spec, by the names that specs have for them.
### $own (text): the name as it stands in the spec, where it is none of these.

name-body = { $name ->
    [waist-girth] waist girth
    [hip-girth] hip girth
    [chest-girth] chest girth
    [neck-girth] neck girth
    [waist-height] waist height
    [hip-height] hip height
    [hip-depth] hip depth
    [knee-height] knee height
    [height] height
   *[own] { $own }
 }
# The lengths and numbers of a step, a piece, a material, and of the garment as a whole.
name-number = { $name ->
    [above-hem] above hem
    [back] back
    [behind] behind
    [below-top] below top
    [channel] channel
    [edge-stitch] edge stitch
    [pins] from pin to pin
    [count] count
    [cut-area] cut area
    [cut-depth] cut depth
    [cut-length] cut length
    [depth] depth
    [ease] ease
    [ends] ends
    [fell] fell
    [first-seam] first seam
    [first-turn] first turn
    [fold-ends] folded at each end
    [from-edge] from edge
    [from-start] from the start
    [front] front
    [fullness-to-hem] fullness to hem
    [gap] gap
    [gap-below-top] gap below the top
    [open-at-hem] open above the hem
    [open] open below the top
    [gathered-strips] gathered strips
    [gathers] gathers
    [heading] heading
    [hem] hem
    [hole] hole
    [apart] apart
    [button] button
    [channels] channels
    [let-out] let out
    [takes] ml for each gram
    [hem-layers] hem layers
    [front-hem] hem of the front gore
    [back-hem] hem of a back gore
    [backs] back gores
    [each] rings on each tape
    [every] from ring to ring
    [long] length of a dart
    [tapes] tapes
    [up] drawn up by
    [hems-together] hems together
    [inset] inset
    [lap] lap
    [length] length
    [most-joins] most joins
    [over] over
    [overlap] overlap
    [price] price
    [reel] reel
    [roll] roll
    [rounding] rounding
    [rows] rows
    [seam] seam
    [second-seam] second seam
    [second-turn] second turn
    [selvedge] selvedge
    [shortest] shortest
    [shrinkage] shrinkage
    [bending-length] bending length
    [side] side
    [slit] slit
    [sold-by] sold by
    [space] space
    [spacing] spacing
    [spare] spare
    [stitch] stitch
    [stretch] stretch
    [top-to-hem] top to hem
    [trim-to] trim to
    [turn] turn
    [turn-under] turn under
    [turn-up] turn up
    [weight] weight
    [width] width
   *[own] { $own }
 }
