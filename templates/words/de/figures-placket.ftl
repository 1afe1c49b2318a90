### Ein Schlitz, und der gerade gespreizte Schlitz auf dem Streifen, der ihn einfasst.

figure-placket-slit = Neben der Linie gesteppt, dann eingeschnitten
figure-placket-foot = Spitze: nicht eingeschnitten
figure-placket-spread = Zu einer geraden Linie gespreizt, auf dem Streifen
figure-placket-at-foot = { $foot } an der Spitze
figure-placket-strip = { PIECE($strip, form: "bare") }, rechte Stoffseite oben; der Schlitz liegt darauf, linke Stoffseite oben
figure-placket-alt = Ein Schlitz von { $slit } mit Stichen auf beiden Seiten, oben { $stay } entfernt, die sich unten in einer Spitze treffen. Gerade gespreizt liegt seine Kante auf { PIECE($strip) }: die Naht { $seam-width } neben der Kante des Streifens, an der Spitze { $foot } des Schlitzes.
figure-placket-caption = Der Schlitz, und wie er auf seinem Streifen liegt.
