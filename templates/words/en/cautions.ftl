### Cautions: each stands before the first step that it concerns.

caution-pins = Take each pin out before it reaches the needle, and count them back into the box.
caution-hand-needle = Sewing by hand: use a thimble, and park the needle in a cushion, never in your clothes.
caution-fingers = Keep your fingers beside the foot, never before the needle.
caution-knives = Overlocker knives cut fingers as well as cloth: keep hands beside the foot, never before it.
caution-shears = Shears cut fingers as well as cloth: keep your other hand well away from the blades.
caution-iron = The iron and its steam burn: keep fingers clear of the fold, and stand the iron up between presses.
# The cloth melts: nylon, acetate, or a fibre that is not known.
caution-iron-melts = { caution-iron } Nylon and net melt under a hot iron and stick to the skin: low heat, no steam, a dry press cloth, and never iron them on the body.
