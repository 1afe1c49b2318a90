### In einen späteren Tunnel zwei Löcher arbeiten, aus denen die Enden der Kordel kommen.
### $piece: der Bund, oder das Teil, dessen Kante umgelegt wird; $folded: welches von beiden.

eyelets-title = Die Löcher für die Kordel arbeiten: { PIECE($piece, form: "bare") }
    .number = { $hole }
eyelets-aim = Zwei { cord-holes } liegen in der vorderen Mitte, { $apart } voneinander.

## Anzeichnen

# Nur in den Sätzen hier gesagt.
eyelets-along = { $folded ->
    [band] an einer langen Kante entlang, die später nach außen umgelegt wird,
   *[edge] an der Kante entlang, die später umgelegt wird,
 }
eyelets-cross = Von dort eine Linie gerade nach innen ziehen: Sie ist die vordere Mitte. Zu jeder Seite { $half } davon ein Kreuz machen, { $from-edge } von der Kante.
    .check = Die Kreuze liegen { $apart } auseinander und beide { $from-edge } von der Kante.
    .tolerance = { $off } mehr oder weniger
    .remedy = Das falsche Kreuz wegwischen und neu machen.
eyelets-mark-ring = Auf der rechten Stoffseite von { PIECE($piece) } ab { side-seam } { eyelets-along } { $middle } abmessen. { eyelets-cross }
    .check = { eyelets-cross.check }
    .tolerance = { eyelets-cross.tolerance }
    .remedy = { eyelets-cross.remedy }
eyelets-mark-flat = Auf der rechten Stoffseite von { PIECE($piece) } ab einem kurzen Ende { eyelets-along } { $middle } abmessen. { eyelets-cross }
    .check = { eyelets-cross.check }
    .tolerance = { eyelets-cross.tolerance }
    .remedy = { eyelets-cross.remedy }
# Zwei Bahnen gehen rundum: Eine davon ist die vordere.
eyelets-mark-panel = Das Stück, das nach vorn kommt, nehmen: { PIECE($piece) }. Auf seiner rechten Stoffseite ab einer senkrechten Kante { eyelets-along } { $middle } abmessen. { eyelets-cross }
    .check = { eyelets-cross.check }
    .tolerance = { eyelets-cross.tolerance }
    .remedy = { eyelets-cross.remedy }

## Verstärken

eyelets-patch-iron = Zwei Quadrate Einlage ({ $backing }) von { $patch } Seitenlänge schneiden. Auf der linken Stoffseite hinter jedes Kreuz eines legen, die raue Klebeseite nach unten. { $seconds } Sekunden durch ein feuchtes Tuch pressen, ohne zu schieben, und flach liegen lassen, bis es kalt ist.
    .check = Beim Biegen löst sich keine Ecke.
    .remedy = Diese Stelle noch einmal etwas länger pressen.
eyelets-patch-cloth = Zwei Quadrate desselben Stoffs von { $patch } Seitenlänge schneiden und hinter jedem Kreuz eines auf der linken Stoffseite feststecken.

## Knopflöcher

eyelets-buttonholes = Die Maschine auf Knopfloch stellen und eines von { $hole } auf einem Stoffrest mit untergelegtem Flicken probieren. Dann über jedes Kreuz eines nähen, rechtwinklig zur Kante, { $half-hole } davon zu jeder Seite des Kreuzes.
    .check = Beide sind { $hole } lang und stehen nebeneinander.
    .remedy = Auftrennen und neu nähen. Vorher nicht aufschneiden.
eyelets-cut = Beide mit dem Nahttrenner aufschneiden, an jedem ihrer Enden eine Stecknadel quer. Die Flicken links knapp neben den Stichen zurückschneiden, nicht hinein.
    .check = Das Ende der Kordel geht durch beide.

## Von Hand umstochene Löcher

eyelets-ring = Um jedes Kreuz einen Kreis von { $hole } Durchmesser zeichnen und darauf kleine Vorstiche durch beide Lagen nähen.
eyelets-pierce = Jedes Kreuz auf Kork oder einem gefalteten Handtuch mit der Ahle durchstechen, bis das Loch seinen Kreis füllt.
eyelets-work = Den Rand jedes Lochs mit { $stitches } Stichen dicht an dicht umstechen, jeden über die Vorstiche, und den Faden hinten vernähen.
    .check = Das Loch ist { $hole } weit, und keine Schnittkante ist zu sehen.
    .remedy = Eine zweite Runde zwischen die Stiche der ersten arbeiten.

## Ösen aus Metall

eyelets-pierce-metal = Jedes Kreuz auf Kork oder einem gefalteten Handtuch mit der Ahle durchstechen, nur so weit, dass der Hals einer Öse ({ $eyelet }) stramm hindurchgeht.
eyelets-set = Zuerst eine auf einem Stoffrest mit untergelegtem Flicken einschlagen. Dann von der rechten Stoffseite in jedes Loch eine Öse stecken, hinten die Scheibe darüberlegen und beide mit dem Werkzeug schließen, wie sein Merkblatt sagt.
    .check = Sie dreht sich nicht, und ein fester Zug bewegt sie nicht.
    .remedy = Noch einmal schließen. Geht sie heraus, ist das Loch zu weit: eine größere Öse nehmen.
