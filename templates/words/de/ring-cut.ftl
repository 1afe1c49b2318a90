### Ein Teil zwischen zwei Bögen zuschneiden, so dass es ohne Kräuselung in Wellen fällt.

ring-cut-title = { PIECE($piece) } als Ring zuschneiden
    .number = { $radius }
ring-cut-aim = Radius { $radius }, { $degrees } Grad: oben { $top }, unten { $hem }.

## Anzeichnen

ring-cut-lay = Das Rechteck für { PIECE($piece) } flach auslegen, { $wide } breit und { $high } hoch.
ring-cut-centre = Die senkrechte Mittellinie des Rechtecks anzeichnen und darauf den Mittelpunkt markieren, { $outer } über der unteren Kante.
# Der Mittelpunkt liegt außerhalb des Stoffs.
ring-cut-centre-beyond = Die senkrechte Mittellinie des Rechtecks anzeichnen und darüber hinaus verlängern, auf Papier, das am Tisch festgeklebt ist. Darauf den Mittelpunkt markieren, { $outer } über der unteren Kante und { $beyond } über der oberen.
ring-cut-outer = Ein Maßband am Mittelpunkt halten und den äußeren Bogen bei { $outer } zeichnen.
    .check = Der Bogen berührt gerade die untere Kante.
    .tolerance = { $arc-off } mehr oder weniger
    .remedy = Prüfen, ob das Maßband am Mittelpunkt bei 0 beginnt, und neu zeichnen.
ring-cut-inner = Den inneren Bogen bei { $inner } zeichnen.
# Nur in den Sätzen darunter gesagt.
ring-cut-end-lines = { $has-seam ->
    [yes] Auf dem äußeren Bogen von der Mittellinie aus zu beiden Seiten { $along } messen. Von jeder Markierung eine gerade Linie zum Mittelpunkt ziehen, dann { $ends } weiter außen eine zweite für die Naht.
   *[no] Auf dem äußeren Bogen von der Mittellinie aus zu beiden Seiten { $along } messen. Von jeder Markierung eine gerade Linie zum Mittelpunkt ziehen.
 }
ring-cut-ends = { ring-cut-end-lines }
    .check = Die Markierungen sind in gerader Linie { $across } voneinander entfernt.
    .tolerance = { $across-off } mehr oder weniger
    .remedy = Mit hochkant gestelltem Maßband neu auf dem Bogen messen.
# Fast ein Halbkreis oder mehr: Der Winkel lässt sich besser prüfen als die gerade Linie.
ring-cut-ends-wide = { ring-cut-end-lines }
    .check = Die Linien stehen { $whole-degrees } Grad auseinander.
    .tolerance = 1 Grad mehr oder weniger
    .remedy = { ring-cut-ends.remedy }

# Nur innerhalb der folgenden Nachrichten.
ring-cut-move = { $on-paper ->
    [yes] Den Mittelpunkt auf der Mittellinie um { $shift } weiterrücken; der letzte liegt { $farthest } jenseits der oberen Kante, auf Papier, das auf den Tisch geklebt ist. Von dort beide Bögen und die geraden Enden noch einmal zeichnen.
   *[no] Den Mittelpunkt auf der Mittellinie um { $shift } weiterrücken, von der unteren Kante weg, und von dort beide Bögen und die geraden Enden noch einmal zeichnen.
 }
# Mehrere Teile in einem Rechteck übereinander; $short: Das letzte Rechteck fasst nur $last.
ring-cut-next = { $short ->
    [yes] { ring-cut-move } So fortfahren, bis { $stacked } Teile im Rechteck liegen, im letzten { $last }.
   *[no] { ring-cut-move } So fortfahren, bis { $stacked } Teile im Rechteck liegen.
 }
    .check = Jeder neue äußere Bogen liegt über dem inneren Bogen des vorigen Teils, an beiden Enden am nächsten, und kreuzt ihn nicht.
    .remedy = { $shift } noch einmal messen, vom zuletzt benutzten Mittelpunkt aus.

## Schneiden und halten

ring-cut-cut = Auf beiden Bögen und auf den äußersten geraden Linien schneiden.
# Nur in den Sätzen darunter gesagt.
ring-cut-stay-row = Sofort { $stay } neben dem inneren Bogen eine Naht steppen, { $stitch }, ohne ihn zu dehnen. Diese Naht bleibt in der Nahtzugabe.
ring-cut-stay = { ring-cut-stay-row }
    .check = Der innere Bogen misst zwischen den Endnähten { $top }.
    .tolerance = { $top-off } mehr oder weniger
    .remedy = Ist er länger, die Naht ein wenig zusammenziehen. Ist er kürzer, die Nahtzugabe bis an die Naht einschneiden.
# Eine spätere Naht oder ein Einschlag nimmt am inneren Bogen etwas weg.
ring-cut-stay-above = { ring-cut-stay-row }
    .check = Die Linie der späteren Naht, { $above } von der Schnittkante, misst zwischen den Endnähten { $top }.
    .tolerance = { ring-cut-stay.tolerance }
    .remedy = { ring-cut-stay.remedy }
ring-cut-hang = Noch nicht säumen. Das Teil hängt zuerst über Nacht aus, und was sich abgesenkt hat, wird waagerecht abgeschnitten.
