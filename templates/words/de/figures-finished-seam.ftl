### Schnitte durch Nähte, die ihre offenen Kanten selbst einschließen: französische Naht, Kappnaht, Überlappnaht.
### $upper und $lower: die Teile der oberen und der unteren Lage.

## Französische Naht

figure-french-second = Die zweite Naht, an der Maschine
figure-french-trimmed = auf { $trim } zurückgeschnitten
figure-french-first = erste Naht
# $upper-label, $lower-label (Text): die Namen, die die Schneiderin den Teilen gibt.
figure-french-plies = { $upper-label } oben, { $lower-label } unten
figure-french-alt = Französische Naht im Schnitt, rechts auf rechts: Die erste Naht von { $first } liegt auf dem Bruch, ihre Zugabe, auf { $trim } zurückgeschnitten, zwischen den Lagen; die zweite Naht läuft { $second } neben dem Bruch.
figure-french-caption = Die offenen Kanten liegen in der zweiten Naht.{ figure-hatched }

## Kappnaht

figure-felled-seen = Linke Stoffseite oben
figure-felled-alt = Kappnaht im Schnitt, linke Stoffseite oben: Eine Nahtzugabe von { $seam-width } ist um die andere geschlagen, die auf { $trim } zurückgeschnitten ist, { $fell } breit flach gelegt und entlang des Bruchs gesteppt.
figure-felled-caption = Die breite Nahtzugabe umschließt die schmale.{ figure-hatched }

## Überlappnaht

figure-lapped-upper = { $upper-label }, oben
figure-lapped-lower = { $lower-label }, unten
figure-lapped-alt = { $turned ->
    [yes] Überlappnaht im Schnitt, rechte Stoffseite oben: { PIECE($upper) } liegt { $lap } über { PIECE($lower) }, { $from-fold } neben dem Bruch gesteppt.
   *[no] Überlappnaht im Schnitt, rechte Stoffseite oben: { PIECE($upper) }, nicht eingeschlagen, liegt { $lap } über { PIECE($lower) }, { $from-fold } neben der Kante gesteppt.
 }
figure-lapped-caption = Die obere Kante liegt auf der unteren.{ figure-hatched }
