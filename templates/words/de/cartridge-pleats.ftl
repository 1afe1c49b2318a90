### Eine Kante von Hand in kleine runde Falten ziehen und überwendlich an die Kante nähen, die sie trägt.

cartridge-pleats-title = { PIECE($edge) } mit Stiftelfalten an { PIECE($to) } nähen
cartridge-pleats-aim = { $cloth } Stoff stehen auf { $length }, etwa { $pleats } Falten.

## Umbügeln und markieren

cartridge-pleats-turn = { EDGE($edge, at: "start") } { $turn } auf die linke Stoffseite umbügeln.
cartridge-pleats-turn-carrier = { EDGE($to, at: "start") } { $turn } auf die linke Stoffseite umbügeln.
cartridge-pleats-dots = Entlang { EDGE($edge, case: "dative") } alle { $stitch } einen Punkt markieren, { $first-row } unter dem Bruch.
    .check = Es sind etwa { $dots } Punkte.

## Zusammenziehen

cartridge-pleats-rows = Auf den Punkten { $rows } Reihen Vorstiche nähen, { $apart } Abstand, mit starkem Faden, jeder Stich genau unter dem darüber; lange Fadenenden lassen.
    .check = Die Stiche aller Reihen stehen untereinander.
    .remedy = Die Reihe, die nicht passt, herausziehen und neu nähen: Ungleiche Reihen geben keine Falten.
cartridge-pleats-draw = Alle Reihen zusammen auf { $length } zusammenziehen und die Enden verknoten.
    .check = Etwa { $pleats } Falten stehen auf { $length } nebeneinander.
    .tolerance = { $off } mehr oder weniger
    .remedy = Die Falten auf den Fäden verschieben, bis sie gleichmäßig sind.

## Annähen

cartridge-pleats-whip = { EDGE($edge, at: "start") } rechts auf rechts an { EDGE($to) } legen und jede Falte mit zwei überwendlichen Stichen annähen.
    .check = Keine Falte ist ausgelassen.
    .remedy = Eine ausgelassene Falte mit zwei eigenen Stichen annähen.
