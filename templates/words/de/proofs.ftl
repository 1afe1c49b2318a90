### Was vor dem Zuschneiden nachgewiesen wurde, und wie: eine Behauptung, und was die Probe am Modell gezeigt hat.

proof-sizes = Zuschnittmaße abzüglich Nähten und Einschlägen ergeben die Fertigmaße
proof-sizes-measured = { $pieces ->
    [one] nachgemessen an { $pieces } Art von Teil
   *[other] nachgemessen an { $pieces } Arten von Teilen
 }

proof-gap = Die Öffnung für das Gummiband war rechtzeitig offen und ist geschlossen
proof-gap-closed = geschlossen: { $gaps }
proof-gap-none = kein Tunnel hat eine Öffnung
# Nur hinter „geschlossen“ gesagt.
proof-gap-in = { $gap } in { PIECE($piece) }
proof-gap-in-cord = { $gap } in { PIECE($piece) }, wo die Kordel herauskommt
proof-gap-in-elastic = { $gap } in { PIECE($piece) }, wo das Gummiband herauskommt
proof-seam-gaps = Eine Öffnung in einer Naht wird gefüllt oder geschlossen
proof-seam-gap-filled = { $gap } in der Naht: { PIECE($piece) }

proof-gathers = Jede gekräuselte Kante wird von einer Naht gehalten
proof-gathers-sewn = { $edges ->
    [one] { $edges } gekräuselte Kante ist eingenäht
   *[other] { $edges } gekräuselte Kanten sind eingenäht
 }

proof-hem-level = Der Saum hängt waagerecht
proof-hem-above-floor = { PIECE($piece) } endet { $height } über dem Boden
proof-hem-above-floor-places = { PIECE($piece) } endet vorn { $front }, an den Seiten { $side } und hinten { $back } über dem Boden

proof-edges-match = Die Kanten passen an jeder Naht zusammen
proof-edges-matched = { $seams ->
    [one] { $seams } Naht verbindet gleich lange Kanten
   *[other] { $seams } Nähte verbinden gleich lange Kanten
 }

proof-hidden = Was darunter liegt, bleibt verdeckt
proof-hidden-above = { PIECE($piece) } endet { $left } über dem Saum
proof-hidden-layers = von außen nach innen enden die Lagen bei { $ends }

proof-one-garment = Jedes Teil wird gebraucht, und alles hängt zusammen
proof-one-garment-pieces = { $pieces ->
    [one] das eine Teil ist genäht
   *[other] alle { $pieces } Teile hängen zusammen
 }

proof-opening = Es geht über die Hüfte, und es hält an der Taille
proof-opening-flat = flach { $flat } für { $girth } Körperumfang
proof-opening-cord = eine Kordel zieht es zusammen
proof-opening-stretch = das Gummiband dehnt sich { $stretch }
proof-opening-stretch-rated = das Gummiband dehnt sich { $stretch } von höchstens { $rated }
proof-opening-band = offen rundum { $way-in } für { $passes }; geschlossen { $waist } an der Taille
proof-opening-none = das Kleidungsstück hat weder Tunnel noch Schlitz

proof-no-raw-edge = Keine Kante kann ausfransen
proof-edges-finished = { $edges ->
    [one] { $edges } Kante ist gesäumt, versäubert, eingenäht oder eingefasst
   *[other] { $edges } Kanten sind gesäumt, versäubert, eingenäht oder eingefasst
 }
proof-edges-stay-raw = { $edges } dürfen offen bleiben, denn der Stoff franst nicht aus

proof-no-raw-margin = Keine Nahtzugabe kann ausfransen
proof-margins = von { $seams } Nähten sind { $neatened } versäubert, { $enclosed } eingefasst und { $free } in Stoff, der nicht ausfranst

proof-used = Alles, was gekauft wird, wird gebraucht
proof-used-materials = { $materials ->
    [one] { $materials } Material wird gebraucht
   *[other] { $materials } Materialien werden gebraucht
 }
proof-used-materials-thread = { $materials ->
    [one] { $materials } Material und der Faden werden gebraucht
   *[other] { $materials } Materialien und der Faden werden gebraucht
 }

proof-elastic = Das Gummiband trägt das Gewicht des Kleidungsstücks
proof-elastic-none = nicht gefragt: An keiner bekannten Taille wird Gummiband eingezogen
proof-elastic-no-weight = nicht gefragt: Ein Stoff hat keine Gewichtsangabe, das Gewicht des Kleidungsstücks ist also unbekannt
proof-elastic-load = etwa { $weight } an Gummiband, { $wide } breit und { $less } kürzer als der Taillenumfang
proof-elastic-limit = bis { $limit } genügt jedes Gummiband, das kürzer als der Taillenumfang ist
proof-elastic-limit-heavy = bis { $limit } genügt jedes Gummiband, das kürzer als der Taillenumfang ist, darüber eines, das { $usual } kürzer ist

proof-thickness = Keine Naht ist dicker, als die Maschine schafft
proof-thickest = die dickste misst etwa { $thick }
proof-thickest-none = nichts wird zusammengenäht

proof-clear = Nichts liegt einem anderen im Weg
proof-clear-things = { $things ->
    [one] { $things } Ding liegt auf dem Stoff
   *[other] { $things } Dinge liegen auf dem Stoff, jedes frei von den anderen
 }

proof-numbers = Jede Zahl lässt sich nähen und gebrauchen
proof-numbers-within = { $numbers ->
    [one] { $numbers } Zahl liegt innerhalb ihrer Grenzen
   *[other] { $numbers } Zahlen liegen innerhalb ihrer Grenzen
 }

proof-fullness = Der Stoff verträgt die Mehrweite an jeder Linie
proof-fullness-held = { $stretches ->
    [one] { $stretches } Strecke wird gehalten, wie ihr Stoff es verträgt
   *[other] { $stretches } Strecken werden gehalten, wie ihr Stoff es verträgt
 }

proof-length = Die Höhen ergeben zusammen die fertige Länge
proof-length-sum = { $depths } = { $length }

proof-rings = Jeder Ring geht über den Körper und lässt an seiner Stelle Platz
proof-rings-passed = { $rings ->
    [one] { $rings } Ring unter der oberen Kante, geöffnet { $narrowest }
   *[other] { $rings } Ringe unter der oberen Kante, der engste geöffnet { $narrowest }
 }
proof-rings-none = unter der oberen Kante liegt kein Ring
proof-rings-no-hips = nicht gefragt: In der Vorlage fehlt der Hüftumfang

proof-held = Oben wird es von etwas gehalten
proof-held-ring = { EDGE($edge, at: "start") }, ungedehnt { $rest }
proof-held-cord = eine Kordel an { EDGE($edge, case: "dative") }
proof-held-tied = eine Kordel, die um die Taille gebunden wird
proof-held-band = ein Bund mit Verschluss
proof-held-straps = Träger über den Schultern
proof-held-none = nichts Bekanntes

proof-way-round = Der Stoff zeigt seine rechte Stoffseite und hängt richtig herum
proof-way-round-shown = jede Lage und jedes Muster wurde betrachtet

proof-no-bag = Was oben und unten zusammengenäht ist, ist dazwischen gleich lang
proof-no-bag-shown = keine Lage hängt durch

proof-rows-covered = Eine Reihe, die die Naht der Reihe darunter verdecken soll, hängt darüber
proof-rows-covered-by = { PIECE($row, at: "start") } hängt { $over } weit über die Naht darunter

proof-measures = Die Körpermaße sind nicht vertauscht
proof-measures-shown = Taille, Hüfte und Höhen wurden verglichen

proof-ends = Lose Enden reichen nicht auf den Boden und passen zur tragenden Person
proof-ends-shown = Kordeln, Bänder und Schleifen wurden bis zu ihren Enden verfolgt
proof-held-by-maker = etwas anderes, wie die Vorlage sagt

# Der Grund steht daneben, in den Worten der Person, die die Vorlage geschrieben hat.
proof-accepted = So gewollt

proof-heat = Nichts wird heißer gebügelt, als es verträgt
proof-heat-shown = das Eisen wird jedes Mal für das Empfindlichste eingestellt, das es berühren kann
