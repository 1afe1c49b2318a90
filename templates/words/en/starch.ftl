### Stiffen a piece with starch.

starch-title = Stiffen { PIECE($pieces) }
starch-aim = The skirt stands out.
starch-caution-spray = Spray starch is flammable: spray it in the open air or a well-aired room, away from flames, pilot lights, cigarettes and hot irons, and do not breathe the mist.
starch-caution-flame = A net skirt burns fast, starched or not. Dry it in the air: no hot dryer, and no stove, pilot light, heater, candle or open fire near it. Keep it from them when it is worn too.

starch-hang = Hang the skirt upside down by its hem, or lay it on a line in the open air, with a sheet below it.
starch-wet = Dip, brush or spray { PIECE($pieces) } with starch, one layer at a time, as its label says. Hold the other tiers out of the way.
    .check = It is damp through, with no drops running.
    .remedy = Dab wet spots with a dry cloth: they dry white.
starch-dry = Shake the layers apart and let it dry in the air, away from heat.
