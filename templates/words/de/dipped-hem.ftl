### Eine Unterkante vorn höher als hinten zuschneiden, so dass der Saum hinten tiefer hängt oder schleppt.

dipped-hem-title = { EDGE($edge, at: "start") } geschwungen zuschneiden
    .number = { $front }
dipped-hem-aim = Der Saum steigt an den Seiten um { $side } und vorn um { $front }.

## Vorn und hinten finden

dipped-hem-hold = { $front-gore ->
    [yes] { PIECE($piece) } auf rechts wenden und in der Mitte der vorderen Keilbahn zur Hälfte falten: Der andere Bruch ist die hintere Mitte.
   *[no] { PIECE($piece) } auf rechts wenden und wie beim Tragen halten, mit { side-seam } an der linken Seite der tragenden Person.
 }
dipped-hem-mark = { $front-gore ->
    [yes] { EDGE($edge, at: "start") } in Viertel teilen und von der vorderen Mitte aus alle { $quarter } markieren: vordere Mitte, eine Seite, hintere Mitte, andere Seite.
   *[no] { EDGE($edge, at: "start") } in Viertel teilen und von { side-seam } aus alle { $quarter } markieren: vordere Mitte, andere Seite, hintere Mitte.
 }
    .check = Das letzte Viertel endet, wo das erste begann.
    .tolerance = { $quarter-off } mehr oder weniger
    .remedy = Den Unterschied auf alle vier verteilen.
dipped-hem-tag = An die vordere und an die hintere Markierung je einen Papierzettel stecken.

## Anzeichnen und schneiden

dipped-hem-dots = Auf der rechten Stoffseite an jeder Markierung von der Kante gerade nach oben messen: vorn { $front }, an beiden Seiten { $side }, hinten nichts. Dort einen Punkt machen: So viel höher als hinten liegt der fertige Saum.
    .check = Der Zettel am höchsten Punkt sagt vorn.
    .remedy = Sind vorn und hinten vertauscht, die Punkte ausreiben und neu messen.
dipped-hem-between = Zwischen den Markierungen alle { $every } einen Punkt machen. Von vorn zu jeder Seite liegen sie { $to-side } hoch, von jeder Seite nach hinten { $to-back }.
    .check = Links und rechts der vorderen Mitte liegen die Punkte gleich, und nach hinten liegt keiner höher als der vor ihm.
    .remedy = Den Punkt, der aus der Reihe fällt, ausreiben und neu messen.
dipped-hem-line = Eine weiche Linie durch alle Punkte ziehen, vorn und hinten waagerecht.
    .check = Die Linie hat an den Seiten keine Ecke.
    .remedy = Noch einmal ziehen, etwas runder.
dipped-hem-cut = Auf der Linie schneiden, eine Stofflage nach der anderen.
    .check = Die neue Kante misst rundum { $length }.
    .tolerance = { $off } mehr oder weniger
    .remedy = An der vorderen und der hinteren Mitte falten, links auf rechts. Wo sich beide unterscheiden, die tiefere an die andere angleichen.
