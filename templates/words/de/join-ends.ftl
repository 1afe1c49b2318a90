### Die beiden Enden eines Streifens zum Ring schließen, oder mehrere Bahnen zu einem Ring.
### $pieces: die Stufen, durch die die Naht läuft. -panels: $copies davon werden ein Ring.

join-ends-title = { PIECE($pieces) } zum Ring schließen
    .number = { $seam-width }
join-ends-title-panels = { PIECE($pieces) } zum Ring zusammennähen
    .number = { $seam-width }
join-ends-aim = { COUNT($pieces) ->
    [one] { PIECE($pieces, at: "start") } ist geschlossen.
   *[other] { PIECE($pieces, at: "start") } sind geschlossen.
 }

## Nähen

# Nur in den Sätzen darunter gesagt: was aus den Zugaben wird; eine lange Naht wird mit einem eigenen Satz gebügelt.
join-ends-margins = { $margins ->
    [ironed] { "" }
    [apart] { " " }Die Nahtzugaben mit dem Fingernagel auseinanderstreichen.
   *[aside] { " " }Beide Nahtzugaben mit dem Fingernagel zur selben Seite streichen, gleich zu welcher.
 }
join-ends-margins-panels = { $margins ->
    [ironed] { "" }
    [apart] { " " }Die Nahtzugaben aller Nähte mit dem Fingernagel auseinanderstreichen.
   *[aside] { " " }Beide Nahtzugaben mit dem Fingernagel zur selben Seite streichen, bei jeder Naht in derselben Richtung.
 }
join-ends-margins-open = { $margins ->
    [ironed] { "" }
   *[apart] { " " }Die Nahtzugaben mit den Fingern auseinanderstreichen.
 }
join-ends-margins-open-panels = { $margins ->
    [ironed] { "" }
   *[apart] { " " }Die Nahtzugaben aller Nähte mit den Fingern auseinanderstreichen.
 }
join-ends-sew = { $length } steppen, { $seam-width } neben den Enden, { $stitch }; an beiden Enden verriegeln.{ join-ends-margins }
# Der Streifen wurde vorher aus Stücken zusammengenäht.
join-ends-sew-pieced = { join-ends-sew }
    .check = Die Nahtzugabe steht auf der linken Stoffseite, wie die der Verbindungsnähte.
join-ends-sew-panels = Jede Naht steppen, { $length }, { $seam-width } neben der Kante, { $stitch }; an beiden Enden verriegeln.{ join-ends-margins-panels }
join-ends-sew-panels-pieced = { join-ends-sew-panels }
    .check = Alle Nahtzugaben stehen auf der linken Stoffseite, wie die der Verbindungsnähte.

# Die Naht bleibt auf einer Strecke offen: Jede Stelle wird zuerst markiert.
seam-open-top = { $which ->
    [only] Auf der linken Stoffseite markieren, wo die Öffnung endet: { $open } unter der oberen Kante, an beiden Kanten, die zusammengenäht werden.
   *[numbered] Auf der linken Stoffseite markieren, wo die Öffnung endet: { $open } unter der oberen Kante, an beiden Kanten von { seam-named }.
 }
seam-open-hem = { $which ->
    [only] Auf der linken Stoffseite markieren, wo der Schlitz beginnt: { $open-at-hem } über der unteren Kante, an beiden Kanten, die zusammengenäht werden.
   *[numbered] Auf der linken Stoffseite markieren, wo der Schlitz beginnt: { $open-at-hem } über der unteren Kante, an beiden Kanten von { seam-named }.
 }
seam-open-gap = { $which ->
    [only] Auf der linken Stoffseite eine Lücke von { $gap-from } bis { $gap-to } unter der oberen Kante markieren, an beiden Kanten, die zusammengenäht werden.
   *[numbered] Auf der linken Stoffseite eine Lücke von { $gap-from } bis { $gap-to } unter der oberen Kante markieren, an beiden Kanten von { seam-named }.
 }
seam-sewn = { $opens-above ->
    [yes] von der Markierung der Öffnung
   *[no] von der oberen Kante
 }{ $opens-between ->
    [yes] { " " }bis zur oberen Markierung der Lücke, dann von ihrer unteren
   *[no] { "" }
 } { $opens-below ->
    [yes] bis zur Markierung des Schlitzes
   *[no] bis zur unteren Kante
 }
join-ends-sew-open = { $seam-width } neben den Enden steppen, { seam-sewn }, insgesamt { $sewn }, { $stitch }, an jedem Ende und jeder Markierung ein paar Stiche zurück.{ join-ends-margins-open }
    .check = Kein Stich liegt hinter einer Markierung, und was offen bleiben soll, ist offen.
    .remedy = Was über eine Markierung hinaus genäht ist, auftrennen und dort neu verriegeln.
# Nur eine der Nähte bleibt offen: zuerst die anderen.
join-ends-sew-closed = { $others ->
    [one] { $seam-width } von den Kanten nähen, { $stitch }, an beiden Enden ein paar Stiche zurück. Die Naht ohne Markierung von Kante zu Kante nähen, { $length }.
   *[other] { $seam-width } von den Kanten nähen, { $stitch }, an beiden Enden jeder Naht ein paar Stiche zurück. Die { $others } Nähte ohne Markierung von Kante zu Kante nähen, je { $length }.
 }
    .check = Keine Naht beginnt oder endet vor einer Kante.
    .remedy = Über das Ende der Naht hinweg bis zur Kante weiternähen.
join-ends-sew-open-panels = Die markierte Naht nur { seam-sewn } nähen, zusammen { $sewn }, an jedem Ende und jeder Markierung ein paar Stiche zurück.{ join-ends-margins-open-panels }
    .check = { join-ends-sew-open.check }
    .remedy = { join-ends-sew-open.remedy }

join-ends-press = { $panels ->
    [yes] Die Nahtzugaben aller Nähte von links mit dem Bügeleisen auseinanderbügeln, auf ganzer Länge.
   *[no] Die Nahtzugaben der Naht von links mit dem Bügeleisen auseinanderbügeln, auf ganzer Länge.
 }
    .check = Auf der rechten Seite liegt neben keiner Naht eine Falte.
    .remedy = Die beiden Teile an der Naht auseinanderziehen und noch einmal bügeln.

## Messen

join-ends-measure = { $open-ends ->
    [yes] Die untere Kante von { PIECE($lowest) } messen, von einem Schnittende des Schlitzes rundum bis zum anderen: { $round }.
   *[no] Die untere Kante von { PIECE($lowest) } rundum messen: { $round }.
 }
    .check = { $open-ends ->
        [yes] Der Ring misst von Ende zu Ende { $round }.
       *[no] Der Ring misst rundum { $round }.
     }
    .tolerance = { $off } mehr oder weniger
    .remedy = { $panels ->
        [yes] Ist er zu lang, eine Naht etwas breiter neu steppen; ist er zu kurz, eine auftrennen und schmaler steppen.
       *[no] Ist er zu lang, die Naht etwas breiter neu steppen; ist er zu kurz, auftrennen und schmaler steppen.
     }
# Stoff, der sich weitet: oben ist er anders lang.
join-ends-measure-top = { $open-top ->
    [yes] Auch die obere Kante von { PIECE($highest) } messen, flach und ungezogen, von einem Schnittende der Öffnung rundum bis zum anderen: { $round-top }.
   *[no] Auch die obere Kante von { PIECE($highest) } rundum messen, flach und ungezogen: { $round-top }.
 }
    .check = Sie misst { $round-top }, ehe die Naht oben ihre Zugabe nimmt.
    .tolerance = { $off-top } mehr oder weniger
    .remedy = Ist sie zu lang, eine Naht oben etwas breiter steppen, bis { $run-out } darunter auf nichts auslaufend; ist sie zu kurz, so weit auftrennen und schmaler steppen.
