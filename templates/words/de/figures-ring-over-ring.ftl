### Zwei Ringe, die zusammengenäht werden: einer über den anderen gezogen.
### $over: die Teile des äußeren Rings, $inside: die des Rings, über den er gezogen wird.

figure-rings-over = { PIECE($over, at: "start") }
# $side: welche Kante des äußeren Rings genäht wird; ein Lagenpaket hat keine Seite.
figure-rings-over-how = { $side ->
    [top] auf links, kopfüber: obere Kante oben
    [bottom] auf links, kopfüber: untere Kante oben
   *[stack] auf links, kopfüber: Nähkante oben
 }
figure-rings-inside = { PIECE($inside, at: "start") }
figure-rings-inside-how = auf rechts

figure-rings-level = Beide Schnittkanten bündig, rechts auf rechts
figure-rings-wrong-side = linke Stoffseite von { PIECE($over) }
figure-rings-right-side = rechte Stoffseite von { PIECE($inside) }

figure-rings-note = Nicht maßstäblich. Die Linien an den Ringen sind die Seitennähte.
figure-rings-alt = { PIECE($over, at: "start") }, auf links und kopfüber, wird über { PIECE($inside) }, auf rechts, gezogen, bis beide Kanten, rundum je { $length }, bündig liegen: Außen ist die linke Stoffseite von { PIECE($over, form: "short") } zu sehen, darunter die rechte von { PIECE($inside, form: "short") }; die Seitennähte treffen sich.
figure-rings-caption = Wie { PIECE($over) } und { PIECE($inside) } vor dem Stecken liegen.
