### Die festen Wörter einer Anleitung: ihrer Seite, ihres PDF, ihres Markdown und ihres JSON.
### Werte sind fertige Texte, wo keine Anmerkung anderes sagt.

## Kopf und Lesehilfen der Seite

page-skip-to-steps = Zu den Schritten springen
# Für wen die Anleitung ist, wo es eine Größe ist und keine Person.
page-size = Größe { $size }
page-aids = Lesehilfen
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
page-go = Los
# Fuß eines Blatts. $sheet, $sheets: seine Nummer und wie viele es sind.
page-sheet = { $sheet } von { $sheets }

## Überschriften der Teile

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

## Maße

page-rounded = Zuschnittmaße sind auf { $rounding } aufgerundet.
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
    [trip] Lange Säume
    [child] Kinder
   *[other] Vorsicht
 }
page-kind-head = { page-kind }.

## Material

page-materials-are = Was zu kaufen ist, und wie viel davon wirklich gebraucht wird.
page-material = Material
page-buy = Kaufen
page-cost = Kosten
page-need = Bedarf
page-need-amount = Bedarf { $amount }
page-for = Für
page-for-use = Für: { $use }

## Zuschneiden

page-cut-sizes-are = Zuschnittmaße enthalten alle Zugaben: nichts zugeben. Fertigmaße sind, was am Ende zu sehen ist.
page-letter = Buchstabe
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
page-remedy = Sonst
# Zwischen einer Überschrift und dem, was in derselben Zeile dahinter steht.
page-colon = :

## Fuß

page-end = Örtliche Vorschriften und zugelassene Fachleute gehen vor. Anleitung { $key }.
