### Eine Kante von Hand in kleine runde Falten ziehen und überwendlich an die Kante nähen, die sie trägt.

cartridge-pleats-title = { PIECE($edge) } mit Stiftelfalten an { PIECE($to) } nähen
    .number = { $cloth } → { $length }
cartridge-pleats-aim = { $cloth } Stoff stehen auf { $length }, etwa { $pleats } Falten.

## Umbügeln und markieren

cartridge-pleats-turn = { EDGE($edge, at: "start") } { $turn } auf die linke Stoffseite umbügeln.
cartridge-pleats-turn-carrier = { EDGE($to, at: "start") } { $turn } auf die linke Stoffseite umbügeln.
cartridge-pleats-mark-ring = { $parts ->
    [8] Beide Brüche in Achtel teilen und markieren, die erste Markierung an der Seitennaht: { PIECE($edge) } alle { $cloth-part }, { PIECE($to) } alle { $part }.
   *[4] Beide Brüche in Viertel teilen und markieren, die erste Markierung an der Seitennaht: { PIECE($edge) } alle { $cloth-part }, { PIECE($to) } alle { $part }.
 }
cartridge-pleats-mark-flat = { $parts ->
    [8] Beide Brüche in Achtel teilen und markieren: { PIECE($edge) } alle { $cloth-part }, { PIECE($to) } alle { $part }.
   *[4] Beide Brüche in Viertel teilen und markieren: { PIECE($edge) } alle { $cloth-part }, { PIECE($to) } alle { $part }.
 }
cartridge-pleats-dots = Auf der linken Stoffseite von { PIECE($edge) } { $rows } Reihen Punkte markieren, die erste { $first-row } unter dem Bruch, die Reihen mit { $apart } Abstand. In jeder Reihe liegen die Punkte { $stitch } auseinander, jeder unter dem darüber.
    .check = Es sind etwa { $dots } Punkte in jeder Reihe.

## Zusammenziehen

# $runs, $per-run: siehe `rows-runs`.
cartridge-pleats-rows = { $in-runs ->
    [yes] { $per-run ->
        [one] Mit starkem Faden Vorstiche von Punkt zu Punkt nähen, in { $runs } Teilstrecken, je von einer Markierung zur nächsten. Jede Teilstrecke in jeder Reihe mit einem neuen Faden und einem Knoten beginnen und am Ende { $tail } hängen lassen.
       *[other] { $parts ->
            [8] Mit starkem Faden Vorstiche von Punkt zu Punkt nähen, in { $runs } Teilstrecken über je { $per-run } Achtel. Jede Teilstrecke in jeder Reihe mit einem neuen Faden und einem Knoten beginnen und am Ende { $tail } hängen lassen.
           *[4] Mit starkem Faden Vorstiche von Punkt zu Punkt nähen, in { $runs } Teilstrecken über je { $per-run } Viertel. Jede Teilstrecke in jeder Reihe mit einem neuen Faden und einem Knoten beginnen und am Ende { $tail } hängen lassen.
        }
    }
   *[no] Mit starkem Faden Vorstiche von Punkt zu Punkt nähen, eine Reihe nach der anderen. Jede Reihe mit einem neuen Faden und einem Knoten beginnen und am Ende { $tail } hängen lassen.
 }
    .check = Die Stiche aller Reihen stehen untereinander.
    .remedy = Die Reihe, die nicht passt, herausziehen und neu nähen: Ungleiche Reihen geben keine Falten.
cartridge-pleats-draw = { $in-runs ->
    [yes] { $parts ->
        [8] Alle Reihen gemeinsam, Teilstrecke für Teilstrecke, zusammenziehen, bis jedes Achtel { $part } misst. Am Ende jeder Teilstrecke eine Stecknadel quer einstecken und die Fadenenden herumwickeln.
       *[4] Alle Reihen gemeinsam, Teilstrecke für Teilstrecke, zusammenziehen, bis jedes Viertel { $part } misst. Am Ende jeder Teilstrecke eine Stecknadel quer einstecken und die Fadenenden herumwickeln.
    }
   *[no] { $parts ->
        [8] Alle Reihen gemeinsam zusammenziehen, bis jedes Achtel { $part } misst. An ihrem Ende eine Stecknadel quer einstecken und die Fadenenden herumwickeln.
       *[4] Alle Reihen gemeinsam zusammenziehen, bis jedes Viertel { $part } misst. An ihrem Ende eine Stecknadel quer einstecken und die Fadenenden herumwickeln.
    }
 }
    .check = Etwa { $pleats } Falten stehen auf { $length } nebeneinander.
    .tolerance = { $off } mehr oder weniger
    .remedy = Die Falten auf den Fäden verschieben, bis sie gleichmäßig sind.

cartridge-pleats-knot = { $in-runs ->
    [yes] Diese Stecknadeln herausnehmen, die Fadenenden jeder Teilstrecke miteinander verknoten und auf { $knot } kürzen.
   *[no] Diese Stecknadel herausnehmen, die Fadenenden aller Reihen miteinander verknoten und auf { $knot } kürzen.
 }

## Annähen

cartridge-pleats-pin = Den gefalteten Bruch rechts auf rechts an den Bruch von { PIECE($to) } legen, Markierung auf Markierung, und an den Markierungen { pin }.
cartridge-pleats-whip = Jede Falte mit zwei überwendlichen Stichen an den Bruch von { PIECE($to) } nähen: insgesamt etwa { $stitches } Stiche.
    .check = Keine Falte ist ausgelassen.
    .remedy = Eine ausgelassene Falte mit zwei eigenen Stichen annähen.
