### Die Liste der Werkzeuge; `.why` sagt, wofür jedes ist.

## Maschinen

tool-machine = Nähmaschine mit Geradstich
    .why = Nähte, Kräuselnähte, Absteppen
tool-zigzag = Zickzackstich
    .why = { $uses }
# Nur in der Angabe darüber gesagt.
tool-zigzag-neatening = Versäubern
tool-zigzag-elastic = Gummiband verbinden
tool-zigzag-bars = kurze Riegel
tool-zigzag-buttonhole = das Knopfloch
tool-zigzag-own = wo ein Schritt es sagt
tool-overlocker = Overlock, eingefädelt
    .why = Versäubern
tool-attachment = Faltenlegefuß
    .why = Kräuseln
tool-hand-needle = Handnadel und Fingerhut
    .why = Nähen von Hand
tool-iron = Bügeleisen, Bügelbrett
    .why = Nähte und Brüche bügeln
tool-press-cloth = zwei Bügeltücher: saubere, dünne Baumwolle
    .why = zwischen Eisen und Stoff, dem Hitze schadet; eines bleibt trocken
tool-zip-foot = Reißverschlussfuß
    .why = Nähen dicht neben den Zähnchen
tool-hemming-foot = Rollsaumfuß
    .why = Rollsaum
tool-fire-label = Baumwollband, roter waschfester Stift
    .why = das Etikett, das vor Feuer warnt
tool-label = Baumwollband, waschfester Stift
    .why = das Etikett
# $size: die metrische Stärke und in Klammern die ältere Nummer.
tool-needle = Maschinennadel { $size }, neu
    .why = für den schwersten Stoff und die dickste Naht

## Handwerkzeug

tool-pinking-shears = Zackenschere
    .why = Versäubern
tool-pins = Stecknadeln, etwa { $number }
    .why = Kanten halten; abzählen
tool-clips = Klammern, etwa { $number }
    .why = Kanten halten; abzählen
# Wo Klammern die Kanten halten, werden Fadenenden trotzdem um Stecknadeln gewickelt.
tool-tail-pins = Stecknadeln, etwa { $number }
    .why = Fadenenden halten; abzählen
# Klammern fassen Kanten; ein Bruch mitten im Stoff wird gesteckt.
tool-flat-pins = Stecknadeln, etwa { $number }
    .why = Brüche halten, an die Klammern nicht hinkommen; abzählen
tool-tape-measure = Maßband
    .why = Messen
tool-markers = Schneiderkreide, auswaschbarer Markierstift
    .why = Markieren innerhalb der Nahtzugabe; auf Netzstoff, durch den Kreide fällt, der Stift oder eine Schlinge aus leuchtendem Faden; beide auf einem Stoffrest ausprobieren und auswaschen
tool-shears = Stoffschere, kleine Schere
    .why = Stoff schneiden, Fäden abschneiden
tool-ruler = langes Lineal, etwas mit rechtem Winkel
    .why = gerade Linien und rechtwinklige Enden
tool-tape = Klebestreifen aus Papier, Zettel, Stift und Papier
    .why = Schnittlinien auf dem Tisch, Zettel der Teile, Zahlen zum Aufschreiben
tool-weights = Gewichte, etwa volle Konservendosen
    .why = den Stoff beim Schneiden festhalten
tool-seam-ripper = Nahttrenner
    .why = Auftrennen
tool-blunt-needle = stumpfe Handnadel, bunter Faden
    .why = Fadenenden vernähen, Seitennähte kennzeichnen
tool-blunt-stick = stumpfes Stäbchen, etwa eine Stricknadel
    .why = Ecken ausformen
tool-safety-pins = zwei Sicherheitsnadeln
    .why = das Gummiband einziehen, seine Überlappung halten
tool-safety-pin = Sicherheitsnadel oder Durchziehnadel
    .why = die Kordel einziehen
tool-small-safety-pins = kleine Sicherheitsnadeln, eine für jedes Raffband
    .why = die Enden der Kordeln halten
tool-bodkin = Durchziehnadel
    .why = durch Tunnel oder Spitze ziehen
tool-awl = Ahle, Kork
    .why = Löcher stechen
tool-eyelet-tool = Einschlagwerkzeug der Ösen
    .why = Öse und Scheibe schließen
tool-glue = Textilkleber
    .why = Schnittenden, die nicht ausfransen dürfen
tool-large-paper = großer Bogen Papier
    .why = der Mittelpunkt eines Bogens neben dem Stoff

## Für Reifen

tool-eye-protection = Schutzbrille
    .why = Reifenband schneiden
tool-bone-cutters = starke Zange, die für das Reifenband geeignet ist
    .why = Reifenband schneiden
tool-bone-caps = Kappen oder starkes Klebeband für die Enden des Reifenbands
    .why = Enden, die sich nicht durcharbeiten

## Zum Stärken

tool-brush = breiter weicher Pinsel, Schüssel
    .why = Stärke
tool-spray = Sprühflasche oder Sprühdose
    .why = Stärke
tool-bowl = Schüssel oder Wanne, in die das Teil passt
    .why = Stärke
tool-pan = Topf, langer Löffel
    .why = Stärke kochen
tool-measuring-jug = Messbecher
    .why = Flüssigkeit abmessen
tool-scale = Waage, die Zehntelgramm anzeigt
    .why = Farbe abwiegen
tool-dye-pan = Topf, Tasse, Löffel und Zange nur für Farbe, nie für Lebensmittel
    .why = Färben
tool-gloves = Handschuhe und Staubmaske
    .why = Farbpulver und heißes Bad
tool-sheet = altes Laken, trockenes Tuch
    .why = Tropfen auffangen und abtupfen
tool-hair-dryer = Haartrockner für die Hand
    .why = warme Luft zwischen den Lagen
tool-form = Schneiderpuppe, oder Korb und Ständer
    .why = das Kleidungsstück in Form trocknen
tool-board = steifes Brett
    .why = die Borte ohne Falten trocknen
# Whatever is made is hung up and measured at the end.
tool-hanger = Kleiderbügel mit Klammern
    .why = das Kleidungsstück aufhängen
