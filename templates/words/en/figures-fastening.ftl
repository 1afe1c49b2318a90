### A fastening at a finished waist.

figure-fastening-outside = Outside, closed
figure-fastening-note = What lies inside or between the ends is dashed. Not to scale.
figure-fastening-alt = { $overlaps ->
    [yes] The closed ends of the opening from the outside, level at the top. The right one lies over the other by { $overlap }. The first half is sewn on inside { $below } below { $under ->
        [yes] the band
       *[no] the top edge
     }, the other where it meets it.
   *[no] The closed ends of the opening from the outside, level at the top. The ends meet. The first half is sewn on inside { $below } below { $under ->
        [yes] the band
       *[no] the top edge
     }, the other where it meets it.
 }
# Buttons lie outside, and their holes or loops with them.
figure-fastening-alt-buttons = The closed ends of the opening from the outside. { $count ->
    [one] A button
   *[other] { $count } buttons
 } with { $loops ->
    [yes] a loop each at the edge of the end on the right, the first
   *[no] a buttonhole each in the end on top, the first
 } { $below } below { $under ->
    [yes] the band
   *[no] the top edge
 }.
figure-fastening-caption = { $count ->
    [one] Where both halves are sewn on.
   *[other] Where both halves of each of the { $count } are sewn on.
 }
