### Dye pieces in one bath. The sheet that comes with the dye goes before every sentence here.
### $dye: what the dye is called.

dye-title = Dye { PIECE($pieces) }
dye-aim = { PIECE($pieces, at: "start") } in one even shade.
dye-caution-powder = Follow the dye maker's sheet and the local rules for handling dye and pouring away the bath. Dye powder: do not breathe it in. Mask and gloves on; wet the powder before it can fly. Use no pan, spoon or measure that is used for food.
dye-caution-bath = A dye bath scalds. Lift wet cloth with tongs, keep children away, air the room.

## Before the bath

# $grams: of dye powder. $cloth: how much the dry cloth weighs.
dye-weigh = Weigh out { $grams } g of { $dye }. Dry weight of { PIECE($pieces) }, all in all: { $cloth }.
    .check = The scale shows { $grams } g.
dye-wet = Wash { PIECE($pieces) } and leave the cloth wet.
    .check = It is wet through and sinks.
    .remedy = Dry spots stay pale: soak it longer.
dye-try = Dye a wet offcut of each cloth first, in a cup of the bath, and let it dry.
    .check = The dry offcut has the shade you want. Wet cloth looks darker.
    .remedy = Too dark: add water. Too pale: wet more powder to a paste and add it.

## In the bath

dye-bath = Wet the powder to a paste and make up the bath as its sheet says, with so much water that the cloth moves freely.
dye-turn = Put the cloth in, bring the bath slowly to the heat on the sheet, and turn the cloth all the while.
    .check = No fold lies still and no air is caught in the cloth.
    .remedy = Push it under and pull the folds apart.
dye-rinse = Let it cool in the bath as the sheet says, then rinse it.
    .check = The water runs clear.
    .remedy = Rinse again.
dye-dry = Dry it in the air, out of the sun, and wash it by itself the first times.
## A trim, before it is sewn on

dye-title-trim = Dye the { $trim }
dye-aim-trim = { $length } of { $trim } in one even shade, before it is sewn on.
dye-weigh-trim = Wind off { $length } of { $trim } in one piece and weigh out { $grams } g of { $dye }: the trim weighs { $cloth } dry.
    .check = The scale shows { $grams } g.
dye-wet-trim = Wind the { $trim } into a loose skein over your hand and elbow and tie it loosely in four places. Wash it and leave it wet.
    .check = It is wet through and sinks.
    .remedy = Where the ties are tight the trim stays pale: loosen them.
dye-try-trim = Dye a wet end of the { $trim } first, in a cup of the bath, and let it dry.
    .check = The dry end has the shade you want. Wet trim looks darker.
    .remedy = Too dark: add water. Too pale: wet more powder to a paste and add it.
dye-bath-trim = Wet the powder to a paste and make up the bath as its sheet says, with so much water that the skein moves freely.
dye-turn-trim = Put the skein in, bring the bath slowly to the heat on the sheet, and turn the skein all the while.
    .check = No part lies still or above the bath.
    .remedy = Push it under and pull it apart.
dye-rinse-trim = Let it cool in the bath as the sheet says, then rinse it.
    .check = The water runs clear: the trim will not stain the cloth when it is washed.
    .remedy = Rinse again.
dye-dry-trim = Dry it in the air, out of the sun, wound flat round a board so that it does not crease.
    .check = It may have shrunk: measure it, and at least { $needed } of it is there: so much is sewn on.
    .remedy = Too short: dye the rest in a bath of its own, by the same weights.
