### Bahnen zuschneiden, die zum Saum hin weiter werden, Kopf an Fuß aus Rechtecken.
### $gores: wie viele; $odd: Das letzte Rechteck gibt weniger her als die anderen.

gores-title = { PIECE($piece) } zu Keilbahnen zuschneiden
gores-aim = { $gores } Keilbahnen, fertig jede oben { $top } und am Saum { $hem } breit.
gores-lay = { $turns ->
    [yes] Das Rechteck für { PIECE($piece) } flach hinlegen, linke Seite oben, { $wide } breit und { $high } hoch. Jede der { $wide } langen Seiten kann die obere sein.
   *[no] Das Rechteck für { PIECE($piece) } flach hinlegen, linke Seite oben, { $wide } breit und { $high } hoch, die obere Kante von sich weg.
 }
gores-mark-pair = An der oberen Kante { $narrow } von der linken Ecke markieren, an der unteren Kante { $broad } von der linken Ecke. Von Markierung zu Markierung eine gerade Linie ziehen.
    .check = Die Linie ist { $slant } lang.
    .tolerance = { $off } mehr oder weniger
    .remedy = Beide Markierungen noch einmal von der linken Seite aus messen.
# Stoff mit Richtung: Keine Keilbahn darf auf dem Kopf stehen.
gores-mark-one = An der oberen Kante { $narrow } von der linken Ecke markieren. Von dort eine gerade Linie zur unteren rechten Ecke ziehen.
    .check = { gores-mark-pair.check }
    .tolerance = { gores-mark-pair.tolerance }
    .remedy = { gores-mark-pair.remedy }

## Beide Seiten schräg, mehrere in einer Reihe

# Eine Sorte Keilbahnen im Ziel des Schritts.
gores-width = { $place ->
    [front] { $many } vorn, oben { $top } und am Saum { $hem }
    [back] { $many } hinten, oben { $top } und am Saum { $hem }
   *[side] { $many } an den Seiten, oben { $top } und am Saum { $hem }
 }
gores-aim-differ = { $gores } Keilbahnen, fertig: { $widths }.
gores-square = { $turns ->
    [yes] Das Rechteck für { PIECE($piece) } flach hinlegen, linke Seite oben, { $wide } breit und { $high } hoch. Jede der { $wide } langen Seiten kann die obere sein.
   *[no] Das Rechteck für { PIECE($piece) } flach hinlegen, linke Seite oben, { $wide } breit und { $high } hoch, die obere Kante von sich weg.
 }
    .check = Seine beiden Diagonalen sind { $diagonal } lang.
    .tolerance = { $off } mehr oder weniger
    .remedy = Vor dem Anzeichnen die obere und die untere Kante rechtwinklig zur Seite begradigen.
# Wo eine Linie eine Kante trifft: kein Abstand.
gores-corner = 0
gores-line = { $line } oben { $upper }, unten { $lower }
gores-mark = { $line } { $at }
gores-mark-row = { $which ->
    [first] { $times ->
        [one] Auf einem Rechteck an der oberen Kante von ihrer linken Ecke aus markieren: { $upper-marks }.
       *[other] Auf { $times } Rechtecken an der oberen Kante von ihrer linken Ecke aus markieren: { $upper-marks }.
    }
    [next] { $times ->
        [one] Auf einem weiteren Rechteck an der oberen Kante von ihrer linken Ecke aus markieren: { $upper-marks }.
       *[other] Auf { $times } weiteren Rechtecken an der oberen Kante von ihrer linken Ecke aus markieren: { $upper-marks }.
    }
    [last] { $times ->
        [one] Auf dem anderen Rechteck an der oberen Kante von ihrer linken Ecke aus markieren: { $upper-marks }.
       *[other] Auf den anderen { $times } Rechtecken an der oberen Kante von ihrer linken Ecke aus markieren: { $upper-marks }.
    }
   *[all] An der oberen Kante von ihrer linken Ecke aus markieren: { $upper-marks }.
 }
gores-mark-lower = Dort an der unteren Kante von ihrer linken Ecke aus markieren: { $lower-marks }.
gores-draw-row = Jede Linie gerade von ihrer oberen zu ihrer unteren Markierung ziehen.
    .check = { $alike ->
        [yes] Jede Linie ist { $longest } lang.
       *[no] Die kürzeste Linie ist { $shortest } lang, die längste { $longest }.
     }
    .tolerance = { $off } mehr oder weniger
    .remedy = Ihre beiden Markierungen noch einmal von den linken Ecken aus messen.
gores-name-row = { $which ->
    [first] { $times ->
        [one] Auf ein Rechteck an das schmale Ende jeder Keilbahn ihren Platz schreiben, von links nach rechts: { $places }.
       *[other] Auf { $times } Rechtecke an das schmale Ende jeder Keilbahn ihren Platz schreiben, von links nach rechts: { $places }.
    }
    [next] { $times ->
        [one] Auf ein weiteres Rechteck an das schmale Ende jeder Keilbahn ihren Platz schreiben, von links nach rechts: { $places }.
       *[other] Auf { $times } weitere Rechtecke an das schmale Ende jeder Keilbahn ihren Platz schreiben, von links nach rechts: { $places }.
    }
    [last] { $times ->
        [one] Auf das andere Rechteck an das schmale Ende jeder Keilbahn ihren Platz schreiben, von links nach rechts: { $places }.
       *[other] Auf die anderen { $times } Rechtecke an das schmale Ende jeder Keilbahn ihren Platz schreiben, von links nach rechts: { $places }.
    }
   *[all] An das schmale Ende jeder Keilbahn ihren Platz schreiben, von links nach rechts: { $places }.
 }

## Schneiden und kennzeichnen

gores-cut = Jede Linie in einem Zug schneiden, die Schere flach auf dem Tisch. An den schrägen Seiten nicht ziehen.
gores-name = { $odd ->
    [yes] Das schmale Ende jeder Keilbahn als oben kennzeichnen. Vom letzten Rechteck eine Keilbahn behalten; die andere bleibt übrig.
   *[no] Das schmale Ende jeder Keilbahn als oben kennzeichnen. Später jede gerade Seite an eine schräge nähen.
 }
gores-name-both = Das schmale Ende jeder Keilbahn als oben kennzeichnen. Was neben den Keilbahnen liegt, bleibt übrig. Beide Seiten einer Keilbahn sind gleich schräg, also passen je zwei beliebige zusammen. Ein Zettel kommt jetzt ab: Was auf den Keilbahnen steht, tritt an seine Stelle.
gores-order = Was neben den Keilbahnen liegt, bleibt übrig. Die Keilbahnen in der Reihenfolge aufeinanderlegen, in der sie Seite an Seite genäht werden: { $order }. Ein Zettel kommt jetzt ab: Was auf den Keilbahnen steht, tritt an seine Stelle.
