### Eine aufgesetzte Tasche auf ein Teil nähen. Eine Tasche in die Öffnung einer Naht einnähen.

figure-pocket-head = Rechte Seite oben
figure-pocket-head-inside = Innenseite oben
figure-pocket-front = Beide Beutel nach vorn gebügelt
figure-patch-pocket-alt = { PIECE($pocket, at: "start") } auf { PIECE($on) }, rechte Seite oben: { $wide } breit und { $high } hoch, die obere Kante { $from-edge } unter der oberen Kante des Teils; an beiden Seiten und unten aufgesteppt, mit einem Dreieck an beiden oberen Ecken.
figure-patch-pocket-caption = Wie die Tasche liegt und aufgesteppt ist.
figure-side-pocket-alt = Ein { $wide } breiter und { $high } hoher Beutel neben einer Naht, an beide Nahtzugaben einer Öffnung von { $gap } genäht und oben, an der Seite und unten geschlossen; an beiden Enden der Öffnung ein Riegel.
figure-side-pocket-caption = Der Beutel in seiner Naht.
