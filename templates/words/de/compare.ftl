### Was sich zwischen zwei Kleidungsstücken für die Näherin ändert, gesagt von `furbelow compare`, und von `furbelow amend` von einer neuen Anleitung.

compare-alike = für die Arbeit ändert sich nichts

## Überschriften

compare-numbers = Zahlen
compare-materials = Material
compare-totals = insgesamt
compare-steps = Schritte

## Zeilen; dahinter steht, was es war und ist

compare-bought = zu kaufen: { $material }
compare-finished = fertige Länge
compare-cost = Kosten
compare-hours = Stunden
compare-layouts = so oft wird der Tisch ausgelegt
compare-joins = Verbindungsnähte in Streifen
compare-actions = Handgriffe
compare-price = Preis

compare-came = neu: { $after }
compare-went = fällt weg, war { $before }

compare-step = { $kind ->
    [new] neu: { $title }
    [gone] fällt weg: { $title }
   *[changed] geändert: { $title }
 }
