### Pleats: the lines to mark on the flat cloth, and the folded edge seen from above.

figure-pleats-flat = Marks on the flat cloth, right side up
figure-pleats-folded = Folded, the edge seen from above
figure-pleats-shown = shows { $shown }
figure-pleats-depth = Each fold is { $depth } deep. The right side is below.
figure-pleats-lines = Thick lines are the marks, dashed and dotted lines the folds. The folded edge is drawn larger.
figure-pleats-alt = { $kind ->
    [knife] Knife pleats: a mark every { $every } of flat cloth, each pleat { $depth } deep, { $shown } of it showing; { $count } pleats take { $cloth } to { $length }.
    [box] Box pleats: a mark every { $every } of flat cloth, each pleat { $depth } deep, { $shown } of it showing; { $count } pleats take { $cloth } to { $length }.
   *[inverted] Inverted pleats: a mark every { $every } of flat cloth, each pleat { $depth } deep, { $shown } of it showing; { $count } pleats take { $cloth } to { $length }.
 }
figure-pleats-caption = { $kind ->
    [knife] { $drawn } of { $count } knife pleats, flat and folded.
    [box] { $drawn } of { $count } box pleats, flat and folded.
   *[inverted] { $drawn } of { $count } inverted pleats, flat and folded.
 }
