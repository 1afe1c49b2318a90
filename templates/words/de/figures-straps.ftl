### Zwei Träger nähen und innen an der oberen Kante befestigen.

figure-straps-inside = Innenseite oben
figure-straps-alt = Ein Trägerende liegt { $lap } tief innen an der oberen Kante, { $under } eingeschlagen, und ist in einem Rechteck festgenäht.
figure-straps-caption = Ein Trägerende innen an der Kante.
