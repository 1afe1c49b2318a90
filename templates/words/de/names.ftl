### Wie eine Anleitung die Körpermaße und die Zahlen einer Vorlage nennt, nach den Namen, die Vorlagen dafür haben.
### $own (Text): der Name, wie er in der Vorlage steht, wo er keiner von diesen ist.

name-body = { $name ->
    [waist-girth] Taillenumfang
    [hip-girth] Hüftumfang
    [chest-girth] Brustumfang
    [neck-girth] Halsumfang
    [waist-height] Taillenhöhe
    [hip-height] Hüfthöhe
    [hip-depth] Hüfttiefe
    [knee-height] Kniehöhe
    [height] Körpergröße
   *[own] { $own }
 }
# Die Längen und Zahlen eines Schritts, eines Teils, eines Materials und des ganzen Kleidungsstücks.
name-number = { $name ->
    [above-hem] über dem Saum
    [back] hinten
    [behind] Anteil hinten
    [below-top] unter der Oberkante
    [channel] Tunnel
    [edge-stitch] Absteppung
    [pins] von Nadel zu Nadel
    [count] Anzahl
    [cut-area] Zuschnittfläche
    [cut-depth] Zuschnitthöhe
    [cut-length] Zuschnittlänge
    [depth] Höhe
    [ease] Zugabe
    [ends] Enden
    [fell] Breite der Kappnaht
    [first-seam] erste Naht
    [first-turn] erster Einschlag
    [fold-ends] Umschlag an jedem Ende
    [from-edge] Abstand von der Kante
    [from-start] vom Anfang
    [front] vorn
    [fullness-to-hem] Mehrweite bis zum Saum
    [gap] Öffnung
    [gap-below-top] Öffnung unter der Oberkante
    [open-at-hem] offen über dem Saum
    [open] offen unter der Oberkante
    [gathered-strips] gekräuselte Streifen
    [gathers] Kräuselung
    [heading] Köpfchen
    [hem] Saum
    [hole] Loch
    [apart] Abstand
    [button] Knopf
    [channels] Kanäle
    [let-out] auslassen
    [takes] ml je Gramm
    [hem-layers] Lagen am Saum
    [front-hem] Saum der vorderen Keilbahn
    [back-hem] Saum einer hinteren Keilbahn
    [backs] hintere Keilbahnen
    [each] Ringe je Band
    [every] Ring zu Ring
    [long] Länge eines Abnähers
    [tapes] Bänder
    [up] gerafft um
    [hems-together] alle Säume zusammen
    [inset] Abstand nach innen
    [lap] Überlappung
    [length] Länge
    [most-joins] höchstens Verbindungsnähte
    [over] Umfang, über den es geht
    [overlap] Überlappung
    [price] Preis
    [reel] Rolle
    [roll] Rollsaum
    [rounding] Rundung
    [rows] Nähte
    [seam] Nahtzugabe
    [second-seam] zweite Naht
    [second-turn] zweiter Einschlag
    [selvedge] Webkante
    [shortest] kürzestes Stück
    [shrinkage] Einlaufen
    [bending-length] Biegelänge
    [side] Seite
    [slit] Schlitz
    [sold-by] Verkaufseinheit
    [space] Zwischenraum
    [spacing] Abstand
    [spare] Reserve
    [stitch] Stich
    [stretch] Dehnung
    [top-to-hem] oben bis Saum
    [trim-to] zurückschneiden auf
    [turn] Einschlag
    [turn-under] Einschlag
    [turn-up] Umschlag
    [weight] Gewicht
    [width] Breite
   *[own] { $own }
 }
