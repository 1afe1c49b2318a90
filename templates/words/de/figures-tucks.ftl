### Biesen: die Bruchlinien auf dem flachen Stoff, und die genähten Biesen im Schnitt.

figure-tucks-lines = Bruchlinien auf dem flachen Stoff
figure-tucks-sewn = Genäht, { $depth } breit, zur Kante gebügelt
figure-tucks-edge = untere Kante
figure-tucks-alt = { $tucks } Biesen von { $depth }, Bruchlinien { $lines } über der unteren Kante; genäht liegt der unterste Bruch { $from-edge } darüber, dazwischen sind { $space } zu sehen.
figure-tucks-caption = Die Biesen im Schnitt, rechte Stoffseite oben.{ figure-hatched }
