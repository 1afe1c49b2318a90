### Einen glatten Bund mit Verschluss an eine offene obere Kante nähen.
### $band ist der Bund; $to die Kante, an die er kommt.

fitted-waistband-title = { PIECE($band) } annähen
    .number = { $waist }
fitted-waistband-aim = Die Taille schließt auf { $waist } und öffnet sich für die Hüfte.
# Bindebänder schließen ihn: Der nächste Schritt näht sie an.
fitted-waistband-aim-ties = { PIECE($band, at: "start") } ist { $length } lang und bereit für die Bindebänder.

## Markierungen

# Nur in den Sätzen hier gesagt. $underlap: Ein Ende des Bundes steht als Untertritt unter dem anderen vor.
fitted-waistband-from-ends = { $underlap ->
    [yes] { $seam-width } neben dem Ende, das oben liegt, und { $beneath } neben dem anderen
   *[no] { $seam-width } neben beiden Enden
 }
# Welches Ende oben liegt, je nachdem, wo die Öffnung liegt.
fitted-waistband-on-top = { $place ->
    [side] Oben liegt das Ende des Vorderteils.
    [back] Oben liegt das Ende der linken Hälfte.
   *[either] Oben liegt an der linken Seite das Ende des Vorderteils, in der hinteren Mitte das der linken Hälfte.
 }
fitted-waistband-stands-out = { $underlap ->
    [yes] Der Bund steht am oberen Ende { $seam-width } über, am anderen { $beneath }.
   *[no] Der Bund steht an beiden Enden { $seam-width } über.
 }
# $stiffened: Einlage liegt auf der Hälfte, die angenäht wird.
fitted-waistband-fold = { $stiffened ->
    [yes] Die lange Kante von { PIECE($band) } an der Hälfte ohne Einlage { $seam-width } auf die linke Stoffseite umbügeln.
   *[no] Eine lange Kante von { PIECE($band) } { $seam-width } auf die linke Stoffseite umbügeln.
 }
fitted-waistband-hold = { PIECE($band, at: "start") } so an { EDGE($to) } halten, wie der Bund angenäht wird, die nicht umgebügelte Kante bündig, und einen Zettel an das Ende stecken, das oben liegen wird. { fitted-waistband-on-top }
fitted-waistband-mark = { $parts ->
    [8] { EDGE($to, at: "start") } von Ende zu Ende in Achtel teilen und alle { $part } markieren.{ marks-on-line }
   *[4] { EDGE($to, at: "start") } von Ende zu Ende in Viertel teilen und alle { $part } markieren.{ marks-on-line }
 }
# Die Markierungen der Falten sind noch da.
fitted-waistband-mark-pleats = { $parts ->
    [8] { EDGE($to, at: "start") } von Ende zu Ende in Achtel teilen und alle { $part } markieren, in einer anderen Farbe als die Falten.{ marks-on-line }
   *[4] { EDGE($to, at: "start") } von Ende zu Ende in Viertel teilen und alle { $part } markieren, in einer anderen Farbe als die Falten.{ marks-on-line }
 }
fitted-waistband-mark-band = Die nicht umgebügelte Kante von { PIECE($band) } { fitted-waistband-from-ends } markieren, dazwischen alle { $part }.
# Die obere Kante hat Markierungen aus einem früheren Schritt.
fitted-waistband-mark-band-alone = Die nicht umgebügelte Kante von { PIECE($band) } { fitted-waistband-from-ends } markieren, dazwischen alle { $part }. Die obere Kante hat ihre Markierungen schon.

## Annähen

fitted-waistband-snip = Die Schnittkante von { PIECE($skirt) } ist { $shorter } kürzer als die Nahtlinie. Die Nahtzugabe alle { $snips } { $snip } tief einschneiden, damit sie sich öffnet.
    .check = Kein Einschnitt kommt näher als { $clear } an die Nahtlinie.
    .remedy = Wo einer zu tief ist, die Naht dort um so viel weiter innen nähen.
fitted-waistband-lay = { $face ->
    [right] Die nicht umgebügelte Kante von { PIECE($band) } rechts auf rechts auf { EDGE($to) } legen, Markierung auf Markierung. { fitted-waistband-stands-out } So { pin-start }.
   *[other] Die nicht umgebügelte Kante von { PIECE($band) } mit der rechten Stoffseite nach unten auf die Außenseite legen, auf { EDGE($to) }, Markierung auf Markierung. { fitted-waistband-stands-out } So { pin-start }.
 }
    .check = Auf der Nahtlinie sind es zwischen den Enden { $length }.
    .tolerance = { $edge-off } mehr oder weniger
    .remedy = { $folds ->
        [gathers] Zu lang: die Kräuselung enger zusammenziehen. Zu kurz: lockern.
        [pleats] Zu lang: einige Falten etwas tiefer legen. Zu kurz: etwas weniger tief.
       *[flat] Den Unterschied zwischen den Markierungen verteilen.
     }
fitted-waistband-sew = { $seam-width } neben der Kante steppen, { $length }, { $stitch }; an beiden Enden verriegeln.
    .check = Alle Lagen sind gefasst.
    .remedy = Wo eine Lage herausgerutscht ist, neu steppen, auf beiden Seiten { $past } darüber hinaus.
fitted-waistband-press = { PIECE($band) } nach oben klappen und die Naht bügeln, die ganze Nahtzugabe zum Bund hin.

## Die Enden schließen und umlegen

fitted-waistband-half = { PIECE($band) } der Länge nach rechts auf rechts zur Hälfte falten, den gebügelten Bruch bündig mit der Nahtlinie.
fitted-waistband-ends = Den Rock nach unten aus dem Weg legen. An jedem Ende vom Bruch bis zur Nahtlinie steppen, { $seam-width } neben der Kante, knapp neben dem Rock.
    .check = Beide Enden sind bündig mit den Kanten des Schlitzes.
    .remedy = Das Ende auftrennen und an der richtigen Stelle neu steppen.
fitted-waistband-end-on-top = Den Rock nach unten aus dem Weg legen. Am oben liegenden Ende vom Bruch bis zur Nahtlinie steppen, { $seam-width } neben der Kante, knapp neben dem Rock.
    .check = Das Ende ist bündig mit der Öffnung.
    .remedy = Das Ende auftrennen und an der richtigen Stelle neu steppen.
fitted-waistband-end-beneath = Am unten liegenden Ende die gebügelte Nahtzugabe aufklappen, beide langen Kanten bündig. Vom Bruch hinunter steppen, { $seam-width } neben der Kante, an der Nahtlinie mit der Nadel im Stoff drehen und auf ihr bis zum Rock steppen.
    .check = Das Ende steht { $overlap } über die Öffnung hinaus, und seine untere Kante ist zugenäht.
    .remedy = Das Ende auftrennen und an der richtigen Stelle neu steppen.
fitted-waistband-turn = Die Nahtzugabe an den Ecken { $corner } neben der Naht schräg abschneiden. { PIECE($band, at: "start") } wenden, die Ecken herausdrücken und bügeln.
    .check = Der Bund ist { $depth } hoch.
    .tolerance = { $fold-off } mehr oder weniger
    .remedy = Wo der Bruch abweicht, neu bügeln.
fitted-waistband-label = Ein Ende des Etiketts in der Mitte des Bunds { $seam-width } unter die umgebügelte Kante schieben, die Schrift sichtbar, und { pin }.
fitted-waistband-inside = Die umgebügelte Kante innen auf die Nahtlinie legen und { pin }. Innenseite oben: { $edge-stitch } neben dem Bruch steppen, { $length }, { $stitch }.
    .check = Der Bruch ist überall gefasst.
    .remedy = Was nicht gefasst wurde, von Hand annähen.

## Der Verschluss

# $half: die Hälfte des Übertritts.
fitted-waistband-buttonhole = Am Übertritt ein Knopfloch anzeichnen: entlang der Bundmitte, ab { $half } vom Ende, so lang wie der Knopf breit und dick zusammen. So nähen, wie die Maschine Knopflöcher näht, zuerst zur Probe auf einem Stoffrest. Danach die Maschine auf Geradstich zurückstellen.
fitted-waistband-cut = Das Knopfloch mit dem Nahttrenner aufschneiden, an beiden Enden eine Stecknadel quer.
fitted-waistband-button = Die Enden { $overlap } übereinanderlegen. Durch das Knopfloch einen Punkt markieren, { $half } vom Ende des Untertritts, und dort den Knopf annähen.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = Den Knopf an der richtigen Stelle neu annähen.
fitted-waistband-hook = Den Haken innen am Übertritt annähen, { $hook-in } von der Kante. Den Steg außen am Untertritt annähen, { $bar-in } von der Kante.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = Den Steg an der richtigen Stelle neu annähen.
fitted-waistband-snaps = Die Enden { $overlap } übereinanderlegen. Die flachen Hälften von zwei Druckknöpfen innen am Übertritt annähen, { $snap-in } von der Kante, die anderen Hälften dort, wo sie auf den Untertritt treffen.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = Die unteren Hälften an der richtigen Stelle neu annähen.
fitted-waistband-ties = Beide Enden lassen, wie sie sind: Die Bindebänder werden daran genäht.
# Nur als Teil der Sätze darüber gesagt.
fitted-waistband-closed =
    .check = Mit { $overlap } Übertritt geschlossen misst der Bund { $waist }.
    .tolerance = { $waist-off } mehr oder weniger
