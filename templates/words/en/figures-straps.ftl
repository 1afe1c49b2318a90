### Sew two shoulder straps and stitch them inside the top edge.

figure-straps-inside = Inside up
figure-straps-alt = An end of a strap lies { $lap } deep inside the top edge, its own end folded under by { $under }, and is sewn on in a rectangle.
figure-straps-caption = An end of a strap inside the edge.
