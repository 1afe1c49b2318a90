### Was eine Zahl eines Hefts ist, in der Tabelle, die sie für jede Größe hat, nach dem Namen, den ihre Meldung für den Wert hat.
### $name (Text): dieser Name. $kind (Text): welcher Art die Zahl ist.

number-is = { $name ->
    [above] Abstand darüber
    [across] gerade hinüber
    [after] von der vorigen
    [air-far] Abstand der Warmluft
    [all-loops] Anzahl der Schlaufen
    [along] entlang dem Bogen
    [apart] Abstand voneinander
    [around] ganz herum
    [at] von der Ecke zur Markierung
    [back] hinten
    [bar] Länge des Riegels
    [bar-in] Steg, von der Kante
    [basting] Heftstich
    [before] von vorn
    [begins] Anfang
    [behind] Anteil hinten
    [below] Abstand darunter
    [beneath] Untertritt
    [beside] Abstand daneben
    [beyond] Abstand darüber hinaus
    [bobbin-thread] Faden auf den Spulen
    [bobbins] wie viele Spulen
    [bone-length] Länge des Reifenbands
    [both-sides] beide Seiten zusammen
    [broad] breites Ende
    [button] Breite des Knopfs
    [button-in] Knopf, von der Kante
    [buttonhole] Länge des Knopflochs
    [by] um so viel länger
    [casing] Tunnel rundum
    [catch] gefasst auf
    [channel] Breite des Tunnels
    [channels] Anzahl der Kanäle
    [clear] freier Abstand
    [clip-short] bis vor die Naht
    [clips] von Einschnitt zu Einschnitt
    [close] neben der Kante
    [cloth] { $kind ->
    [shorter] um wie viel kürzer
    [snip] Tiefe eines Einschnitts
    [snips] von Einschnitt zu Einschnitt
        [weight] Gewicht des Stoffs
       *[other] Stoff, flach
     }
    [cloth-part] flacher Stoff von Markierung zu Markierung
    [copies] wie viele gleiche
    [cord-long] Länge der Kordel
    [corner] Abstand zur Naht an der Ecke
    [count] Anzahl
    [cover] über die Nahtlinie
    [cross] Kreuz, vom Ende
    [cut] Länge zum Abschneiden
    [cut-depth] Zuschnitthöhe
    [deep] Höhe
    [deepest] tiefste Stelle
    [degrees] Winkel in Grad
    [depth] Höhe
    [diagonal] beide Diagonalen
    [dots] Punkte je Reihe
    [down] Abstand nach unten
    [drawn] { $kind ->
        [length] zusammengezogen
       *[other] wie viele gezeichnet sind
     }
    [drawn-in] zusammengezogen
    [ease] insgesamt zu kurz
    [edge] Abstand von der Kante
    [edge-off] Toleranz der Kante
    [edge-stitch] Abstand vom Bruch
    [end] Einschlag an jedem Ende
    [ends] an den Enden
    [every] vom einen zum nächsten
    [fall] Länge ab der Naht
    [far] zur fernen Ecke
    [farthest] letzter Mittelpunkt, jenseits der Kante
    [fast] für das feste Ende
    [fell] Breite des Umschlags
    [finish] für den Abschluss eines Endes
    [first] das erste
    [first-row] erste Naht von der Kante
    [first-turn] erster Einschlag
    [flat] flach liegend
    [fold] zum Einschlagen
    [foot] am unteren Ende
    [from-edge] Abstand von der Kante
    [from-fold] Abstand vom Bruch
    [from-seam] Abstand von der Naht
    [front] vorn
    [gap] Öffnung
    [gap-end] Ende der Öffnung
    [gap-from] Anfang der Öffnung
    [gap-to] Ende der Öffnung
    [gives] Länge des Streifens
    [gores] Anzahl der Keilbahnen
    [grams] Gewicht in Gramm
    [half] die Hälfte davon
    [half-apart] vom Ende zum ersten
    [half-back] hinten nach beiden Seiten
    [half-fast] Einschlag am Ende
    [half-finish] jeder Einschlag des Endes
    [half-front] vorn nach beiden Seiten
    [half-hem] jeder Einschlag des Endes
    [half-over] gedehnt, flach liegend
    [half-shown] die Hälfte des Sichtbaren
    [hangs] hängt darunter
    [heading] Köpfchen
    [hem] am Saum
    [high] Höhe
    [hole] Loch
    [hook-in] Haken, von der Kante
    [in-at-foot] einwärts am unteren Ende
    [inner] innerer Bogen
    [inside] Abstand von der Kante, neben der Linie
    [intake] von jedem aufgenommen
    [joins] Anzahl der Verbindungsnähte
    [knot] Knoten, von der Kante
    [label-tape] Band für das Schild
    [lap] Überlappung
    [layer-deep] Höhe einer Lage
    [layers-over] Lagen, länger um
    [left] was übrig bleibt
    [lefts] jedes Band, gerafft
    [leg] jeder Schenkel bis zur Spitze
    [length] Länge an der Kante entlang
    [letters] Höhe der Buchstaben
    [lies] Kante wie zugeschnitten
    [line] Linie, über der Kante
    [lines] Anzahl der Streifen
    [lining-over] Futter, länger um
    [liquid] Menge der Flüssigkeit
    [long] Länge
    [long-stitch] langer Stich
    [longest] längste Linie
    [loop] Gummischlinge
    [loops] Anzahl der Schlaufen
    [lower] an der unteren Kante
    [many] wie viele davon
    [margin] Abstand von den Kanten
    [mark] bis Markierung { $which }
    [marks] vom Anfang zu jeder Markierung
    [middle] vom Ende zur Mitte
    [more] { $kind ->
        [length] mehr um
       *[other] wie viele mehr
     }
    [narrow] schmales Ende
    [near] zur nahen Ecke
    [near-fold] neben dem Bruch
    [needed] Länge, die angenäht wird
    [next] die nächste
    [now] die Öffnung, wie sie jetzt ist
    [number] welche
    [on-line] von Markierung zu Markierung auf der Nahtlinie
    [open] was offen ist
    [open-at-hem] offen über dem Saum
    [opening] Öffnung
    [others] wie viele andere
    [out] ausgelassen auf
    [outer] äußerer Bogen
    [over] gedehnt auf
    [overlap] Überlappung
    [panels] Anzahl der Bahnen
    [part] von Markierung zu Markierung
    [patch-left] was vom Flicken bleibt
    [parts] Anzahl der Teile
    [past] darüber hinaus
    [patch] Seite des Flickens
    [per-run] Abschnitte in einem Zug
    [pins] Stecknadeln, ungefähr
    [places] Anzahl der Stellen
    [pleats] Anzahl der Falten
    [plies] Anzahl der Lagen
    [quarter] ein Viertel
    [radius] Radius
    [ratio] Stoff zu Kante
    [reach] bis zum Knopf
    [rest] Abstand zur folgenden Naht
    [ribbon-length] Länge des Bands
    [rings] Anzahl der Ringe
    [roll] Dicke der Rolle
    [round] rundum
    [round-top] oben rundum
    [row] Naht, von der Kante
    [rows] Anzahl der Reihen
    [run] von der Seite
    [run-out] wo es ausläuft
    [runs] Anzahl der Züge
    [seam-stitch] Stich für Nähte
    [seam-width] Breite der Nahtzugabe
    [second] zweiter Einschlag
    [second-row] zweite Naht von der Kante
    [second-turn] zweiter Einschlag
    [seconds] Sekunden
    [segment] Stück { $which }
    [sewn] genähte Länge
    [shift] Weg des Mittelpunkts
    [short] { $kind ->
        [length] gekräuselte Kante
       *[other] kurzer Stich
     }
    [short-part] jeder Abschnitt, gekräuselt
    [shortest] kürzeste Linie
    [shown] Sichtbares von jedem
    [shows] was zu sehen ist
    [side] an den Seiten
    [slant] entlang der Schräge
    [slit] Schlitz
    [slots] von Knopfloch zu Knopfloch
    [space] Zwischenraum
    [spacing] von Nadel zu Nadel
    [spare] zum Anprobieren
    [stacked] wie viele insgesamt
    [stay] Naht, die sie hält
    [stitch] Stich
    [stitched] genähte Länge
    [stitches] Anzahl der Stiche
    [stop] oberer Stopper, unter der Kante
    [stretch] Strecke, die bleibt
    [tail] Fadenende
    [taken] was aufgenommen wird
    [tape-length] Länge des Bands
    [tape-each] Länge jedes Bands
    [tapes] Anzahl der Bänder
    [thick] Dicke
    [times] wie oft
    [to-come] Nahtzugabe, die folgt
    [tie-long] Länge des Bindebands
    [to-hem] von der oberen Kante bis zum Saum
    [top] oben
    [trial] Streifen für die Probe
    [trial-short] Probe, zusammengezogen
    [triangle] Seite des Dreiecks
    [trim] Nahtzugabe, die bleibt
    [tucks] Anzahl der Biesen
    [turn] Einschlag
    [turn-width] Breite des Einschlags
    [twice] zur zweiten Linie
    [under] Einschlag
    [understitch] neben der Naht
    [united-states] höchstens in den Vereinigten Staaten
    [up] gerafft um
    [upper] an der oberen Kante
    [waist] Taille
    [whole] zusammengesetzte Länge
    [wide] Breite
    [width] Breite
    [zigzag-long] Länge des Zickzacks
    [zigzag-wide] Breite des Zickzacks
   *[other] { number-of-kind }
 }
# Wo eine Zahl keinen eigenen Namen hat.
number-of-kind = { $kind ->
    [stitch] Stichlänge
    [count] Anzahl
    [share] Anteil
    [ratio] Verhältnis
    [weight] Gewicht
    [volume] Rauminhalt
    [money] Preis
   *[length] Länge
 }
