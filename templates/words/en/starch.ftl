### Stiffen a piece with starch, bought ready or cooked from cornflour, by brush, by spray or by dipping.
### $starch: what the starch, or the cornflour, is called.

starch-title = Stiffen { PIECE($pieces) }
    .number = { $liquid }
starch-aim = { COUNT($pieces) ->
    [one] { PIECE($pieces, at: "start") } stands out.
   *[other] { PIECE($pieces, at: "start") } stand out.
 }
starch-caution-hot = Hot starch scalds and clings: pour the cold mix into the hot water, stir with a long spoon, and keep children away.
starch-caution-spray = Spray starch is flammable: spray it in the open air or a well-aired room, away from flames, pilot lights, cigarettes and hot irons, and do not breathe the mist.
starch-caution-flame = A net skirt burns fast, starched or not. Dry it in the air: no hot dryer, and no stove, pilot light, heater, candle or open fire near it. Keep it from them when it is worn too.
starch-caution-warm-air = A net skirt burns fast, starched or not. Warm air comes from a hand-held hair dryer at its lowest heat alone, { $air-far } away and never left running: no heater, no stove, pilot light, candle or open fire near it. Keep it from them when it is worn too. Local fire rules come before this guide.

## Make the starch

starch-ready = Make { $liquid } of { $starch } ready to use in a bowl; if it has to be thinned, as its label says.
starch-ready-spray = Make { $liquid } of { $starch } ready to use, as its label says, and fill it into a spray bottle. From a can it is ready as it is.
starch-paste = Stir { $cornflour } of { $starch } into { $cold } of cold water. A level tablespoon holds 15 ml.
    .check = No lump is left.
starch-cook = Bring { $hot } of water to the boil and take it from the heat. Pour the mix in slowly and stir until it turns clear.
    .check = It is clear and has no lumps.
    .remedy = Still white: heat it again and stir. Lumps: pour it through a cloth.
starch-cool = Let it cool until it is as warm as your hand.
starch-try = Try it on an offcut and let that dry.
    .check = It is as stiff as you want it and shows no white marks.
    .remedy = Too stiff or white: add water. Too soft: put a second coat on when the first is dry.

## Put it on

# Said first, before any starch is made.
# $last: no step follows that measures from a bright thread.
starch-pins = { $last ->
    [yes] Count the pins and needles before the cloth gets wet. Take out the bright threads and all marks: brush off the chalk, and damp away the marker.
   *[no] Count the pins and needles before the cloth gets wet. Take out all marks: brush off the chalk, and damp away the marker.
 }
    .check = As many are in the box as when you began, and no mark shows.
    .remedy = Feel along every seam until the last pin is found: in stiff cloth nobody feels it, and it rusts. Starch holds a mark for good.
starch-hang = Hang the garment upside down by its hem, or lay it over a line in the open air, with an old sheet below it.
starch-brush = Brush { PIECE($pieces) } with the starch, one layer at a time. Hold all else out of the way.
    .check = The cloth is damp through, with no drops running.
    .remedy = Dab wet spots with a dry cloth: they dry white.
starch-spray = Spray { PIECE($pieces) } with the starch from { $far } away, one layer at a time. Hold all else out of the way.
    .check = { starch-brush.check }
    .remedy = { starch-brush.remedy }
starch-dip = Dip { PIECE($pieces) } into a bowl of the starch, one layer at a time, until the cloth is wet through. Press it out with your hands and do not wring it. Hold all else out of the bowl.
    .check = { starch-brush.check }
    .remedy = { starch-brush.remedy }
starch-hang-wet = Hang the garment upside down by its hem, or lay it over a line in the open air, with an old sheet below it to catch the drops.
starch-dry = Shake the layers apart and let it dry in the air, away from heat.
    .check = No two layers stick together.
    .remedy = Damp them and pull them apart.
starch-form = Put the damp garment the right way up on a dress form, or over an upturned basket on a stand, and pull the layers apart all round.
    .check = Every layer stands off the one below it.
    .remedy = Where two cling, damp them and pull them apart.
starch-warm-air = Blow warm air up between the layers from below with a hair dryer in your hand, going round all the while, until the cloth is no longer wet.
    .check = The cloth is never hot to the touch.
    .remedy = Hold the dryer further off.
starch-overnight = Leave it on the form overnight, without heat.
    .check = In the morning it is dry through and keeps its shape when it is lifted off.
    .remedy = Still damp or limp: leave it longer, or put on a second coat.
