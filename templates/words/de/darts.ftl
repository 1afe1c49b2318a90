### Abnäher in eine Oberkante nähen, so dass sie sich zur Taille schließt.
### $intake: was ein Abnäher nimmt; $half: die Hälfte davon; $long: von der Schnittkante bis zur Spitze; $leg: entlang einer Seite.

darts-title = { $count ->
    [one] { $count } Abnäher in { EDGE($edge) } nähen
   *[other] { $count } Abnäher in { EDGE($edge) } nähen
 }
    .number = { $cloth } → { $length }
darts-aim = { $count ->
    [one] Auf der Nahtlinie: { $cloth } - { $length } = { $taken } nimmt { $count } Abnäher.
   *[other] Auf der Nahtlinie: { $cloth } - { $length } = { $taken } nehmen { $count } Abnäher, jeder { $intake }.
 }

## Anzeichnen

darts-mark = { $ring ->
    [yes] Auf der linken Seite die Mitten der Abnäher an { EDGE($edge, case: "dative") } markieren, alle { $every }, { $count } insgesamt, die erste { $first } von { side-seam } entfernt.
   *[no] Auf der linken Seite die Mitten der Abnäher an { EDGE($edge, case: "dative") } markieren, alle { $every }, { $count } insgesamt, die erste { $first } von einem Ende entfernt.
 }
    .check = { $ring ->
        [yes] Die letzte Markierung liegt auf der anderen Seite { $first } von der Naht entfernt.
       *[no] Die letzte Markierung liegt { $first } vom anderen Ende entfernt.
     }
    .tolerance = { $mark-off } mehr oder weniger
    .remedy = Was übrig ist, auf alle Markierungen verteilen.
darts-legs = Von jeder Markierung eine Linie von { $long } gerade nach unten ziehen, im rechten Winkel zur Kante: Ihr Ende ist die Spitze. An der Kante zu beiden Seiten der Mitte { $half } markieren und von dort beide Schenkel mit dem Lineal zur Spitze ziehen.
    .check = Beide Schenkel sind { $leg } lang.
    .tolerance = { $mark-off } mehr oder weniger
    .remedy = Die Mittellinie steht schief: im rechten Winkel zur Kante anlegen und die Schenkel neu ziehen.

## Nähen

darts-fold = Jeden Abnäher an der Mittellinie falten, rechts auf rechts, so dass ein Schenkel auf dem anderen liegt. Quer zum Schenkel feststecken.
darts-sew = Jeden Abnäher von der Kante aus auf dem Schenkel steppen, { $leg }, { $stitch }, an der Kante ein paar Stiche zurück. Die letzten drei Stiche genau auf dem Bruch auslaufen lassen.
    .check = An der Kante liegen die Stiche { $half } vom Bruch entfernt.
    .tolerance = { $hair-off } mehr oder weniger
    .remedy = Die obere Hälfte auftrennen und auf der Linie neu nähen.
darts-knot = An jeder Spitze { $tail } Fäden hängen lassen und dicht am Stoff doppelt verknoten; dort nicht zurücknähen.
darts-press = Jeden Abnäher flach bügeln, wie er genäht ist, dann seinen Bruch zur nächsten Mitte hin, vorn oder hinten. Was über die Kante steht, bündig abschneiden.
    .check = Von rechts ist an den Spitzen keine Beule zu sehen.
    .remedy = Die letzten { $last } neu nähen, flacher auslaufend.
darts-measure = { $open ->
    [yes] { EDGE($edge, at: "start") } an der Schnittkante messen, von Ende zu Ende samt beiden Zugaben der offenen Naht: { $lies }.
   *[no] { EDGE($edge, at: "start") } an der Schnittkante messen: { $lies }.
 }
    .check = Sie ist { $lies } lang.
    .tolerance = { $off } mehr oder weniger
    .remedy = Zu lang: jeden Abnäher eine Spur außerhalb seiner Linie nähen, zur Spitze hin auslaufend. Zu kurz: eine Spur innerhalb.
