### Einen Volant unterhalb seiner Kante kräuseln, so dass ein Köpfchen über den Nähten steht, und durch die Kräuselnähte aufnähen.

ruched-heading-title = { PIECE($flounce) } mit Köpfchen über der Naht aufnähen
ruched-heading-aim = { $cloth } Stoff liegen auf { $length }: { $ratio } zu 1.

ruched-heading-mark = { EDGE($edge, at: "start") } und { EDGE($to) } in Viertel teilen und markieren: alle { $cloth-part } auf { PIECE($flounce, form: "short") }, alle { $part } auf { PIECE($to, form: "short") }.

## Kräuseln

ruched-heading-first-row = { $heading } unter { EDGE($edge, case: "dative") } eine Kräuselnaht mit der größten Stichlänge steppen; nicht verriegeln, an beiden Enden { $tail } Faden hängen lassen.
ruched-heading-second-row = { $apart } unter der ersten eine zweite Kräuselnaht steppen.
    .check = Die beiden Kräuselnähte laufen nebeneinander.
ruched-heading-pull = Beide Unterfäden anziehen, bis jedes Viertel { $part } misst.
    .check = Die gekräuselte Linie ist { $length } lang; das Köpfchen darüber steht frei.
    .tolerance = bis { $ease } zu kurz: wird eingehalten
    .remedy = Mehr als { $ease } zu kurz: die Kräuselung lockern. Zu lang: enger zusammenziehen.

## Aufnähen

ruched-heading-mark-line = Auf der rechten Stoffseite { $lap } über { EDGE($to, case: "dative") } eine Linie anzeichnen.
ruched-heading-lay = { PIECE($flounce) } mit der rechten Stoffseite nach oben darauflegen, die obere Kräuselnaht auf die Linie, und an den Vierteln { pin }, dann alle { $spacing }.
ruched-heading-sew = Rechte Stoffseite oben: auf beiden Kräuselnähten steppen, je { $length }, { $stitch }.
    .check = Das Köpfchen steht überall { $heading } über der Naht.
    .tolerance = { $frill-off } mehr oder weniger
    .remedy = Wo die Naht von der Kräuselung abgekommen ist, auftrennen und neu steppen.
