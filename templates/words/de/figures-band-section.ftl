### Schnitte durch Kanten, die in einem Band liegen: Einfassstreifen, glatter Bund, gefaltetes Band.

## Ein Einfassstreifen

figure-binding-shows = { $shows } sichtbar
figure-binding-alt = Eingefasste Kante im Schnitt, rechte Stoffseite oben: { PIECE($strip) } ist { $seam-width } neben der Kante angenäht und um sie gelegt, so dass { $shows } zu sehen sind; der Einschlag von { $turn } ist hinten gefasst.
figure-binding-caption = Die eingefasste Kante im Schnitt.{ figure-hatched }

## Ein glatter Bund

figure-fitted-depth = { $depth } hoch
# Der Name des Bunds, ohne Artikel.
figure-fitted-band = { $band-label }, Bruch oben
figure-fitted-alt = { PIECE($band) } im Schnitt, rechte Stoffseite oben: { $seam-width } neben der Kante angenäht, umgelegt, { $depth } hoch, die eingeschlagene Kante innen festgesteppt.
figure-fitted-caption = Der Bund im Schnitt: Alle offenen Kanten liegen darin.{ figure-hatched }

## Ein gefaltetes Band

figure-tape-alt = Die Kante im gefalteten Band ({ $tape }) im Schnitt; es deckt auf beiden Seiten { $half }, eine Naht geht durch alles.
figure-tape-caption = Die offene Kante liegt im Bruch des Bands ({ $tape }).
figure-band-ends-top = Das Ende oben
figure-band-ends-beneath = Das Ende darunter
figure-band-ends-alt = Der Bund zur Hälfte gefaltet, rechts auf rechts, über dem Rock. Am oben liegenden Ende läuft eine Naht { $seam-width } neben der Kante, bündig mit der Öffnung; am unteren, das vorsteht, läuft sie { $seam-width } neben der Kante hinunter, um die Ecke und auf der Nahtlinie bis zum Rock.
figure-band-ends-caption = Beide Enden des Bundes, linke Seite oben, mit ihren Nähten.
