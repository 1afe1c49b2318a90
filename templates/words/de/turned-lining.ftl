### Bund und Futter so an die gekräuselten Lagen nähen, dass das gewendete Futter alle Nahtzugaben verdeckt.
### $band ist der Bund; $lining das Futter, $lining-edge seine obere Kante; $to die obere Kante der Lagen, $layers ihre Teile.

turned-lining-title = { PIECE($band) } und { PIECE($lining) } annähen
turned-lining-aim = { PIECE($band, at: "start") } steht oben, und alle Nahtzugaben liegen zwischen den Lagen und { PIECE($lining) }.

## Markieren

turned-lining-mark-band = { $parts ->
    [8] Die offenen Kanten von { PIECE($band) } in Achtel teilen und alle { $part } markieren, die erste an der Naht, die den Ring schließt.
   *[4] Die offenen Kanten von { PIECE($band) } in Viertel teilen und alle { $part } markieren, die erste an der Naht, die den Ring schließt.
 }
# $marked: eine Kante, die noch keine Markierungen hat.
turned-lining-mark = { $parts ->
    [8] Auf beiden Stoffseiten in Achtel teilen, die erste Markierung an der Seitennaht: { EDGE($marked) }.
   *[4] Auf beiden Stoffseiten in Viertel teilen, die erste Markierung an der Seitennaht: { EDGE($marked) }.
 }

## Den Bund an das Futter

turned-lining-lay-band = { $out ->
    [yes] { PIECE($lining) } auf links wenden. { PIECE($band) } darüberziehen, den Bruch zum Saum, die offenen Kanten bündig: { EDGE($lining-edge) }. Die Hälfte mit der Öffnung liegt auf der linken Stoffseite des Futters, die später zu den Beinen zeigt.
   *[no] { PIECE($lining) } auf rechts wenden. { PIECE($band) } darüberziehen, den Bruch zum Saum, die offenen Kanten bündig: { EDGE($lining-edge) }. Die Hälfte mit der Öffnung liegt auf der rechten Stoffseite des Futters, die später zu den Beinen zeigt.
 }
    .check = Die Öffnung ist nicht zu sehen, sie liegt zwischen Bund und Futter.
turned-lining-pin-lining = Zuerst die Nähte { pin-start }, dann die Markierungen, dann alle { $spacing }.
    .check = Beide liegen bündig und faltenlos.
    .remedy = Die Mehrweite zwischen den Markierungen verteilen.
# Das Futter ist um $lining-over länger als der Bund.
turned-lining-ease-lining = Zuerst die Nähte { pin-start }, dann die Markierungen, dann alle { $spacing }. Das Futter ist { $lining-over } länger: das zwischen den Nadeln verteilen, als etwas engere Kräusel, nie als Falte.
    .check = Beide liegen bündig, die Kräusel stehen gleichmäßig, keine Falte liegt um.
    .remedy = Die Nadeln dieser Strecke herausnehmen und die Kräusel zur nächsten weiterschieben.
turned-lining-sew-band = { $inside } neben der Kante steppen, { $stitch }, { $length } rundum, vom Inneren des Rings aus, das Futter oben.
    .check = Keine Falte ist gefasst, der Bund ist nicht eingezogen.
    .remedy = Diese Handbreit auftrennen, glätten und neu steppen.

## Beide an die Lagen

turned-lining-slip = { $out ->
    [yes] { PIECE($lining) } auf rechts wenden: Der Bund hängt nun darin. Auch die Lagen auf rechts wenden und das Futter darüberziehen, alle oberen Kanten bündig.
   *[no] { PIECE($lining) } auf links wenden: Der Bund hängt nun darin. Die Lagen auf rechts wenden und das Futter darüberziehen, alle oberen Kanten bündig.
 }
    .check = { $out ->
        [yes] Die rechte Stoffseite des Futters zeigt nach außen, der Bund liegt zwischen ihm und den Lagen, sein Bruch zum Saum.
       *[no] Die linke Stoffseite des Futters zeigt nach außen, der Bund liegt zwischen ihm und den Lagen, sein Bruch zum Saum.
     }
turned-lining-pin-layers = Zuerst die Seitennähte { pin-start }, dann die Markierungen, dann alle { $spacing }, durch alle Lagen.
    .check = Alle Kanten liegen bündig.
    .remedy = Die Mehrweite zwischen den Markierungen verteilen.
turned-lining-ease-layers = Zuerst die Seitennähte { pin-start }, dann die Markierungen, dann alle { $spacing }, durch alle Lagen. Die Lagen sind { $layers-over } länger: das zwischen den Nadeln verteilen, als etwas engere Kräusel, nie als Falte.
    .check = Alle Kanten liegen bündig, die Kräusel stehen gleichmäßig.
    .remedy = Die Nadeln dieser Strecke herausnehmen und die Kräusel zur nächsten weiterschieben.
turned-lining-gathers-up = Die Arbeit so wenden, dass die Kräusel der Lagen oben liegen; genäht wird dann vom Inneren des Rings aus.
turned-lining-sew = { $seam-width } neben der Kante durch alle Lagen steppen, langsam, denn es ist dick: { $stitch }, { $length } rundum. Das Ende drei Stiche über den Anfang nähen.
    .check = Jede Lage ist gefasst, die erste Naht liegt in der Nahtzugabe.
    .remedy = Wo eine Lage herausgerutscht ist, neu steppen.

## Wenden

# Nur im Satz darunter gesagt: wo das Futter endet.
turned-lining-ends = { $ends ->
    [above] { " " }Der Saum des Futters endet { $by } über dem der Lagen.
    [below] { " " }Der Saum des Futters endet { $by } unter dem der Lagen.
   *[level] { "" }
 }
turned-lining-turn = { PIECE($lining) } oben hinüberheben und nach innen fallen lassen. Den Bund nach oben ziehen.
    .check = { $out ->
        [yes] Innen wie außen ist keine offene Kante und keine Kräuselnaht zu sehen. Die Öffnung des Tunnels liegt innen, und die rechte Stoffseite des Futters liegt an den Lagen.
       *[no] Innen wie außen ist keine offene Kante und keine Kräuselnaht zu sehen. Die Öffnung des Tunnels liegt innen, und die rechte Stoffseite des Futters zeigt zu den Beinen.
     }{ turned-lining-ends }
    .remedy = Liegt die Öffnung außen, wurde der Bund verkehrt angenäht: beide Nähte auftrennen und ihn wenden.
turned-lining-press = Die Naht von innen leicht bügeln, die Nahtzugaben zum Saum.
