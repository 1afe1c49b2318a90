### Two holes in a casing to come, from the right side.

figure-eyelets-head = From the right side, before the casing is folded
figure-eyelets-front = middle of the front
figure-eyelets-note = To scale. Dotted: the patches behind.
figure-eyelets-alt = { PIECE($piece, at: "start") } from the right side: two { cord-holes } of { $hole }, { $apart } apart, half of it to each side of the middle of the front, { $from-edge } from the edge.
figure-eyelets-caption = Both lie { $from-edge } from the edge, half of { $apart } from the middle of the front.
