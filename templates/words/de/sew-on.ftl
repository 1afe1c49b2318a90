### Eine Reihe auf einer Linie quer über ein Teil aufnähen, so dass sie von dort fällt.
### $edge: die obere Kante der Reihe; $on: das Teil, das sie trägt.

sew-on-title = { PIECE($edge) } auf { PIECE($on) } nähen
    .number = { $from-edge }
sew-on-aim = { COUNT($edge) ->
    [one] { PIECE($edge, at: "start") } fällt { $hangs } weit von einer { $length } langen Linie und verdeckt die eigene Naht.
   *[other] { PIECE($edge, at: "start") } fallen { $hangs } weit von einer { $length } langen Linie und verdecken die eigene Naht.
 }

## Markieren

sew-on-mark-parts-ring = { $parts ->
    [8] Die Linie in Achtel teilen und alle { $part } markieren, die erste Markierung an { side-seam }.
   *[4] Die Linie in Viertel teilen und alle { $part } markieren, die erste Markierung an { side-seam }.
 }
sew-on-mark-parts-flat = { $parts ->
    [8] Die Linie in Achtel teilen und alle { $part } markieren.
   *[4] Die Linie in Viertel teilen und alle { $part } markieren.
 }

## Aufnähen

sew-on-lay = { PIECE($edge) } rechts auf rechts auf { PIECE($on) } legen, den Saum nach oben, die obere Kante { $seam-width } unter der Linie.
    .check = Der Saum zeigt zur oberen Kante von { PIECE($on) }.
    .remedy = Umdrehen: Andersherum genäht zeigt sich die linke Stoffseite.
sew-on-pin = { match-places } aufeinanderlegen und zuerst dort { pin }. Dazwischen alle { $spacing } { pin }: etwa { pins-needed }.
sew-on-sew-ring = { $seam-width } neben der oberen Kante auf der Linie steppen, { $length } rundum, { $stitch }. Das Ende drei Stiche über den Anfang nähen.
    .check = { PIECE($on, at: "start") } liegt darunter glatt: Keine Falte ist mitgefasst.
    .remedy = Diese Handbreit auftrennen, glatt streichen und neu steppen.
sew-on-sew-flat = { $seam-width } neben der oberen Kante auf der Linie steppen, { $length }, { $stitch }; an beiden Enden verriegeln.
    .check = { sew-on-sew-ring.check }
    .remedy = { sew-on-sew-ring.remedy }
sew-on-turn-down = { PIECE($edge) } über die Naht nach unten klappen und den Bruch mit den Fingern flach streichen.
    .check = Der Saum hängt überall { $hangs } unter dem Bruch, keine Nahtzugabe ist zu sehen.
    .tolerance = { $level-off } mehr oder weniger
    .remedy = Wo er schief hängt, ist die Kante von der Linie abgekommen: dort auftrennen und neu steppen.
