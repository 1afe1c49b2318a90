### Offene Kanten oder Nahtzugaben versäubern, damit sie nicht ausfransen.
### Ein Schritt arbeitet an einer Stelle oder an mehreren: $pieces oder $edge sagen welche, $length wie lang jede ist.

## Was versäubert wird

neaten-title-joins = { neaten-joins } versäubern
neaten-title-ends = { neaten-ends } versäubern
neaten-title-between = { neaten-between } versäubern
neaten-title-edge = { EDGE($edge, at: "start") } versäubern
neaten-title-all-joins = Die Nahtzugaben aller Verbindungsnähte versäubern
neaten-title-margins = { $places } Nahtzugaben von { PIECE($pieces) } versäubern
neaten-title-edges = { $places } Kanten von { PIECE($pieces) } versäubern
neaten-title-several = { $places } Kanten und Nahtzugaben von { PIECE($pieces) } versäubern
neaten-aim = Die Schnittkanten können nicht ausfransen.
# Zackenschere: Die Spitzen halten die Fäden zurück, aber nicht für immer.
neaten-aim-pinked = Die Schnittkanten fransen weniger aus.
# Stoff, der nicht ausfranst.
neaten-aim-firm = Die Schnittkanten sind gefasst und können nicht kratzen.

# Nur in anderen Sätzen dieser Datei gesagt, am Satzanfang.
neaten-joins = Die Nahtzugaben der Verbindungsnähte in { PIECE($pieces) }
# $several: Der Ring wurde aus mehreren Bahnen geschlossen, es gibt also mehr als eine Naht.
neaten-ends = { $several ->
    [yes] Die Nahtzugaben der Seitennähte von { PIECE($pieces) }
   *[no] Die Nahtzugabe der Seitennaht von { PIECE($pieces) }
 }
neaten-between = { $where ->
    [edge] Die Nahtzugabe an { EDGE($beside, case: "dative") }
    [round] Die Nahtzugabe rund um { PIECE($pieces) }
   *[between] Die Nahtzugabe zwischen { PIECE($pieces) }
 }

# Als $place in den Arbeiten darunter, am Satzanfang.
neaten-place-joins = { neaten-joins }, alle Lagen zusammen, je { $length },
neaten-place-ends = { $several ->
    [yes] { neaten-ends }, alle Lagen zusammen, je { $length },
   *[no] { neaten-ends }, alle Lagen zusammen, { $length },
 }
neaten-place-between = { neaten-between }, alle Lagen zusammen, { $length },
# $layers: die eines Stapels oder eines gefalteten Bundes werden als eine versäubert.
neaten-place-edge = { $layers ->
    [1] { EDGE($edge, at: "start") }, { $length },
    [2] { EDGE($edge, at: "start") }, beide Lagen zusammen, { $length },
   *[other] { EDGE($edge, at: "start") }, alle Lagen zusammen, { $length },
 }
# $longest: Keilbahnen, die verschieden sind, haben verschieden lange Seiten.
neaten-place-sides = { EDGE($edge, at: "start") }, { $length } bis { $longest },

# $side: welche der beiden Seiten eines Teils; es liegt noch für sich.
neaten-side = { $side ->
    [start] { $each ->
        [gore] Eine Keilbahn von { PIECE($piece) } mit der rechten Seite nach oben legen, das schmale Ende von sich weg. Die Anfangskante ist die linke Seite.
        [panel] Eine Bahn von { PIECE($piece) } mit der rechten Seite nach oben legen, die obere Kante von sich weg. Die Anfangskante ist die linke Seite.
       *[piece] { PIECE($piece, at: "start") } mit der rechten Seite nach oben legen, die obere Kante von sich weg. Die Anfangskante ist die linke Seite.
    }
   *[end] { $each ->
        [gore] Eine Keilbahn von { PIECE($piece) } mit der rechten Seite nach oben legen, das schmale Ende von sich weg. Die Endkante ist die rechte Seite.
        [panel] Eine Bahn von { PIECE($piece) } mit der rechten Seite nach oben legen, die obere Kante von sich weg. Die Endkante ist die rechte Seite.
       *[piece] { PIECE($piece, at: "start") } mit der rechten Seite nach oben legen, die obere Kante von sich weg. Die Endkante ist die rechte Seite.
    }
 }

## Mit der Overlock

neaten-overlock-ring = { $place } mit der Overlock versäubern. An einer senkrechten Naht beginnen, { $past } über den Anfang nähen und dann mit einer Fadenkette von { $tail } vom Stoff nähen.
    .check = { neaten-overlock-flat.check }
    .remedy = { neaten-overlock-flat.remedy }
neaten-overlock-flat = { $place } mit der Overlock versäubern. An beiden Enden mit einer Fadenkette von { $tail } vom Stoff nähen.
    .check = { $ravels ->
        [yes] Alle Lagen sind gefasst, das Messer hat Fransen abgeschnitten, aber keinen Stoff.
       *[no] Alle Lagen sind gefasst, das Messer hat nur abgeschnitten, was überstand.
     }
    .remedy = Die ausgelassene Strecke noch einmal übernähen.
neaten-chain = Jede Fadenkette in eine stumpfe Nadel fädeln, unter die Stiche ziehen und den Rest abschneiden.
    .check = Keine Fadenkette hängt lose heraus.
neaten-chain-back = Jede Fadenkette auf ihre Naht zurücklegen und { $catch } davon mit einem kleinen Zickzack übernähen. Den Rest abschneiden.
    .check = Keine Fadenkette hängt lose heraus, der Zickzack hält sie.

## Mit Zickzackstich

neaten-try-zigzag = { zigzag-set } An der Kante eines Stoffrests ausprobieren.
    .check = Die Nadel sticht abwechselnd in den Stoff und neben die Kante, die Kante liegt flach.
    .remedy = Rollt sich die Kante ein, den Stich schmaler einstellen.
neaten-zigzag-ring = { $place } mit Zickzackstich versäubern. An einer senkrechten Naht beginnen, { $past } über den Anfang nähen und verriegeln. Die Fäden kurz abschneiden.
    .check = { neaten-zigzag-flat.check }
    .remedy = { neaten-zigzag-flat.remedy }
neaten-zigzag-flat = { $place } mit Zickzackstich versäubern. An beiden Enden verriegeln. Die Fäden kurz abschneiden.
    .check = Alle Lagen sind gefasst.
    .remedy = Die ausgelassene Strecke noch einmal übernähen.

## Mit der Zackenschere

neaten-pink = { $place } mit der Zackenschere beschneiden. Nicht mehr als die Zacken wegnehmen.
    .check = Die Zacken sind gleichmäßig.
    .remedy = Die ausgelassene Strecke noch einmal beschneiden.

## Mit dem Bügeleisen

# Eine lange aufrechte Naht: Ihre Zugaben gehen zu einer Seite.
neaten-press = Die Nahtzugaben der aufrechten Nähte von { PIECE($pieces) } von links flach zu einer Seite bügeln, bei jeder Naht in derselben Richtung.
    .check = Auf der rechten Seite liegt neben keiner Naht eine Falte.
    .remedy = Die beiden Teile an der Naht auseinanderziehen und noch einmal bügeln.
