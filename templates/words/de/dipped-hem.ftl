### Eine Unterkante vorn höher als hinten zuschneiden, so dass der Saum hinten tiefer hängt oder schleppt.

dipped-hem-title = { EDGE($edge, at: "start") } geschwungen zuschneiden
    .number = { $front }
dipped-hem-aim = Der Saum steigt an den Seiten um { $side } und vorn um { $front }.

## Vorn und hinten finden

dipped-hem-hold = { PIECE($piece) } wie beim Tragen halten, mit { side-seam } an der linken Seite der tragenden Person.
dipped-hem-mark = { EDGE($edge, at: "start") } in Viertel teilen und von { side-seam } aus alle { $quarter } markieren: vordere Mitte, andere Seite, hintere Mitte.
    .check = Das letzte Viertel endet an der Naht.
    .tolerance = { $quarter-off } mehr oder weniger
    .remedy = Den Unterschied auf alle vier verteilen.
dipped-hem-tag = An die vordere und an die hintere Markierung je einen Papierzettel stecken.

## Anzeichnen und schneiden

dipped-hem-dots = An jeder Markierung von der Kante nach oben messen: vorn { $front }, an beiden Seiten { $side }, hinten nichts. Dort einen Punkt machen.
    .check = Der Zettel am höchsten Punkt sagt vorn.
    .remedy = Sind vorn und hinten vertauscht, die Punkte ausreiben und neu messen.
dipped-hem-line = Von Punkt zu Punkt eine weiche Linie ziehen. Vorn und hinten eine Handbreit waagerecht auslaufen lassen.
    .check = Die Linie hat an den Seiten keine Ecke.
    .remedy = Noch einmal ziehen, etwas runder.
dipped-hem-cut = Auf der Linie schneiden und an der neuen Kante die hintere Mitte markieren.
    .check = Die neue Kante misst rundum { $length }.
    .tolerance = { $off } mehr oder weniger
    .remedy = Vorn auf hinten falten und beide Seiten vergleichen: die tiefere an die andere angleichen.
