### Eine Kante auf ein kürzeres Maß kräuseln.

gather-title = { EDGE($edge, at: "start") } kräuseln
    .number = { $cloth } → { $short }
gather-aim = { $cloth } Stoff liegen auf { $short }: { $ratio } zu 1.

## Markierungen

# $marked: Die Lagen haben schon ihre Markierungen.
gather-hold-layers = { $layers ->
    [2] { $marked ->
        [yes] Beide Lagen bündig zusammenhalten und durch beide hindurch arbeiten. Die Markierungen der Lagen sind auch die der Kräuselung.
       *[no] Beide Lagen bündig zusammenhalten und durch beide hindurch arbeiten.
    }
   *[other] { $marked ->
        [yes] Alle { $layers } Lagen bündig zusammenhalten und durch alle hindurch arbeiten. Die Markierungen der Lagen sind auch die der Kräuselung.
       *[no] Alle { $layers } Lagen bündig zusammenhalten und durch alle hindurch arbeiten.
    }
 }

# Die Kante ist ein Ring: Das Falten beginnt an ihrer Seitennaht.
gather-fold-ring = { $parts ->
    [8] { EDGE($edge, at: "start") } von { side-seam } aus dreimal zur Hälfte falten. Die Brüche auf beiden Stoffseiten markieren: alle { $cloth-part } am flachen Stoff.
   *[4] { EDGE($edge, at: "start") } von { side-seam } aus zweimal zur Hälfte falten. Die Brüche auf beiden Stoffseiten markieren: alle { $cloth-part } am flachen Stoff.
 }
gather-fold-flat = { $parts ->
    [8] { EDGE($edge, at: "start") } Ende auf Ende dreimal zur Hälfte falten. Die Brüche auf beiden Stoffseiten markieren: alle { $cloth-part } am flachen Stoff.
   *[4] { EDGE($edge, at: "start") } Ende auf Ende zweimal zur Hälfte falten. Die Brüche auf beiden Stoffseiten markieren: alle { $cloth-part } am flachen Stoff.
 }
# Hinten kommt mehr Stoff hin als vorn; gleichmäßige Markierungen aus einem früheren Schritt gelten nicht.
gather-old-marks = Die Markierungen auf { EDGE($edge, case: "dative") } ausreiben.
# Tüll ist mit Fadenschlingen markiert; einige Lagen können aus Tüll sein oder alle.
gather-old-loops = { $seam ->
    [bright] Die Fadenschlingen herausschneiden, mit denen { EDGE($edge) } markiert ist. Der bunte Faden in der Seitennaht bleibt.
   *[plain] Die Fadenschlingen herausschneiden, mit denen { EDGE($edge) } markiert ist.
 }
gather-old-both = { $seam ->
    [bright] Die Markierungen auf { EDGE($edge, case: "dative") } ausreiben und die Fadenschlingen im Tüll herausschneiden. Der bunte Faden in der Seitennaht bleibt.
   *[plain] Die Markierungen auf { EDGE($edge, case: "dative") } ausreiben und die Fadenschlingen im Tüll herausschneiden.
 }
gather-mark-ring = { EDGE($edge, at: "start") } auf beiden Stoffseiten bei { $marks } markieren, von { side-seam } aus am flachen Stoff gemessen. Diese Naht kommt in die hintere Mitte.
    .check = { $behind } des Stoffs liegen in der hinteren Hälfte, die Naht in der hinteren Mitte.
    .remedy = Ist vorn mehr Stoff als hinten, wurde von der falschen Stelle aus markiert: von der Naht aus neu messen.
gather-mark-flat = { EDGE($edge, at: "start") } auf beiden Stoffseiten bei { $marks } markieren, vom linken Ende aus am flachen Stoff gemessen.
    .check = { $behind } des Stoffs liegen in der hinteren Hälfte, die Enden in der hinteren Mitte.
    .remedy = Ist vorn mehr Stoff als hinten, wurde von der falschen Stelle aus markiert: von den Enden aus neu messen.

## Mit dem Faltenlegefuß

gather-set-by-swatch = Den Faltenlegefuß einsetzen: eine Falte bei jedem Stich, Tiefe auf Marke { $mark }, Stichlänge wie bei den Probestreifen. Diese zeigen, dass der Stoff so auf 1/{ $ratio } kommt.
gather-set-half = Den Faltenlegefuß einsetzen: eine Falte bei jedem Stich, Tiefe auf Marke 6. So kommt der Stoff etwa auf die Hälfte.
gather-set-begin = Den Faltenlegefuß einsetzen: eine Falte bei jedem Stich, zuerst Tiefe auf Marke 6. So kommt der Stoff etwa auf die Hälfte; hier soll er auf 1/{ $ratio } kommen.
gather-try = Auf einem { $strip } langen Reststreifen ausprobieren.
    .check = Der Streifen ist danach { $strip-short } lang.
    .tolerance = { $strip-off }
    .remedy = Ist er länger, die Tiefe etwas größer einstellen, ist er kürzer, etwas kleiner. Noch einmal ausprobieren.
gather-pleat = { EDGE($edge, at: "start") } { $first-row } neben der Schnittkante in Falten legen, rechte Stoffseite oben, { $cloth } in einem Zug.

## Mit zwei Kräuselnähten

gather-thread-needle = Doppelten Faden in eine Handnadel fädeln, für Vorstiche von etwa { $hand-stitch }.
gather-set-machine = { rows-set-machine }
gather-first-row = { $first-row } neben der Schnittkante eine Kräuselnaht steppen. { rows-runs }
gather-second-row = Ebenso eine zweite Kräuselnaht steppen, { $second-row } neben der Schnittkante, { $apart } neben der ersten.
    .check = Die Kräuselnähte kreuzen sich nicht.
gather-wind-tails = { $in-runs ->
    [yes] An einem Ende jeder Teilstrecke eine Stecknadel quer einstecken und die Fadenenden in Form einer Acht herumwickeln.
   *[no] An einem Ende der Kräuselnähte eine Stecknadel quer einstecken und die Fadenenden in Form einer Acht herumwickeln.
 }
gather-knot-tails = { $in-runs ->
    [yes] An einem Ende jeder Teilstrecke die beiden oberen Fadenenden auf ihrer Stoffseite verknoten, die beiden unteren auf der anderen. Auf { $knot } kürzen.
   *[no] An einem Ende der Kräuselnähte die beiden oberen Fadenenden auf ihrer Stoffseite verknoten, die beiden unteren auf der anderen. Auf { $knot } kürzen.
 }
    .check = Ein leichter Zug am anderen Ende zieht sie nicht hinein.
    .remedy = Noch einmal verknoten.
gather-pull-machine = { $parts ->
    [8] Am anderen Ende beide Unterfäden zusammen anziehen, bis jedes Achtel an den Reihen { $short-part } misst. Diese Fadenenden um eine Stecknadel wickeln.
   *[4] Am anderen Ende beide Unterfäden zusammen anziehen, bis jedes Viertel an den Reihen { $short-part } misst. Diese Fadenenden um eine Stecknadel wickeln.
 }
gather-pull-hand = { $parts ->
    [8] Am anderen Ende beide Fäden zusammen anziehen, bis jedes Achtel an den Reihen { $short-part } misst. Diese Fadenenden um eine Stecknadel wickeln.
   *[4] Am anderen Ende beide Fäden zusammen anziehen, bis jedes Viertel an den Reihen { $short-part } misst. Diese Fadenenden um eine Stecknadel wickeln.
 }

## Messen und verteilen

gather-measure-ring = Die gekräuselte Kante rundum messen: { $short }.
    .check = { gather-measure.check }
    .tolerance = { gather-measure.tolerance }
    .remedy = { gather-measure.remedy }
gather-measure-flat = Die gekräuselte Kante messen: { $short }.
    .check = { gather-measure.check }
    .tolerance = { gather-measure.tolerance }
    .remedy = { gather-measure.remedy }
# Nur als Teil der beiden darüber gesagt.
gather-measure =
    .check = { $has-target ->
        [yes] { $at-cut ->
            [yes] Sie ist { $short } lang, so lang wie { EDGE($target) }.
           *[no] Sie ist { $short } lang, so lang wie { EDGE($target) } auf der Nahtlinie.
        }
       *[no] Sie ist { $short } lang.
     }
    .tolerance = { $has-target ->
        [yes] insgesamt bis { $ease } zu kurz: Die glatte Kante wird beim Stecken eingehalten
       *[no] insgesamt bis { $ease } zu kurz
     }
    .remedy = Mehr als { $ease } zu kurz: die Kräuselung lockern. Zu lang: enger zusammenziehen.
gather-spread = { $parts ->
    [8] Die Kräuselung mit den Fingern gleichmäßig verteilen, Achtel für Achtel.
   *[4] Die Kräuselung mit den Fingern gleichmäßig verteilen, Viertel für Viertel.
 }
gather-knot-pulled = Die Nadeln herausnehmen, die die Fadenenden halten, und diese Fadenenden wie an den anderen Enden verknoten: die oberen auf der einen, die unteren auf der anderen Stoffseite. Auf { $knot } kürzen.
    .check = Die Kante misst noch { $short }.
    .remedy = Ist ein Knoten gerutscht, die Kräusel wieder zusammenziehen und dichter am Stoff verknoten.
gather-set-back = { rows-set-back }
