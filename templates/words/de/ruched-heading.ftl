### Einen Volant unterhalb seiner Kante kräuseln, so dass ein Köpfchen über den Nähten steht, und durch die Kräuselnähte aufnähen.

ruched-heading-title = { PIECE($flounce) } mit Köpfchen über der Naht aufnähen
    .number = { $cloth } → { $length }
ruched-heading-aim = { $cloth } Stoff liegen auf { $length }: { $ratio } zu 1.

## Markieren

ruched-heading-mark-ring = { $parts ->
    [8] { EDGE($edge, at: "start") } auf beiden Stoffseiten in Achtel teilen und alle { $cloth-part } markieren, die erste Markierung an { side-seam }.
   *[4] { EDGE($edge, at: "start") } auf beiden Stoffseiten in Viertel teilen und alle { $cloth-part } markieren, die erste Markierung an { side-seam }.
 }
ruched-heading-mark-flat = { $parts ->
    [8] { EDGE($edge, at: "start") } auf beiden Stoffseiten in Achtel teilen und alle { $cloth-part } markieren.
   *[4] { EDGE($edge, at: "start") } auf beiden Stoffseiten in Viertel teilen und alle { $cloth-part } markieren.
 }
ruched-heading-mark-line = Auf der rechten Stoffseite { $lap } über { EDGE($to, case: "dative") } auf ganzer Länge eine Linie anzeichnen.

## Kräuseln

ruched-heading-first-row = { $heading } unter { EDGE($edge, case: "dative") } eine Kräuselnaht steppen. { rows-runs }
ruched-heading-second-row = Ebenso eine zweite Kräuselnaht steppen, { $apart } unter der ersten.
    .check = Die beiden Kräuselnähte laufen nebeneinander.
ruched-heading-pull = { $parts ->
    [8] Am anderen Ende beide Unterfäden zusammen anziehen, bis jedes Achtel { $part } misst. Auch diese Fadenenden um eine Stecknadel wickeln.
   *[4] Am anderen Ende beide Unterfäden zusammen anziehen, bis jedes Viertel { $part } misst. Auch diese Fadenenden um eine Stecknadel wickeln.
 }
    .check = Die gekräuselte Linie ist { $length } lang; das Köpfchen darüber steht frei.
    .tolerance = bis { $ease } zu kurz: wird eingehalten
    .remedy = Mehr als { $ease } zu kurz: die Kräuselung lockern. Zu lang: enger zusammenziehen.

## Aufnähen

ruched-heading-lay = { PIECE($flounce) } mit der rechten Stoffseite nach oben auf die rechte Stoffseite von { PIECE($to) } legen, die obere Kräuselnaht auf die Linie, Markierung auf Markierung. Dort { pin-start }, dann alle { $spacing }.
ruched-heading-sew-ring = Rechte Stoffseite oben: auf beiden Kräuselnähten steppen, je { $length } rundum, { $stitch }. Das Ende jeweils drei Stiche über den Anfang nähen.
    .check = Das Köpfchen steht überall { $heading } über der Naht.
    .tolerance = { $frill-off } mehr oder weniger
    .remedy = Wo die Naht von der Kräuselung abgekommen ist, auftrennen und neu steppen.
ruched-heading-sew-flat = Rechte Stoffseite oben: auf beiden Kräuselnähten steppen, je { $length }, { $stitch }; an beiden Enden verriegeln.
    .check = { ruched-heading-sew-ring.check }
    .tolerance = { ruched-heading-sew-ring.tolerance }
    .remedy = { ruched-heading-sew-ring.remedy }
