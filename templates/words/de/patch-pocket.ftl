### Eine aufgesetzte Tasche auf ein Teil nähen.
### $pocket: die Tasche; $on: das Teil darunter; $pockets: wie viele.

patch-pocket-title = { $pockets ->
    [one] { PIECE($pocket) } auf { PIECE($on) } nähen
   *[other] Jedes Stück von { PIECE($pocket) } auf { PIECE($on) } nähen
 }
patch-pocket-aim = { $pockets ->
    [one] Die Tasche ist { $wide } breit und { $high } hoch und oben offen.
   *[other] Jede Tasche ist { $wide } breit und { $high } hoch und oben offen.
 }

## Vorbereiten

patch-pocket-hem = An der oberen Kante von { PIECE($pocket) } { $under } auf die linke Stoffseite umbügeln, dann noch einmal { $hem }. { $edge } neben dem inneren Bruch von Seite zu Seite steppen, { $stitch }.
patch-pocket-press = Die beiden unteren Ecken schräg einschlagen, dann an den Seiten und unten { $turn } auf die linke Stoffseite umbügeln.
    .check = Die Tasche ist { $wide } breit und { $high } hoch, ihre Ecken sind rechtwinklig.
    .tolerance = { $off } mehr oder weniger
    .remedy = Wo der Bruch abweicht, neu bügeln.
# $finished: Die obere Kante des Teils darunter ist schon in einer Naht, gemessen wird von dort.
patch-pocket-mark-ring = { $finished ->
    [yes] Auf der rechten Stoffseite von { PIECE($on) } die beiden oberen Ecken markieren, { $from-edge } unter der oberen Naht: { $near } und { $far } von { side-seam } entfernt.
   *[no] Auf der rechten Stoffseite von { PIECE($on) } die beiden oberen Ecken markieren, { $from-edge } unter der oberen Schnittkante: { $near } und { $far } von { side-seam } entfernt.
 }
    .check = { patch-pocket-level.check }
    .tolerance = { patch-pocket-level.tolerance }
    .remedy = { patch-pocket-level.remedy }
patch-pocket-mark-flat = { $finished ->
    [yes] Auf der rechten Stoffseite von { PIECE($on) } die beiden oberen Ecken markieren, { $from-edge } unter der oberen Naht: { $near } und { $far } vom linken Ende entfernt, wie es jetzt ist.
   *[no] Auf der rechten Stoffseite von { PIECE($on) } die beiden oberen Ecken markieren, { $from-edge } unter der oberen Schnittkante: { $near } und { $far } vom linken Ende entfernt, wie es jetzt ist.
 }
    .check = { patch-pocket-level.check }
    .tolerance = { patch-pocket-level.tolerance }
    .remedy = { patch-pocket-level.remedy }
# Nur als Teile der beiden darüber gesagt.
patch-pocket-level =
    .check = Beide Markierungen liegen auf gleicher Höhe.
    .tolerance = { $level-off } mehr oder weniger
    .remedy = Noch einmal von der oberen Kante aus messen.
patch-pocket-mark-other = Die andere Tasche in gleicher Höhe und ebenso weit von der anderen Seite entfernt markieren.

## Aufnähen

patch-pocket-pin = { PIECE($pocket) } mit der rechten Stoffseite nach oben auflegen, die oberen Ecken an den Markierungen, und feststecken.
patch-pocket-sew = { $edge } neben der Kante an einer Seite hinunter, unten entlang und an der anderen Seite hinauf steppen, { $stitch }. An beiden oberen Ecken ein { $triangle } langes Dreieck steppen und verriegeln.
    .check = Die Tasche liegt flach, eine Hand passt hinein, und keine Stecknadel ist darin geblieben.
    .remedy = Die Seite, die zieht, auftrennen, glatt streichen und neu steppen.
