### Die Liste für den Laden. Werte sind fertige Texte, wo keine Anmerkung anderes sagt.

shopping-title = Einkauf für { $title }, { $whose }
# $garments (Zahl)
shopping-class = { $garments ->
    [one] { $whose }: { $garments } Kleidungsstück
   *[other] { $whose }: { $garments } Kleidungsstücke
 }

## Ein Material

# $amount: wie viel davon gebraucht wird. $use: wofür.
shopping-needed = gebraucht: { $amount }, für { $use }
shopping-widths = die Breiten im Vergleich:
# $joins (Zahl)
shopping-width = { $joins ->
    [one] { $width } breit: { $amount }, { $cost }, { $joins } Verbindungsnaht
   *[other] { $width } breit: { $amount }, { $cost }, { $joins } Verbindungsnähte
 }
shopping-width-chosen = { shopping-width }, gewählt
shopping-no-price = kein Preis
# $reels (Zahl)
shopping-thread = { $looped ->
    [yes] { $reels ->
        [one] Nadel { $needle }, Spule { $bobbin }, Greifer { $looper }, { $waste } Verschnitt; { $reels } Rolle gleichzeitig auf der Maschine
       *[other] Nadel { $needle }, Spule { $bobbin }, Greifer { $looper }, { $waste } Verschnitt; { $reels } Rollen gleichzeitig auf den Maschinen
    }
   *[no] { $reels ->
        [one] Nadel { $needle }, Spule { $bobbin }, { $waste } Verschnitt; { $reels } Rolle gleichzeitig auf der Maschine
       *[other] Nadel { $needle }, Spule { $bobbin }, { $waste } Verschnitt; { $reels } Rollen gleichzeitig auf den Maschinen
    }
 }
# $bobbins (Zahl)
shopping-bobbins = { $bobbins ->
    [one] { $bobbins } Spule aufspulen
   *[other] { $bobbins } Spulen aufspulen
 }
# $materials: eine Aufzählung.
shopping-cut-to = Wie verkauft wird, sagt die Vorlage nicht von: { $materials }. Die Längen sind auf { $step } aufgerundet, wie Läden meist zuschneiden; im eigenen Laden nachfragen.

## Was es kostet

# Zwei Sternchen auf beiden Seiten machen einen Text fett.
shopping-cost = Material: **{ $cost }**
# $materials (Liste)
shopping-cost-without = Material: **{ $cost }**, ohne { $materials }
shopping-work = Arbeit: etwa **{ $time }**, Zuschneiden inbegriffen
shopping-labour = Arbeitslohn: { $labour }; alles zusammen { $cost }
# $margin: in Prozent.
shopping-price = Verkaufspreis: **{ $price }**, Aufschlag { $margin } % der Kosten

## Zusammen gekauft

shopping-together = Zusammen gekauft, und jede Person für sich
