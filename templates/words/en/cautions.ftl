### Cautions: each stands before the first step that it concerns.

caution-pins = Take each pin out before it reaches the needle, and count them back into the box.
caution-hand-needle = Sewing by hand: use a thimble, and park the needle in a cushion, never in your clothes.
