### Einen breiten Saum umschlagen und von Hand oder mit der Maschine befestigen.
### $edge: die Kante, die gesäumt wird. $neat: Sie wurde versäubert und wird nicht eingeschlagen.

deep-hem-title = { EDGE($edge, at: "start") } breit säumen
    .number = { $depth }
deep-hem-aim = Ein Saum von { $depth } gibt der Kante Gewicht.

## Umschlagen

deep-hem-turn-under = { EDGE($edge, at: "start") } { $under } auf die linke Stoffseite umbügeln.
# Bei ausgestelltem Stoff ist das Umgeschlagene um $fuller länger als die Linie, auf die es zu liegen kommt.
deep-hem-ease-row = Eine Reihe steppen, { $long-stitch }, { $row } { $neat ->
    [yes] von der versäuberten Kante
   *[no] vom gebügelten Bruch
 }, von Naht zu Naht, und an beiden Enden jedes Laufs eine Fingerlänge Faden lassen. Danach die Maschine zurückstellen: { $seam-stitch }.
deep-hem-ease-pull = Die innere Kante ist { $fuller } länger als die Linie darunter: An jeder Naht die Fäden der Reihe anziehen, bis der Saum überall flach liegt. Dann den Saum durch ein Tuch bügeln.
    .check = Die innere Kante liegt glatt auf { PIECE($edge) }, und keine Falte steht.
    .remedy = Wo eine Falte steht, den Stoff entlang der Reihe nach beiden Seiten ausstreichen und neu bügeln.
deep-hem-fold-up-ring = { $neat ->
    [yes] { EDGE($edge, at: "start") } { $depth } auf die linke Stoffseite umbügeln. Den Saum { pin-start }, zuerst an den Nähten.
   *[no] Noch einmal { $depth } umschlagen und den neuen Bruch bügeln. Den Saum { pin-start }, zuerst an den Nähten.
 }
    .check = Der Saum ist überall { $depth } breit.
    .tolerance = { $off } mehr oder weniger
    .remedy = Wo er abweicht, aufklappen und neu bügeln.
deep-hem-fold-up-flat = { $neat ->
    [yes] { EDGE($edge, at: "start") } { $depth } auf die linke Stoffseite umbügeln. Den Saum { pin-start }, zuerst an beiden Enden.
   *[no] Noch einmal { $depth } umschlagen und den neuen Bruch bügeln. Den Saum { pin-start }, zuerst an beiden Enden.
 }
    .check = { deep-hem-fold-up-ring.check }
    .tolerance = { deep-hem-fold-up-ring.tolerance }
    .remedy = { deep-hem-fold-up-ring.remedy }

## Befestigen

deep-hem-fasten-hand = { $neat ->
    [yes] Linke Stoffseite oben: die versäuberte Kante mit Blindstichen annähen, alle { $every } ein Stich, { $length }. Einen Faden von { PIECE($edge) } aufnehmen, dann innerhalb der Kante weiter. Nicht fest anziehen. An beiden Enden den Faden im Saum vernähen.
   *[no] Linke Stoffseite oben: den inneren Bruch mit Blindstichen annähen, alle { $every } ein Stich, { $length }. Einen Faden von { PIECE($edge) } aufnehmen, dann innerhalb des Bruchs weiter. Nicht fest anziehen. An beiden Enden den Faden im Saum vernähen.
 }
    .check = Kein Stich zieht sich zusammen, auf der rechten Stoffseite ist keiner zu sehen.
    .remedy = Den Stich, der spannt, aufschneiden und lockerer nähen.
deep-hem-fasten-machine-ring = { $neat ->
    [yes] An { side-seam } beginnen, linke Stoffseite oben. { $from-fold } neben der versäuberten Kante steppen, { $length } rundum, { $stitch }. Das Ende drei Stiche über den Anfang nähen.
   *[no] An { side-seam } beginnen, linke Stoffseite oben. Auf dem Saum { $from-fold } neben dem inneren Bruch steppen, { $length } rundum, { $stitch }. Das Ende drei Stiche über den Anfang nähen.
 }
    .check = Der Saum ist überall gefasst.
    .remedy = Die ausgelassene Strecke neu steppen.
deep-hem-fasten-machine-flat = { $neat ->
    [yes] Linke Stoffseite oben: { $from-fold } neben der versäuberten Kante steppen, { $length }, { $stitch }; an beiden Enden verriegeln.
   *[no] Linke Stoffseite oben: auf dem Saum { $from-fold } neben dem inneren Bruch steppen, { $length }, { $stitch }; an beiden Enden verriegeln.
 }
    .check = { deep-hem-fasten-machine-ring.check }
    .remedy = { deep-hem-fasten-machine-ring.remedy }
