### Bänder mit Ringen und Kordeln innen im Rücken, die eine Schleppe hochziehen.

bustle-tapes-title = Die Raffbänder einnähen
    .number = { $up }
bustle-tapes-aim = { $tapes ->
    [one] Ein Band zieht den Saum hinten um { $up } hoch.
   *[other] { $tapes } Bänder ziehen den Saum hinten um { $up } hoch.
 }

## Anzeichnen

bustle-tapes-middle = { $from ->
    [seam] { PIECE($piece) } auf links wenden. Von { side-seam } aus ein Viertel der Weite, { $quarter }, nach hinten messen: Das ist die hintere Mitte. Von dort eine Linie gerade nach unten kreiden.
    [fold] { PIECE($piece) } auf links wenden. Bei { side-seam } zur Hälfte falten und die Mitte der hinteren Hälfte suchen. Von dort eine Linie gerade nach unten kreiden.
    [back] { PIECE($piece) } auf links wenden. Die hintere Keilbahn der Länge nach zur Hälfte falten, Seite auf Seite: Der Bruch ist die hintere Mitte. Auf ihm eine gerade Linie kreiden.
   *[front] { PIECE($piece) } auf links wenden. In der Mitte der vorderen Keilbahn zur Hälfte falten: Der andere Bruch ist die hintere Mitte. Dort eine Linie gerade nach unten kreiden.
 }
bustle-tapes-mark-one = Auf dieser Linie liegt das Band. Darauf { $below } unter der Oberkante und { $long } weiter unten markieren.
    .check = Die untere Markierung liegt { $long } unter der oberen.
    .tolerance = { $off } mehr oder weniger
    .remedy = Von der fertigen Oberkante aus neu messen.
bustle-tapes-mark-upper = { $middle ->
    [yes] Markieren, wo die Bänder beginnen, das Maßband flach auf dem Stoff: { $below } von der Oberkante nach unten, auf der Linie und { $upper } davon nach beiden Seiten.
   *[no] Markieren, wo die Bänder beginnen, das Maßband flach auf dem Stoff: { $below } von der Oberkante nach unten, { $upper } von der Linie nach beiden Seiten.
 }
bustle-tapes-mark-lower = { $middle ->
    [yes] Ebenso messen und { $foot } von der Oberkante nach unten markieren: auf der Linie und { $lower } davon nach beiden Seiten.
   *[no] Ebenso messen und { $foot } von der Oberkante nach unten markieren: { $lower } von der Linie nach beiden Seiten.
 }
    .check = Links und rechts der Linie liegen die Markierungen gleich.
    .remedy = Von der Linie und von der fertigen Oberkante aus neu messen.
bustle-tapes-lines = { $tapes } gerade Linien kreiden, von jeder oberen Markierung auf die untere darunter zu. Jede nach { $long } enden lassen, auf ihr gemessen.
    .check = Jede Linie ist { $long } lang.
    .tolerance = { $off } mehr oder weniger
    .remedy = Die Linie von ihrer oberen Markierung aus neu messen.

## Nähen und einziehen

bustle-tapes-sew = { $cut } { $tape } abschneiden und an beiden Enden { $turn } einschlagen. Von der oberen Markierung nach unten auf die Linie { pin-start }.
bustle-tapes-stitch = Die Arbeit so legen, dass nur das Rückenteil unter der Nadel liegt. Beide langen Kanten des Bandes feststeppen, { $stitch }. Die Nähte sieht man auf der rechten Seite.
    .check = Unter dem Band ist nichts als das Rückenteil mitgefasst.
    .remedy = Wo etwas anderes mitgefasst ist, auftrennen und diese Strecke neu nähen.
bustle-tapes-rings = { $rings } Ringe von Hand auf das Band nähen, { $every } voneinander, den ersten am oberen und den letzten am unteren Ende: je acht Stiche, durch das Band und nicht durch den Rock.
    .check = An jedem Ring gezogen, rührt er sich nicht.
    .remedy = Mit doppeltem Faden neu annähen.
bustle-tapes-thread = { $cord-long } { $cord } abschneiden. Ein Ende mit doppeltem Knoten an den untersten Ring binden und das andere durch alle Ringe bis zum obersten führen.
bustle-tapes-draw = Den Rock auf den Tisch legen. Jede Kordel ziehen, bis ihr Band { $left } lang ist. Die Kordel an den obersten Ring knoten und nur eine Schlaufe durch den Knoten ziehen, so dass ein Zug am Ende die Schleppe herablässt.
    .check = Am Saum gezogen, bleibt das Band { $left } lang.
    .tolerance = { $off } mehr oder weniger
    .remedy = Den Knoten lösen, die Kordel neu ziehen und darauf markieren, wo der Knoten hingehört.
bustle-tapes-draw-each = Den Rock auf den Tisch legen. Jede Kordel ziehen, bis ihr Band so lang ist, von der hinteren Mitte nach außen, links wie rechts: { $lefts }.
bustle-tapes-knot = Die Kordel an den obersten Ring knoten und nur eine Schlaufe durch den Knoten ziehen, so dass ein Zug am Ende die Schleppe herablässt.
    .check = Am Saum gezogen, bleibt jedes Band so lang, wie es gezogen wurde.
    .tolerance = { $off } mehr oder weniger
    .remedy = { bustle-tapes-draw.remedy }
bustle-tapes-mark-cord = Die Kordel an ihrem Knoten mit zwei Stichen in einer anderen Farbe markieren, die bleiben: Dort wird sie jedes Mal geknotet, wenn die Schleppe hochgezogen wird.
bustle-tapes-tuck = Das Ende, das übrig ist, um zwei Finger wickeln und mit einer kleinen geschlossenen Sicherheitsnadel am Band feststecken, damit nichts herunterhängt.
