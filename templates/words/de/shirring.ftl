### Einen Ring mit Nähten aus Gummifaden zusammenziehen.

shirring-title = { EDGE($edge, at: "start") } mit Gummifaden smoken
    .number = { $cloth } → { $length }
shirring-aim = { $rows } Nähte mit Gummifaden ({ $thread }) ziehen { $cloth } auf { $length } zusammen.

## Ausprobieren

shirring-wind = Den Gummifaden ({ $thread }) von Hand auf die Spule wickeln, ohne ihn zu dehnen. Der Oberfaden bleibt, wie er ist.
shirring-iron = Das Bügeleisen auf Dampf stellen: zwei Punkte oder mehr, bis es dampft. Es wird über die Reihen gehalten und berührt sie nicht.
shirring-try = { $stitch } einstellen und eine Probe nähen: { $rows } Nähte auf einem Streifen von { $trial }.
    .check = Gedämpft zieht er sich auf { $trial-short } zusammen.
    .tolerance = { $trial-off } mehr oder weniger
    .remedy = Länger: den Stich verlängern oder die Spulenspannung etwas fester stellen. Kürzer: umgekehrt.

## Die Nähte

shirring-mark = Auf der rechten Stoffseite { $rows } Linien anzeichnen: die erste { $from-edge } neben { EDGE($edge, case: "dative") }, die anderen mit { $spacing } Abstand.
shirring-sew = Jede Linie rundum steppen, { $cloth }, rechte Stoffseite oben, von { side-seam } aus. Ab der zweiten Naht den Stoff flach gedehnt halten. Nicht verriegeln; an Anfang und Ende { $tail } von beiden Fäden lassen.
    .check = Die Nähte laufen nebeneinander, kein Stich ist ausgelassen.
    .remedy = Ausgelassene Stiche: die Strecke über die Lücke neu steppen.
shirring-tails = Die Fadenenden jeder Naht auf die linke Stoffseite ziehen, das Ende mit dem Anfang verknoten und auf { $knot } kürzen.
shirring-steam = Das Bügeleisen knapp über die Nähte halten und dämpfen, ohne sie zu berühren.
    .check = Die Kante misst ungedehnt { $length } und dehnt sich auf { $cloth }.
    .tolerance = { $off } mehr oder weniger
    .remedy = Zu lang: zwischen zwei Nähten eine weitere steppen. Zu kurz: einmal dehnen und neu messen.
