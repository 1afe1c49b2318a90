### Einen langen Schrägstreifen aus einem Quadrat schneiden.
### $lines: wie viele Streifenbreiten im Quadrat nebeneinander liegen.

bias-strip-title = { PIECE($piece) } als Schrägstreifen zuschneiden
bias-strip-aim = Ein Quadrat von { $side } gibt { $gives } Streifen, { $width } breit, in 45 Grad zusammengesetzt.
bias-strip-cut-across = Auf dem Quadrat für { PIECE($piece) } eine Linie von Ecke zu Ecke ziehen, { $diagonal } lang, und darauf schneiden.
    .check = Beide Hälften sind gleich und haben einen rechten Winkel.
    .remedy = Das Quadrat beschneiden, bis seine Seiten gleich sind, und neu schneiden.
bias-strip-first-seam = Die Hälften rechts auf rechts legen, so dass zwei gerade Seiten aufeinandertreffen. Die Spitzen stehen an beiden Enden { $seam-width } über. { $seam-width } neben diesen Seiten steppen, { $stitch }, und die Nahtzugaben auseinanderbügeln.
    .check = Aufgeklappt ist es ein schräges Viereck, dessen lange Kanten im schrägen Fadenlauf liegen.
    .remedy = Ist es ein Dreieck, auftrennen und zwei andere gerade Seiten verbinden.
bias-strip-lines = Auf der linken Stoffseite entlang der schrägen Kante Linien ziehen, { $width } auseinander: { $lines } Streifen. Was hinter der letzten Linie übrig ist, abschneiden.
    .check = Jeder Streifen ist { $width } breit.
    .tolerance = { $off } mehr oder weniger
    .remedy = Die Linie von der Kante aus neu ziehen.
bias-strip-tube = Die beiden anderen geraden Seiten rechts auf rechts zum Schlauch legen, um einen Streifen versetzt. Die erste Linie trifft auf die Kante.
bias-strip-second-seam = { $seam-width } neben der Kante Linie auf Linie stecken und dort steppen, { $stitch }. Die Nahtzugaben auseinanderbügeln.
    .check = An jedem Ende steht ein Streifen vor.
    .remedy = Steht keiner vor, ist der Schlauch bündig geschlossen: auftrennen und um eine Linie versetzen.
bias-strip-cut = Am vorstehenden Streifen beginnen und auf der Linie rundum bis zum Ende schneiden.
    .check = Es ist ein einziger Streifen von { $gives }.
    .remedy = Wo die Schere von der Linie abkam, auf der nächsten weiterschneiden.
bias-strip-trim = Auf { $length } kürzen, beide Enden rechtwinklig.
