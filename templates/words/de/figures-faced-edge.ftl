### Schnitte durch Kanten mit Beleg oder verstürztem Futter: zwei Stoffe, ihre Nahtzugaben dazwischen.

# Namen von zwei Teilen, ohne Artikel.
figure-faced-pieces = { $inner } innen, { $outer } außen
figure-faced-alt = Kante mit Beleg im Schnitt, Innenseite oben: { PIECE($facing) } liegt innen, beide Nahtzugaben von { $seam-width } liegen darunter und sind { $understitch } neben der Kante daran festgesteppt.
figure-faced-caption = Die Kante mit Beleg im Schnitt.{ figure-hatched }
figure-bagged-alt = Eine Kante des gefütterten Teils ({ $outer }) im Schnitt, Innenseite oben: { PIECE($lining) } liegt innen, beide Nahtzugaben von { $seam-width } zwischen den beiden.
figure-bagged-caption = Die verstürzte Kante im Schnitt.{ figure-hatched }
