### Treat pieces with an agent against fire, as its maker says.
### $agent: what the agent is called; $liquid: how much of it is taken, ready to use.

flame-retardant-title = Treat { PIECE($pieces) } against fire
    .number = { $liquid }
flame-retardant-aim = { PIECE($pieces, at: "start") }: wetted through with { $agent } and dried. It burns more slowly, until it is washed.
flame-retardant-caution = No treatment makes cloth safe from fire: it still burns. The label and the safety sheet of the agent, your local rules, and the word of a fire officer for a stage or hall come before this guide. Never try it with a flame yourself; have it tested.
flame-retardant-caution-skin = Agents irritate skin and eyes: wear gloves and eye protection, open a window, keep children and food away, and pour nothing away but as the label says.
flame-retardant-caution-mist = Do not breathe the mist: spray in the open air or a well-aired room, with the mask that the label asks for.
flame-retardant-caution-child = Some agents are not for clothes, or not for children or next to the skin: use this one only if its label allows it, and only over other clothes if it says no more.

flame-retardant-read = Read the label of { $agent }: that it names the fibre of { PIECE($pieces) }, how it is mixed, how much a weight of cloth takes, and what it does to colours. Wash and dry { PIECE($pieces) } for the last time.
    .check = The label names the fibre, and allows clothes.
    .remedy = If it does not, do not use it: take an agent that does.
flame-retardant-mix = Make { $liquid } of { $agent } ready to use, as its label says. Treat an offcut of the cloth first and let it dry.
    .check = It shows no marks, is not sticky, and the colour stayed as it was.
    .remedy = If it changed, ask who makes the agent before you go on.
flame-retardant-dip = Lay { PIECE($pieces) } in the agent and push out all air. Keep it under for as long as the label says, then squeeze it out evenly. Do not rinse.
    .check = It is wet through, without a light patch.
    .remedy = Lay it in again where a patch stayed dry.
flame-retardant-spray = Hang { PIECE($pieces) } up over a sheet and spray it from both sides until it is wet through and drips, layer by layer.
    .check = It is wet through, without a light patch.
    .remedy = Spray again where a patch stayed dry.
flame-retardant-dry = Let it drip and dry hanging, in the air, as long as the label says: away from heaters and flames.
    .check = It is dry all through and shows no white crust.
    .remedy = Brush a crust off lightly out of doors.
flame-retardant-keep = Put the treated offcut into a bag with the name of { $agent } and the day, for whoever tests the garment.
flame-retardant-label = Write on a cotton tape, with a pen that does not wash out: treated, the day, { $agent }, DO NOT WASH. Sew it in beside the other label.
    .check = Who wears or stores it can read it. It is treated and tested again after each wash, and once a year.
