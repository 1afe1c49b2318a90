### Eine Kante von Hand in kleine runde Falten ziehen und überwendlich an die Kante nähen, die sie trägt.

cartridge-pleats-title = { PIECE($edge) } mit Stiftelfalten an { PIECE($to) } nähen
cartridge-pleats-aim = { $cloth } Stoff stehen auf { $length }, etwa { $pleats } Falten.

## Umbügeln und markieren

cartridge-pleats-turn = { EDGE($edge, at: "start") } { $turn } auf die linke Stoffseite umbügeln.
cartridge-pleats-turn-carrier = { EDGE($to, at: "start") } { $turn } auf die linke Stoffseite umbügeln.
cartridge-pleats-mark-ring = { $parts ->
    [8] Beide Brüche in Achtel teilen und markieren, zuerst an der Seitennaht: { PIECE($edge) } alle { $cloth-part }, { PIECE($to) } alle { $part }.
   *[4] Beide Brüche in Viertel teilen und markieren, zuerst an der Seitennaht: { PIECE($edge) } alle { $cloth-part }, { PIECE($to) } alle { $part }.
 }
cartridge-pleats-mark-flat = { $parts ->
    [8] Beide Brüche in Achtel teilen und markieren: { PIECE($edge) } alle { $cloth-part }, { PIECE($to) } alle { $part }.
   *[4] Beide Brüche in Viertel teilen und markieren: { PIECE($edge) } alle { $cloth-part }, { PIECE($to) } alle { $part }.
 }
cartridge-pleats-dots = Auf der linken Stoffseite von { PIECE($edge) } { $rows } Reihen Punkte markieren, die erste { $first-row } unter dem Bruch, von Reihe zu Reihe { $apart }. In jeder Reihe alle { $stitch } ein Punkt, jeder genau unter dem darüber.
    .check = In jeder Reihe sind etwa { $dots } Punkte.

## Zusammenziehen

# $runs, $per-run: siehe `rows-runs`.
cartridge-pleats-rows = { $in-runs ->
    [yes] { $per-run ->
        [one] Mit starkem Faden von Punkt zu Punkt Vorstiche nähen, in { $runs } Teilstrecken, je von einer Markierung zur nächsten. Jede Teilstrecke in jeder Reihe mit neuem Faden und Knoten beginnen und an ihrem Ende { $tail } hängen lassen.
       *[other] { $parts ->
            [8] Mit starkem Faden von Punkt zu Punkt Vorstiche nähen, in { $runs } Teilstrecken über je { $per-run } Achtel. Jede Teilstrecke in jeder Reihe mit neuem Faden und Knoten beginnen und an ihrem Ende { $tail } hängen lassen.
           *[4] Mit starkem Faden von Punkt zu Punkt Vorstiche nähen, in { $runs } Teilstrecken über je { $per-run } Viertel. Jede Teilstrecke in jeder Reihe mit neuem Faden und Knoten beginnen und an ihrem Ende { $tail } hängen lassen.
        }
    }
   *[no] Mit starkem Faden von Punkt zu Punkt Vorstiche nähen, Reihe für Reihe. Jede Reihe mit neuem Faden und Knoten beginnen und an ihrem Ende { $tail } hängen lassen.
 }
    .check = Die Stiche aller Reihen stehen untereinander.
    .remedy = Die Reihe, die nicht passt, herausziehen und neu nähen: Ungleiche Reihen geben keine Falten.
cartridge-pleats-draw = { $in-runs ->
    [yes] { $parts ->
        [8] Alle Reihen zusammen anziehen, Teilstrecke für Teilstrecke, bis jedes Achtel { $part } misst. Am Ende jeder Teilstrecke eine Stecknadel quer einstecken und die Enden herumwickeln.
       *[4] Alle Reihen zusammen anziehen, Teilstrecke für Teilstrecke, bis jedes Viertel { $part } misst. Am Ende jeder Teilstrecke eine Stecknadel quer einstecken und die Enden herumwickeln.
    }
   *[no] { $parts ->
        [8] Alle Reihen zusammen anziehen, bis jedes Achtel { $part } misst. An ihrem Ende eine Stecknadel quer einstecken und die Enden herumwickeln.
       *[4] Alle Reihen zusammen anziehen, bis jedes Viertel { $part } misst. An ihrem Ende eine Stecknadel quer einstecken und die Enden herumwickeln.
    }
 }
    .check = Etwa { $pleats } Falten stehen auf { $length } nebeneinander.
    .tolerance = { $off } mehr oder weniger
    .remedy = Die Falten auf den Fäden verschieben, bis sie gleichmäßig sind.
cartridge-pleats-knot = { $in-runs ->
    [yes] Diese Stecknadeln herausnehmen, die Enden jeder Teilstrecke miteinander verknoten und auf { $knot } kürzen.
   *[no] Diese Stecknadel herausnehmen, die Enden aller Reihen miteinander verknoten und auf { $knot } kürzen.
 }

## Annähen

cartridge-pleats-pin = Den Bruch mit den Falten rechts auf rechts an den Bruch von { PIECE($to) } legen, Markierung auf Markierung, und dort { pin }.
cartridge-pleats-whip = Jede Falte mit zwei überwendlichen Stichen an den Bruch von { PIECE($to) } nähen: insgesamt etwa { $stitches }.
    .check = Keine Falte ist ausgelassen.
    .remedy = Eine ausgelassene Falte mit zwei eigenen Stichen annähen.
