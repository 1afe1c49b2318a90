### Ein gefaltetes Band über die obere Kante nähen: Es fasst die Naht ein und nimmt Gummiband oder Kordel auf.
### $band ist der Bund; $to die Kante, an die er kommt; $seam die Seitennaht des Rocks, $band-seam die des Bunds.

band-casing-title = { PIECE($band) } annähen
    .number = { $depth }
band-casing-aim = { $holds ->
    [cord] Die obere Kante ist eingefasst, der Tunnel für die Kordel ist an der Öffnung offen.
   *[elastic] Die obere Kante ist eingefasst, der Tunnel für das Gummiband ist an der Öffnung offen.
 }
band-casing-aim-holes = Die obere Kante ist eingefasst; der Tunnel für die Kordel hat zwei Öffnungen: { cord-holes }.

# Nur in den Sätzen darunter gesagt, am Satzanfang.
band-casing-top = { COUNT($to) ->
    [one] { EDGE($to, at: "start") }
   *[other] Die obere Kante des Rocks
 }
# Im Dativ: „an …“, „neben …“.
band-casing-seam = { $band-seam ->
    [bright] der Seitennaht mit dem bunten Faden
   *[plain] der Seitennaht
 }

## Markierungen

band-casing-fold = Eine lange Kante von { PIECE($band) } { $seam-width } auf die linke Stoffseite umbügeln.
# Die Hälfte mit den Löchern kommt nach außen.
band-casing-fold-holes = Die lange Kante von { PIECE($band) }, die näher an den Löchern ({ cord-holes }) liegt, { $seam-width } auf die linke Stoffseite umbügeln.
band-casing-mark = { $parts ->
    [8] { band-casing-top } auf beiden Stoffseiten in Achtel teilen und alle { $part } markieren, die erste Markierung an { side-seam }.{ marks-on-line }
   *[4] { band-casing-top } auf beiden Stoffseiten in Viertel teilen und alle { $part } markieren, die erste Markierung an { side-seam }.{ marks-on-line }
 }
# Die Markierungen der Falten sind noch da.
band-casing-mark-pleats = { $parts ->
    [8] { band-casing-top } auf beiden Stoffseiten in Achtel teilen und in einer anderen Farbe als die Falten alle { $part } markieren, die erste Markierung an { side-seam }.{ marks-on-line }
   *[4] { band-casing-top } auf beiden Stoffseiten in Viertel teilen und in einer anderen Farbe als die Falten alle { $part } markieren, die erste Markierung an { side-seam }.{ marks-on-line }
 }
band-casing-mark-band = Die nicht umgebügelte Kante von { PIECE($band) } ebenso markieren, die erste Markierung an { band-casing-seam }.
# Was anders herauskam als geplant: Die obere Kante, $top, und der Bund, $length, sind nicht gleich lang.
band-casing-mark-band-own = { $parts ->
    [8] Die nicht umgebügelte Kante von { PIECE($band) } in Achtel ihrer eigenen Länge teilen und alle { $part } markieren, die erste Markierung an { band-casing-seam }.
   *[4] Die nicht umgebügelte Kante von { PIECE($band) } in Viertel ihrer eigenen Länge teilen und alle { $part } markieren, die erste Markierung an { band-casing-seam }.
 }
# Die obere Kante hat Markierungen aus einem früheren Schritt.
band-casing-mark-band-alone = { $parts ->
    [8] Die nicht umgebügelte Kante von { PIECE($band) } in Achtel teilen und alle { $part } markieren, die erste Markierung an { band-casing-seam }. Die obere Kante hat ihre Markierungen schon.
   *[4] Die nicht umgebügelte Kante von { PIECE($band) } in Viertel teilen und alle { $part } markieren, die erste Markierung an { band-casing-seam }. Die obere Kante hat ihre Markierungen schon.
 }

## Auflegen

band-casing-turn = Den Rock auf links wenden, die obere Kante nach oben.
band-casing-label = Das Etikett innen neben { side-seam } auflegen ({ PIECE($inner, form: "short") }), die Schrift sichtbar, ein Ende bündig mit der oberen Kante, und dort { pin-start }: Die Naht des Bunds fasst dieses Ende.
# Welche Stoffseite des Rocks innen liegt: die linke seiner einzigen oder innersten Lage, …
band-casing-slip = { PIECE($band) } mit der linken Stoffseite nach außen darüberziehen: rechte Stoffseite des Bunds auf die linke Stoffseite von { PIECE($inner) }.
    .check = Die nicht umgebügelte Kante liegt bündig auf der oberen Kante, der gebügelte Bruch hängt nach unten.
# … die rechte eines Futters, das zu den Beinen hin getragen wird, …
band-casing-slip-lining = { PIECE($band) } mit der linken Stoffseite nach außen darüberziehen: rechte Stoffseite des Bunds auf die rechte Stoffseite von { PIECE($inner) }, die jetzt außen liegt.
    .check = { band-casing-slip.check }
# … oder Stoff mit zwei gleichen Seiten.
band-casing-slip-either = { PIECE($band) } mit der linken Stoffseite nach außen darüberziehen: rechte Stoffseite des Bunds auf die Innenseite von { PIECE($inner) }.
    .check = { band-casing-slip.check }
band-casing-front = Den Bund auf dem Rock drehen, bis die Mitte zwischen den beiden Löchern ({ cord-holes }) an der Markierung liegt, die die vordere Mitte ist.
band-casing-pin = Den Bund zuerst mit { band-casing-seam } an der ersten Markierung { pin-start }, dann an den übrigen Markierungen, dann alle { $spacing }.
    .check = { $alike ->
        [yes] Der Bund liegt faltenlos; beide messen { $length }.
       *[no] Der Bund misst { $length }, die obere Kante { $top }; was länger ist, ist zwischen den Markierungen faltenlos verteilt.
     }
    .tolerance = { $off } mehr oder weniger
    .remedy = Den Unterschied zwischen den Markierungen verteilen. Ist er größer, die Seitennaht des Bunds passend neu nähen.

## Nähen und umlegen

band-casing-sew = { $gathered ->
    [yes] Die Arbeit so wenden, dass die Kräusel oben liegen; genäht wird dann vom Inneren des Rings aus. { $seam-width } neben der Kante steppen, { $stitch }, { $length } rundum; das Ende drei Stiche über den Anfang nähen.
   *[no] { $seam-width } neben der Kante steppen, { $stitch }, { $length } rundum; das Ende drei Stiche über den Anfang nähen.
 }
    .check = Alle Lagen sind gefasst.
    .remedy = Wo eine Lage herausgerutscht ist, neu steppen, auf beiden Seiten { $past } darüber hinaus.
band-casing-fold-up = Den Rock auf rechts wenden. Den Bund nach oben klappen, vom Rock weg, die ganze Nahtzugabe nach innen, und die Naht bügeln.
band-casing-cover = Die umgebügelte Kante nach außen umlegen, bis sie die Nahtlinie { $cover } überdeckt, und { pin }.
    .check = Der Bund ist rundum { $depth } hoch.
    .tolerance = { $fold-off } mehr oder weniger
    .remedy = Den Bruch verschieben, bis er die Nahtlinie überall überdeckt. Ist der Bund dann noch zu niedrig, wurde er zu schmal zugeschnitten: einen neuen zuschneiden, { $cut-depth } hoch.
band-casing-gap = Eine Öffnung von { $gap } markieren: von { $beside } bis { $gap-end } rechts von { band-casing-seam } des Bunds, auf die rechte Stoffseite gesehen. An jedem Ende einen Strich machen.
band-casing-gap-front = Eine Öffnung von { $gap } in der vorderen Mitte markieren, { $quarter } von { band-casing-seam } des Bunds, nach jeder Seite die Hälfte. An jedem Ende einen Strich machen.
band-casing-topstitch = Rechte Stoffseite oben: { $edge-stitch } neben dem unteren Bruch absteppen, von einem Strich der Öffnung rundum bis zum anderen, { $stitch }, { $stitched }. An beiden Enden verriegeln.
    .check = Die Öffnung ist offen, der Tunnel ist innen { $channel } breit.
    .tolerance = { $fold-off } mehr oder weniger
    .remedy = Auftrennen, was die Öffnung schließt.
band-casing-topstitch-round = Rechte Stoffseite oben: rundum { $edge-stitch } neben dem unteren Bruch absteppen, { $stitch }, { $stitched }; das Ende drei Stiche über den Anfang nähen.
    .check = Der Bruch ist rundum gefasst, der Tunnel ist innen { $channel } breit.
    .tolerance = { $fold-off } mehr oder weniger
    .remedy = Wo die Naht vom Bruch abgekommen ist, sie auftrennen und dort neu steppen.
