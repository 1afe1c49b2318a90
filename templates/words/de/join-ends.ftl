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

join-ends-sew = { $length } steppen, { $seam-width } neben den Enden, { $stitch }; an beiden Enden verriegeln. Beide Nahtzugaben mit dem Fingernagel zur selben Seite streichen, gleich zu welcher.
# Der Streifen wurde vorher aus Stücken zusammengenäht.
join-ends-sew-pieced = { join-ends-sew }
    .check = Die Nahtzugabe steht auf der linken Stoffseite, wie die der Verbindungsnähte.
join-ends-sew-panels = { $length } steppen, { $seam-width } neben der Kante, { $stitch }; an beiden Enden verriegeln. Beide Nahtzugaben mit dem Fingernagel zur selben Seite streichen, bei jeder Naht in derselben Richtung.
join-ends-sew-panels-pieced = { join-ends-sew-panels }
    .check = Alle Nahtzugaben stehen auf der linken Stoffseite, wie die der Verbindungsnähte.

# Die Naht bleibt auf einer Strecke offen: Jede Stelle wird zuerst markiert.
seam-open-top = Auf beiden Kanten, die zusammengenäht werden, das Ende der Öffnung markieren, { $open } unter der oberen Kante.
seam-open-hem = Auf beiden Kanten, die zusammengenäht werden, den Anfang des Schlitzes markieren, { $open-at-hem } über der unteren Kante.
seam-open-gap = Auf beiden Kanten, die zusammengenäht werden, eine Öffnung markieren, von { $gap-from } bis { $gap-to } unter der oberen Kante.
join-ends-sew-open = { $seam-width } neben den Enden steppen, insgesamt { $sewn }, { $stitch }. An jeder Markierung anhalten und verriegeln; was dahinter liegt, offen lassen. Die Nahtzugaben mit den Fingern auseinanderstreichen.
    .check = Die Naht beginnt und endet an ihren Markierungen.
    .remedy = Was über eine Markierung hinaus genäht ist, auftrennen und dort neu verriegeln.
# Nur eine der Nähte bleibt offen.
join-ends-sew-open-panels = { $seam-width } neben den Kanten steppen, { $stitch }: eine Naht insgesamt { $sewn }, an jeder Markierung anhalten und verriegeln, die anderen Nähte ganz durch, { $length }. Die Nahtzugaben mit den Fingern auseinanderstreichen.
    .check = { join-ends-sew-open.check }
    .remedy = { join-ends-sew-open.remedy }

## Messen

join-ends-measure = Die untere Kante von { PIECE($lowest) } rundum messen: { $round }.
    .check = Der Ring misst rundum { $round }.
    .tolerance = { $off } mehr oder weniger
    .remedy = { $panels ->
        [yes] Ist er zu lang, eine Naht etwas breiter neu steppen; ist er zu kurz, eine auftrennen und schmaler steppen.
       *[no] Ist er zu lang, die Naht etwas breiter neu steppen; ist er zu kurz, auftrennen und schmaler steppen.
     }
