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
tool-overlocker = Overlock, eingefädelt
    .why = Versäubern
tool-attachment = Faltenlegefuß
    .why = Kräuseln
tool-hand-needle = Handnadel und Fingerhut
    .why = Nähen von Hand
tool-iron = Bügeleisen, Bügelbrett
    .why = Nähte und Brüche bügeln
tool-press-cloth = Bügeltuch
    .why = zwischen Eisen und Stoff, dem Hitze schadet
tool-hemming-foot = Rollsaumfuß
    .why = Rollsaum
tool-fire-label = Baumwollband, roter waschfester Stift
    .why = das Etikett, das vor Feuer warnt
# $size: die metrische Stärke und in Klammern die ältere Nummer.
tool-needle = Maschinennadel { $size }
    .why = der leichteste Stoff dieses Kleidungsstücks

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
tool-measuring = Maßband, auswaschbarer Markierstift, Stoffschere
    .why = messen, markieren, schneiden
tool-ruler = langes Lineal, etwas mit rechtem Winkel
    .why = gerade Linien und rechtwinklige Enden
tool-tape = Klebestreifen aus Papier, Zettel
    .why = Schnittlinien auf dem Tisch, Buchstaben der Teile
tool-weights = Gewichte, etwa volle Konservendosen
    .why = den Stoff beim Schneiden festhalten
tool-seam-ripper = Nahttrenner
    .why = Auftrennen
tool-blunt-needle = stumpfe Handnadel, bunter Faden
    .why = Fadenenden vernähen, Seitennähte kennzeichnen
tool-blunt-stick = stumpfes Stäbchen, etwa eine Stricknadel
    .why = Ecken ausformen
tool-safety-pins = zwei Sicherheitsnadeln
    .why = das Gummiband einziehen

## Zum Stärken

tool-brush = breiter weicher Pinsel
    .why = Stärke
tool-spray = Sprühflasche oder Sprühdose
    .why = Stärke
tool-bowl = Schüssel oder Wanne, in die das Teil passt
    .why = Stärke
tool-pan = Topf, langer Löffel, Messbecher
    .why = Stärke kochen
tool-sheet = altes Laken
    .why = Tropfen auffangen
