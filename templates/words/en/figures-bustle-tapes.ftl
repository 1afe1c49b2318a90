### Tapes with rings inside the back of a skirt, let down and drawn up.

figure-bustle-tapes-down = Let down, seen from inside
figure-bustle-tapes-up = Drawn up
figure-bustle-tapes-alt = { $tapes ->
    [one] A tape { $long } long down the inside of the back, { $below } below the top edge, with { $rings } rings { $every } apart and a cord tied to the lowest. Drawn up it is { $left } long, and the hem lies { $up } higher.
   *[other] { $tapes } tapes { $long } long down the inside of the back, { $apart } apart at their lower ends and { $below } below the top edge, each with { $rings } rings { $every } apart and a cord tied to the lowest. Drawn up they are { $alike ->
        [yes] { $left } long
       *[no] { $lefts } long, from the middle of the back outwards
     }, and the hem lies { $up } higher.
 }
figure-bustle-tapes-caption = The tapes let down, and one in the middle drawn up, with the knot at its uppermost ring.
figure-bustle-tapes-loop = loop
figure-bustle-tapes-end = end
