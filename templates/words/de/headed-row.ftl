### Eine Reihe unterhalb ihrer Kante kräuseln und auf einer Linie quer über ein Teil aufnähen, so dass ein Köpfchen über der Naht steht.

headed-row-title = { PIECE($row) } mit Köpfchen auf { PIECE($on) } nähen
headed-row-aim = { $cloth } Stoff liegen auf { $length }: { $ratio } zu 1.

headed-row-mark-ring = { $parts ->
    [8] { EDGE($edge, at: "start") } auf beiden Stoffseiten in Achtel teilen und alle { $cloth-part } markieren, die Linie alle { $part }, die ersten Markierungen an { side-seam }.
   *[4] { EDGE($edge, at: "start") } auf beiden Stoffseiten in Viertel teilen und alle { $cloth-part } markieren, die Linie alle { $part }, die ersten Markierungen an { side-seam }.
 }
headed-row-mark-flat = { $parts ->
    [8] { EDGE($edge, at: "start") } auf beiden Stoffseiten in Achtel teilen und alle { $cloth-part } markieren, die Linie alle { $part }.
   *[4] { EDGE($edge, at: "start") } auf beiden Stoffseiten in Viertel teilen und alle { $cloth-part } markieren, die Linie alle { $part }.
 }

headed-row-first-row = { $heading } unter { EDGE($edge, case: "dative") } eine Kräuselnaht steppen. { rows-runs }
headed-row-second-row = Ebenso eine zweite Kräuselnaht steppen, { $apart } unter der ersten.
    .check = Die beiden Kräuselnähte laufen nebeneinander.
headed-row-pull = { $parts ->
    [8] Am anderen Ende beide Unterfäden zusammen anziehen, bis jedes Achtel { $part } misst. Auch diese Fadenenden um eine Stecknadel wickeln.
   *[4] Am anderen Ende beide Unterfäden zusammen anziehen, bis jedes Viertel { $part } misst. Auch diese Fadenenden um eine Stecknadel wickeln.
 }
    .check = Die gekräuselte Linie ist { $length } lang; das Köpfchen darüber steht frei.
    .tolerance = bis { $ease } zu kurz: wird eingehalten
    .remedy = Mehr als { $ease } zu kurz: die Kräuselung lockern. Zu lang: enger zusammenziehen.

headed-row-lay = { PIECE($row) } mit der rechten Stoffseite nach oben auf { PIECE($on) } legen, die obere Kräuselnaht auf die Linie, Markierung auf Markierung. Dort feststecken, dann alle { $spacing }.
headed-row-sew-ring = Rechte Stoffseite oben: auf beiden Kräuselnähten steppen, je { $length } rundum, { $stitch }. Das Ende jeweils drei Stiche über den Anfang nähen.
    .check = Das Köpfchen steht überall { $heading } über der Naht.
    .tolerance = { $frill-off } mehr oder weniger
    .remedy = Wo die Naht von der Kräuselung abgekommen ist, auftrennen und neu steppen.
headed-row-sew-flat = Rechte Stoffseite oben: auf beiden Kräuselnähten steppen, je { $length }, { $stitch }; an beiden Enden verriegeln.
    .check = { headed-row-sew-ring.check }
    .tolerance = { headed-row-sew-ring.tolerance }
    .remedy = { headed-row-sew-ring.remedy }
