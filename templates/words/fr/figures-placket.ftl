### Une fente bordée : sa fente, et la fente étalée droite sur la bande qui la borde.

figure-placket-slit = Piquée à côté de la ligne, puis coupée
figure-placket-foot = bas : non coupé
figure-placket-spread = Étalée en ligne droite, sur la bande
figure-placket-at-foot = { $foot } au bas
figure-placket-strip = { PIECE($strip, form: "bare") }, endroit dessus ; la fente dessus, envers dessus
figure-placket-alt = Une fente de { $slit } avec des points de ses deux côtés, à { $stay } d’elle en haut, qui se rejoignent à son bas. Étalée droite, son bord est sur { PIECE($strip) } : à { $seam-width } du bord de la bande dans la piqûre, au bas { $foot } de la fente.
figure-placket-caption = La fente, et comment elle se pose sur sa bande.
