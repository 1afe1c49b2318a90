### Bänder mit Ringen und Kordeln innen im Rücken, die eine Schleppe hochziehen.

bustle-tapes-title = Die Raffbänder einnähen
    .number = { $up }
bustle-tapes-aim = { $tapes ->
    [one] Ein Band zieht den Saum hinten um { $up } hoch.
   *[other] { $tapes } Bänder ziehen den Saum hinten um { $up } hoch.
 }

## Anzeichnen

bustle-tapes-middle = { $ring ->
    [yes] { PIECE($piece) } auf links wenden. Von { side-seam } aus ein Viertel der Weite, { $quarter }, nach hinten messen: Das ist die hintere Mitte. Von dort eine Linie gerade nach unten kreiden.
   *[no] { PIECE($piece) } auf links wenden. Bei { side-seam } zur Hälfte falten und die Mitte der hinteren Hälfte suchen. Von dort eine Linie gerade nach unten kreiden.
 }
bustle-tapes-mark = { $middle ->
    [yes] { $tapes ->
        [one] Auf dieser Linie liegt das Band. Darauf { $below } unter der Oberkante und { $long } weiter unten markieren.
       *[other] Die anderen Linien mit { $apart } Abstand daneben und voneinander kreiden, auf beiden Seiten gleich viele. Auf jeder { $below } unter der Oberkante und { $long } weiter unten markieren.
    }
   *[no] Die Linien für die Bänder { $first } zu beiden Seiten davon kreiden, weitere mit { $apart } Abstand. Auf jeder { $below } unter der Oberkante und { $long } weiter unten markieren.
 }
    .check = Die unteren Markierungen liegen auf einer Höhe, { $long } unter den oberen.
    .tolerance = { $off } mehr oder weniger
    .remedy = Von der fertigen Oberkante aus neu messen.

## Nähen und einziehen

bustle-tapes-sew = { $cut } { $tape } abschneiden und an beiden Enden { $turn } einschlagen. Von Markierung zu Markierung auf die Linie stecken und beide langen Kanten feststeppen, { $stitch }.
bustle-tapes-rings = { $rings } Ringe von Hand auf das Band nähen, { $every } voneinander, den ersten am oberen und den letzten am unteren Ende: je acht Stiche, durch das Band und nicht durch den Rock.
    .check = An jedem Ring gezogen, rührt er sich nicht.
    .remedy = Mit doppeltem Faden neu annähen.
bustle-tapes-thread = { $cord-long } { $cord } abschneiden. Ein Ende mit doppeltem Knoten an den untersten Ring binden und das andere durch alle Ringe bis zum obersten führen.
bustle-tapes-draw = Ist der Rock fertig, ihn anziehen. Jede Kordel ziehen, bis ihr Band { $left } lang ist, und am obersten Ring zur Schleife binden.
    .check = Der Saum liegt hinten { $up } höher und kommt beim Gehen nicht auf den Boden.
    .tolerance = { $off } mehr oder weniger
    .remedy = Alle Kordeln um gleich viel weiter ziehen und die Stelle an jeder Kordel markieren.
