### Der Zuschnittplan jedes Stoffes und die anderen Arten, ihn zuzuschneiden, gesagt von `furbelow cutting`.

# $usable: von der Breite, ohne die Webkanten.
ways-cloth = { $cloth }: { $length }, { $width } breit, davon { $usable } nutzbar
ways-cloth-folded = { $cloth }: { $length }, { $width } breit, davon { $usable } nutzbar, der Länge nach gefaltet
ways-spare = Reserve in der Breite: { $spare }

## Der Plan

ways-section = { $across ->
    [yes] Abschnitt { $number }, { $length } vom Ballen, Streifenbahnen über die Breite
   *[no] Abschnitt { $number }, { $length } vom Ballen
 }
ways-tapes = { $edge ->
    [start] Klebestreifen vom Anfang: { $tapes }
    [fold] Klebestreifen vom Bruch: { $tapes }
   *[edge] Klebestreifen von der langen Kante: { $tapes }
 }
# $cuts: die Zeichen und Längen dessen, was daraus geschnitten wird.
ways-lane = { $layer ->
    [flat] Streifenbahn { $number }, { $depth } hoch: { $cuts }
    [fold] Streifenbahn { $number }, { $depth } hoch, am Bruch: { $cuts }
    [upper] Streifenbahn { $number }, { $depth } hoch, in der oberen Lage: { $cuts }
   *[under] Streifenbahn { $number }, { $depth } hoch, in der unteren Lage: { $cuts }
 }
# Ihr Rand ist die Webkante.
ways-lane-selvedge = { $layer ->
    [upper] Streifenbahn { $number }, { $depth } hoch, an der Webkante der oberen Lage: { $cuts }
    [under] Streifenbahn { $number }, { $depth } hoch, an der Webkante der unteren Lage: { $cuts }
   *[flat] Streifenbahn { $number }, { $depth } hoch, an einer Webkante: { $cuts }
 }
ways-over = bleibt übrig
ways-panels = { $how ->
    [sides] Abschnitt { $number }, { $length } vom Ballen, Bahnen einzeln angezeichnet, gerade Schnitte von Seite zu Seite
   *[cut] Abschnitt { $number }, { $length } vom Ballen, Bahnen einzeln angezeichnet, mit der Stoffschere ausgeschnitten
 }
ways-panel = { $mark }: { $from-end } bis { $to-end } vom Ende, { $from-edge } bis { $to-edge } von der langen Kante

## Die Kosten

ways-cost = Kosten { $cost }
ways-costs = { $all }: Stoff { $cloth }, { ways-joins } { $joins-cost }, { ways-set-ups } { $set-ups-cost }, { ways-cuts } { $cuts-cost }
ways-joins = { $joins ->
    [one] { $joins } Verbindungsnaht
   *[other] { $joins } Verbindungsnähte
 }
ways-set-ups = { $set-ups ->
    [one] { $set-ups } Mal auslegen
   *[other] { $set-ups } Mal auslegen
 }
ways-cuts = { $marked ->
    [yes] { $cuts ->
        [one] { $cuts } Schnitt und Linien
       *[other] { $cuts } Schnitte und Linien
     }
   *[no] { $cuts ->
        [one] { $cuts } Schnitt
       *[other] { $cuts } Schnitte
     }
 }
ways-unpriced = der Stoff hat keinen Preis, darum zählt ein Meter als 1
ways-bound = Kein Plan kostet weniger als { $bound }, { $share } darunter.

## Was übrig bleibt, und die anderen Arten

ways-offcuts = Reste, die sich lohnen: { $offcuts }
ways-offcut = { $length } × { $width } von Abschnitt { $section }
ways-none = keine
ways-least = der wenigste Stoff für jede Zahl von Verbindungsnähten und Abschnitten:
ways-way = { $joins ->
    [0] { $length } ohne Verbindungsnaht in { $sections }, Kosten { $cost }
    [one] { $length } mit { $joins } Verbindungsnaht in { $sections }, Kosten { $cost }
   *[other] { $length } mit { $joins } Verbindungsnähten in { $sections }, Kosten { $cost }
 }
ways-sections = { $sections ->
    [one] { $sections } Abschnitt
   *[other] { $sections } Abschnitten
 }
ways-chosen = gewählt
ways-not-proven = nicht bewiesen

## Wie eine Art gewählt wird; die Schlüssel sind die einer Werkstattdatei

ways-pick-here = Weniger Verbindungsnähte oder Abschnitte: --most-joins N und --most-sections N angeben, hier und bei `make`,
ways-pick-room = oder `most joins: N` und `most sections: N` in der Werkstatt schreiben. Darin wird die billigste Art genommen: für
ways-pick-within = weniger Stoff mit mehr Verbindungsnähten `join price` und `setup price` der Werkstatt senken.
