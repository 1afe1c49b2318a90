### Cautions: each stands before the first step that it concerns.

caution-pins = Take each pin out before it reaches the needle, and count them back into the box.
caution-clips = Take each clip off before it reaches the needle, and count them back into the box.
caution-hand-needle = Sewing by hand: use a thimble, and park the needle in a cushion, never in your clothes.
caution-fingers = Keep your fingers beside the foot, never before the needle.
caution-knives = Overlocker knives cut fingers as well as cloth: keep hands beside the foot, never before it.
caution-needle-teeth = A needle that strikes the teeth or a stop of the zip breaks and flies: turn the wheel by hand where you cross them, and wear glasses. Before the slider stop with the needle down, lift the foot, move the slider past, and go on.
caution-ripper = A seam ripper slips: put a pin across each end of the slit, and cut towards a pin, never towards your hand.
caution-ripper-row = A seam ripper slips: lay the work on the table, and push it along the row, never towards your hand.
caution-awl = An awl goes through a hand as through cloth: push it into cork or a folded towel on the table, never towards your palm or over your lap.
caution-cutting = Cut away from your body and your other hand, and close or cover shears and rotary cutter each time you put them down.
caution-shears = Shears cut fingers as well as cloth: keep your other hand well away from the blades.
caution-iron = The iron and its steam burn: keep fingers off the fold, stand it up between presses, switch it off for any other work.
caution-iron-marks = Heat sets some markers and waxy chalks for good: try chalk, marker and iron on an offcut first, and take a mark out before the iron comes near it, but for those inside the seam margins.
# The cloth melts: nylon, acetate, or a fibre that is not known.
caution-iron-melts = { caution-iron } Nylon and net melt under a hot iron and stick to the skin: low heat, no steam, a dry press cloth, and never iron them on the body.

## Pins and cords at the waist

caution-safety-pin = Close the safety pin before you let go of it.
caution-safety-pin-last = Close the safety pin before you let go of it, and take the last pin out of the casing.
caution-no-flame-on-ends = Do not melt the ends with a flame: nylon and polyester drip, burn the skin and set net alight. Stitches, a fold or textile glue hold as well. Textile glue gives off fumes: open a window, keep it from flames, and let it dry.
caution-cords = Cords catch in doors, lifts and playground slides. For children up to 14 years the ends at the waist may hang { $open } at most when the garment lies open and { $drawn-in } when it is drawn in (EN 14682:2007; a newer edition is in force). No cord at all below the crotch, and none at the neck or tied behind. In the United States the ends on jackets and tops may show { $united-states } at most with the channel at its full width, with no knot or toggle on them (ASTM F1816-18). Local safety rules come before this guide.
caution-tight-elastic = Elastic that is too tight stops the blood. Two fingers must slip under it, and it must leave no deep mark. A child may not tell you: look after a few minutes, and take it off at once where the skin turns white or tingles.
caution-loops = Loops hang inside the garment only, flat against it: on a child a free loop catches.
caution-small-parts = A small child can choke on a loose fastener. Sew each one on so that a hard pull does not move it, or use ties or elastic.
caution-steam = Steam scalds: keep your other hand clear, and stand the iron up between rows. Nylon and net shrink and melt: on them try it on the trial strip first, from further off.

## Arcs and hoops

caution-arc = Cut along an arc in short bites, shears flat on the table, your other hand well behind the blades.
caution-short-bites = Cut in short bites, shears flat on the table, your other hand well away from the blades.
caution-boning = Wear eye protection when you cut boning: the ends fly. Cap or round every end before it goes in; a bare end works through cloth and skin. A hoop tips up when you sit, trips on stairs and swings into flames: try it out first.

## Before the work: cautions of the garment as a whole

caution-garment-flame-sheer = Net and other sheer cloth catches fire in a moment and burns within seconds, more so after washing. A full skirt stands off the body and can reach a flame before you notice. Keep the garment away from candles, open fires, heaters, gas flames and cigarettes, while you sew it and when it is worn. Sew in a label: KEEP AWAY FROM FIRE. { caution-garment-finish } { caution-garment-local }
caution-garment-flame-light = Light cotton, linen and rayon catch fire as fast as net and burn as fast. A full skirt stands off the body and can reach a flame before you notice. Keep the garment away from candles, open fires, heaters, gas flames and cigarettes, while you sew it and when it is worn. Sew in a label: KEEP AWAY FROM FIRE. { caution-garment-finish } { caution-garment-local }
caution-garment-flame = A full skirt stands off the body and can reach a flame before you notice: keep clear of candles, fires and heaters. { caution-garment-local }
# Said only inside the three above.
caution-garment-finish = A finish against fire washes out: ask how many washes it lasts, and have it done again in time.
caution-garment-local = Local rules and the word of a licensed person, a fire officer for a stage or hall, come before this guide.
caution-garment-blades = Shears and rotary cutters: cut away from your body, close or cover the blade each time you put it down, and keep your shoes on.
caution-garment-needles = Count pins and needles out and back in. Look the finished garment over for forgotten pins before anyone puts it on. Take your foot off the pedal before you thread or change a needle.
caution-garment-needles-clips = Count pins, clips and needles out and back in. Look the finished garment over for forgotten ones before anyone puts it on. Take your foot off the pedal before you thread or change a needle.
caution-garment-hem = A long hem trips people on stairs and stages, and a train drags into fires. Walk up and down a stair in it before the first wearing.
caution-garment-child = For a child under 14: leave no cord, ribbon end or loop hanging at the waist or below the hem, and sew small parts on fast. Children's clothes and nightwear have rules of their own; ask before you sell or lend one.
caution-train = A train trips whoever wears it and whoever walks behind. Draw it up, or carry it, before stairs, on a stage in the dark and near machines.
caution-bustle-cords = Cords at the back of a skirt catch in doors and under wheels. Not on a child’s skirt; there hook it up with short loops.
