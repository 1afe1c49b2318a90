### Einlage auf ein Teil bügeln, bevor es genäht wird.
### $cover: das ganze Teil, oder die äußere Hälfte eines gefalteten Bundes.

interface-title = { PIECE($piece) } mit Einlage verstärken
interface-aim = Die Einlage ({ $interfacing }) gibt { PIECE($piece) } Stand und endet vor den Nähten.
interface-cut = { $pieced ->
    [yes] Die Einlage ({ $interfacing }) in { $deep } breite Streifen schneiden, die auf { $long } Kante an Kante liegen.
   *[no] Die Einlage ({ $interfacing }) { $long } lang und { $deep } breit zuschneiden.
 }
interface-lay = { $cover ->
    [half] { PIECE($piece) } mit der linken Stoffseite nach oben legen. Die Einlage auf eine Hälfte legen, die lange Kante am künftigen Bruch, die raue Klebeseite nach unten; die Nahtzugaben bleiben frei.
   *[whole] { PIECE($piece) } mit der linken Stoffseite nach oben legen. Die Einlage auf die Mitte legen, die raue Klebeseite nach unten; die Nahtzugaben bleiben frei.
 }
    .check = Die Nahtzugaben sind ringsum frei.
    .remedy = Die Einlage zurückschneiden, bis sie vor den Nahtlinien endet.
interface-fuse = Ein feuchtes Tuch auflegen. Jede Stelle { $seconds } Sekunden pressen, ohne zu schieben, jede über den Rand der vorigen, wie das Merkblatt der Einlage sagt. Flach liegen lassen, bis sie kalt ist.
    .check = Beim Biegen löst sich keine Ecke.
    .remedy = Diese Stelle noch einmal etwas länger pressen.
