### Einlage auf ein Teil bügeln, bevor es genäht wird.
### $cover: das ganze Teil, oder die äußere Hälfte eines gefalteten Bundes.

interface-title = { PIECE($piece) } mit Einlage verstärken
interface-aim = Die Einlage ({ $interfacing }) gibt { PIECE($piece) } Stand und endet vor den Nähten.
interface-cut = { $pieced ->
    [yes] Die Einlage ({ $interfacing }) in { $deep } breite Streifen schneiden, die auf { $long } Kante an Kante liegen.
   *[no] Die Einlage ({ $interfacing }) { $long } lang und { $deep } breit zuschneiden.
 }
# $dots: was der Stoff verträgt, höchstens was der Kleber braucht.
interface-iron = { $dots ->
    [1] Das Bügeleisen auf einen Punkt stellen, 110 °C, ohne Dampf: Mehr verträgt { PIECE($piece) } nicht. Erst einen Rest der Einlage auf ein Reststück bügeln. Was ihr Merkblatt sagt, geht vor.
   *[2] Das Bügeleisen auf zwei Punkte stellen, 150 °C, seinen Dampf aus: Das feuchte Bügeltuch gibt so viel, wie nötig ist. Erst einen Rest der Einlage auf ein Reststück bügeln. Was ihr Merkblatt sagt, geht vor.
 }
    .check = Der Rest lässt sich nicht abziehen, und der Stoff hat sich nicht verändert.
    .remedy = Länger pressen; hilft das nicht, nach einer Einlage fragen, die zu diesem Stoff passt.
interface-crease = { PIECE($piece, at: "start") } der Länge nach zur Hälfte falten, links auf links, { $half } hoch. Den Bruch leicht bügeln und wieder auffalten: Die Bügelfalte ist der künftige Bruch.
interface-lay = { $cover ->
    [half] { PIECE($piece) } mit der linken Stoffseite nach oben legen. Die Einlage auf eine Hälfte legen, die lange Kante an der Bügelfalte, die raue Klebeseite nach unten; die Nahtzugaben bleiben frei.
   *[whole] { PIECE($piece) } mit der linken Stoffseite nach oben legen. Die Einlage auf die Mitte legen, die raue Klebeseite nach unten; die Nahtzugaben bleiben frei.
 }
    .check = Die Nahtzugaben sind ringsum frei.
    .remedy = Die Einlage zurückschneiden, bis sie vor den Nahtlinien endet.
interface-fuse = { $dots ->
    [1] Ein trockenes Bügeltuch auflegen. Jede Stelle { $seconds } Sekunden pressen, ohne zu schieben, jede über den Rand der vorigen. Flach liegen lassen, bis sie kalt ist.
   *[2] Ein feuchtes Bügeltuch auflegen. Jede Stelle { $seconds } Sekunden pressen, ohne zu schieben, jede über den Rand der vorigen. Flach liegen lassen, bis sie kalt ist.
 }
    .check = Beim Biegen löst sich keine Ecke.
    .remedy = Diese Stelle noch einmal etwas länger pressen.
