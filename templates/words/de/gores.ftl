### Bahnen zuschneiden, die zum Saum hin weiter werden, zwei aus jedem Rechteck durch eine schräge Linie.
### $gores: wie viele; $odd: Das letzte Rechteck gibt nur eine her.

gores-title = { PIECE($piece) } zu Keilbahnen zuschneiden
gores-aim = { $gores } Keilbahnen, fertig jede oben { $top } und am Saum { $hem } breit.
gores-lay = Das Rechteck für { PIECE($piece) } flach auslegen, { $wide } breit und { $high } hoch, die obere Kante abgewandt.
gores-mark-pair = An der oberen Kante { $narrow } von der linken Ecke markieren, an der unteren Kante { $broad } von der linken Ecke. Von Markierung zu Markierung eine gerade Linie ziehen.
    .check = Die Linie ist { $slant } lang.
    .tolerance = { $off } mehr oder weniger
    .remedy = Beide Markierungen noch einmal von der linken Seite aus messen.
# Stoff mit Richtung: Keine Keilbahn darf auf dem Kopf stehen.
gores-mark-one = An der oberen Kante { $narrow } von der linken Ecke markieren. Von dort eine gerade Linie zur unteren rechten Ecke ziehen.
    .check = { gores-mark-pair.check }
    .tolerance = { gores-mark-pair.tolerance }
    .remedy = { gores-mark-pair.remedy }
gores-cut = In einem Zug auf der Linie schneiden, die Schere flach auf dem Tisch. An den schrägen Seiten nicht ziehen.
gores-name = { $odd ->
    [yes] Das schmale Ende jeder Keilbahn als oben kennzeichnen. Vom letzten Rechteck eine Keilbahn behalten; die andere bleibt übrig.
   *[no] Das schmale Ende jeder Keilbahn als oben kennzeichnen. Später jede gerade Seite an eine schräge nähen.
 }
