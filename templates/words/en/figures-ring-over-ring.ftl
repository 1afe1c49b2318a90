### Two rings that are sewn together: one slipped over the other.
### $over: the pieces of the ring outside, $inside: those of the ring that it is slipped over.

figure-rings-over = { PIECE($over, at: "start") }
# $side: which edge of the outer ring is sewn; a stack has no side.
figure-rings-over-how = { $side ->
    [top] inside out, upside down: its top edge is up
    [bottom] inside out, upside down: its bottom edge is up
   *[stack] inside out, upside down: its edge to sew is up
 }
figure-rings-inside = { PIECE($inside, at: "start") }
figure-rings-inside-how = right side out

figure-rings-level = Both cut edges level, right sides together
figure-rings-wrong-side = wrong side of { PIECE($over) }
figure-rings-right-side = right side of { PIECE($inside) }

figure-rings-note = Not to scale. The lines down the rings are the side seams.
figure-rings-alt = { PIECE($over, at: "start") }, inside out and upside down, slips over { PIECE($inside) }, right side out, until both edges, each { $length } round, are level: outside the wrong side of { PIECE($over) } is seen, below it the right side of { PIECE($inside) }; the side seams meet.
figure-rings-caption = How { PIECE($over) } and { PIECE($inside) } lie before they are pinned.
