### Die festen Wörter einer Anleitung: ihrer Seite, ihres PDF, ihres Markdown und ihres JSON.
### Werte sind fertige Texte, wo keine Anmerkung anderes sagt.

## Kopf und Lesehilfen der Seite

page-skip-to-steps = Zu den Schritten springen
# Für wen die Anleitung ist, wo es eine Größe ist und keine Person.
page-size = Größe { $size }
page-aids = Lesehilfen
# Links to the guides of the other sizes, where several are made together.
page-sizes = Größen
page-every-size = Alle Größen
page-languages = Sprachen
page-large-print = Große Schrift
page-dark = Dunkel
page-progress = Fortschritt
page-steps-done = Erledigte Schritte
# $done, $steps (Zahlen)
page-done = { $done } von { $steps } erledigt
page-next = Als Nächstes
page-go-to-step = Zu Schritt
# Steht im leeren Feld für die Nummer eines Schritts.
page-step-number = F3
# One sentence with its drawing at a time, for the sewing table.
page-one-step = Schritt für Schritt
page-step-back = Zurück
page-step-on = Nächster Schritt
page-all-steps = Alle Schritte
page-larger = Zeichnung vergrößern
page-close = Schließen
page-go = Los
# Fuß eines Blatts. $sheet, $sheets: seine Nummer und wie viele es sind.
page-sheet = { $sheet } von { $sheets }

## Überschriften der Teile

# Was ein Lesegerät über die Datei sagt, für alle, die sie vorgelesen oder groß brauchen.
page-book-read = Jede Zeichnung ist auch in Worten beschrieben, mit den Zahlen, die sie zeigt. Inhalt, Überschriften und Tabellen führen durch die Anleitung, und nichts darin bewegt sich, blitzt oder tönt.
page-contents = In dieser Anleitung
page-garment = Das Kleidungsstück
page-measurements = Maße
page-cautions = Vorsicht
page-tools = Werkzeug
page-materials = Material
page-cutting = Zuschneiden
page-proved = Vor dem Zuschneiden nachgewiesen
# Dasselbe im Inhaltsverzeichnis.
page-proved-short = Nachgewiesen
page-notes = Hinweise der Schneiderin
page-reasons = Woher die Zahlen kommen

## The first pages

page-glance = Auf einen Blick
# $sittings (number)
page-plan = { $sittings ->
    [1] Die Arbeit: Zuschneiden und eine Sitzung
   *[other] Die Arbeit: Zuschneiden und { $sittings } Sitzungen
 }
page-plan-left = { $sittings ->
    [1] Was noch zu tun ist: eine Sitzung
   *[other] Was noch zu tun ist: { $sittings } Sitzungen
 }
page-begin = Bevor es losgeht
page-measure = Maß nehmen
# $whose: a size or a wearer.
page-measure-told = Über dünner Kleidung, das Maßband waagerecht und nicht straff; eine zweite Person liest ab. Die Zahlen dieser Anleitung gelten für { $whose }: Weichen die eigenen um mehr als eine Fingerbreite ab, die Anleitung neu machen lassen.
# Over the empty lines of the form.
page-yours = eigenes Maß
page-choose-size = Die Größe wählen
page-whole = Die ganze Arbeit in einer Tabelle
page-whole-told = Für alle, die das schon einmal genäht haben. Der Buchstabe führt zu den Sätzen und ihren Zeichnungen.
page-what = was
page-the-number = die Zahl
page-time = Zeit
page-on-sheet = Seite
page-pieces = Die Teile
page-words = Fachwörter
page-kept = Pflege
page-hint-new = Zum ersten Mal? Vom ersten bis zum letzten Buchstaben gehen. Jeder Satz steht neben seiner Zeichnung; abhaken, was getan ist. Am Ende sind die Fachwörter und die Zeichen der Zeichnungen erklärt.
page-hint-done = Schon einmal genäht? Eine Tabelle zeigt die ganze Arbeit: Buchstabe, Zahl, Zeit.
page-hint-lost = Die Stelle verloren? Die Buchstaben am Fuß jeder Seite zeigen, wo man ist. G3 ist Satz 3 von G.
# $claims (number)
page-proved-line = { $claims ->
    [one] Vor dem Zuschneiden für diese Maße bewiesen: { $claims } Aussage. Sie steht mit ihren Zahlen in der Anleitung am Bildschirm.
   *[other] Vor dem Zuschneiden für diese Maße bewiesen: { $claims } Aussagen. Sie stehen mit ihren Zahlen in der Anleitung am Bildschirm.
 }

## Maße

page-rounded = { $rounding ->
    [none] Zuschnittmaße sind nicht gerundet.
   *[other] Zuschnittmaße sind auf { $rounding } aufgerundet.
 }
# $units: die der Vorlage, wo die Anleitung andere nennt.
page-reasons-units = { $units ->
    [inches] Die Begründungen sind in Zoll gerechnet.
   *[cm] Die Begründungen sind in cm gerechnet.
 }
page-numbers-units = { $units ->
    [inches] Die Zahlen sind in Zoll gerechnet.
   *[cm] Die Zahlen sind in cm gerechnet.
 }
# $reasons: die Überschrift jenes Teils, als Verweis.
page-reasons-told = { $reasons }, steht gegen Ende.
page-measurement = Maß
page-length = Länge
page-comes-from = Woher es kommt

## Warum eine Zahl so ist

# $numbers: eine Zahl oder eine Liste davon. Was nicht zu sehen ist, wird dahinter vorgelesen.
page-why = Warum { $numbers }
    .unseen = bei Teil „{ $piece }“
# $told: woraus sich die Zahl ergibt, etwa eine Summe.
page-then-rounded = { $told }, dann aufgerundet
page-told-above = siehe oben
page-told-by-name = nach dem Namen fragen

## Vorsicht

# Die Wörter über einem Hinweis.
page-kind = { $kind ->
    [needle] Nadeln
    [blade] Klingen
    [heat] Heißes Bügeleisen
    [flame] Flammen
    [steam] Dampf
    [aerosol] Sprühnebel
    [dye] Farbe
    [chemical] Chemikalien
    [trip] Lange Säume
    [child] Kinder
   *[other] Vorsicht
 }
page-kind-head = { page-kind }.

## Material

page-materials-are = Was zu kaufen ist, und wie viel davon wirklich gebraucht wird.
page-material = Material
page-buy = Kaufen
# In der Anleitung eines Kurses, der gemeinsam einkauft.
page-given = Nehmen
page-given-are = Was ausgegeben wird und was auf dem Stapel liegt.
page-cost = Kosten
page-need = Bedarf
page-need-amount = Bedarf { $amount }
page-for = Für
page-for-use = Für: { $use }

## Zuschneiden

page-cut-sizes-are = Zuschnittmaße enthalten alle Zugaben: nichts zugeben. Fertigmaße sind, was am Ende zu sehen ist. Auf dem Zettel eines Teils steht seine Nummer von hier, mit einem Buchstaben für jedes von mehreren gleichen: 1a, 1b. Wird eines in Stücken zugeschnitten, ist 1a·2 das zweite Stück von 1a.
page-letter = Buchstabe
page-piece-number = Nr.
page-piece = Teil
page-cloth = Stoff
page-cut = Zuschnitt
page-depth = Höhe
page-finished = Fertig
page-note = Anmerkung
page-cut-size = { $length } lang, { $depth } hoch

## Schritte

page-check = Prüfen
page-tolerance = Toleranz
# $place: the letter and number of a sentence that a drawing of the same stands beside, such as C2.
page-drawn-at = Wie die Zeichnung bei { $place }.
page-remedy = Sonst
# Zwischen einer Überschrift und dem, was in derselben Zeile dahinter steht.
page-colon = :

## Fuß

page-end = Örtliche Vorschriften und zugelassene Fachleute gehen vor. Anleitung { $key }.
