### Eine Naht, deren Zugaben ineinandergefaltet und flach gesteppt werden.
### -ends: Sie schließt die Enden von $pieces zum Ring. -edges: Sie verbindet $edge, das unten hängt, mit $to darüber.

flat-felled-seam-title-ends = Kappnaht: die Seitennaht von { PIECE($pieces) }
    .number = { $seam-width }
flat-felled-seam-title-edges = Kappnaht: die Naht zwischen { PIECE($pieces) }
    .number = { $seam-width }
flat-felled-seam-aim = Die Naht liegt flach, auf keiner Seite ist eine offene Kante zu sehen.

## Die erste Naht, rechts auf rechts

flat-felled-seam-lay-edges = { EDGE($edge, at: "start") } rechts auf rechts bündig auf { EDGE($to) } legen.
flat-felled-seam-turn = { PIECE($edge) } auf rechts wenden, { PIECE($to) } auf links.
flat-felled-seam-slip = { COUNT($to) ->
    [one] { PIECE($to) } kopfüber über { PIECE($edge) } ziehen, bis { EDGE($to, form: "short") } bündig auf { EDGE($edge, case: "dative", form: "short") } liegt.
   *[other] { PIECE($to) } kopfüber über { PIECE($edge) } ziehen, bis { EDGE($to, form: "short") } bündig auf { EDGE($edge, case: "dative", form: "short") } liegen.
 }
    .check = Die rechten Stoffseiten liegen aufeinander, beide Schnittkanten sind bündig.
flat-felled-seam-pin = { match-and-pin }
    .check = Die Kanten liegen bündig.
    .tolerance = eine Kante { $off } länger
    .remedy = Den Unterschied zwischen den Markierungen verteilen.
flat-felled-seam-sew-ring = { $seam-width } neben der Kante steppen, { $stitch }, { $length } rundum. Das Ende drei Stiche über den Anfang nähen.
flat-felled-seam-sew-flat = { $seam-width } neben der Kante steppen, { $stitch }, { $length }; an beiden Enden verriegeln.

## Der Einschlag

flat-felled-seam-open-ends = { $seams ->
    [one] Die Arbeit aufklappen, linke Stoffseite oben, und beide Nahtzugaben zur selben Seite bügeln.
   *[other] Die Arbeit aufklappen, linke Stoffseite oben, und beide Nahtzugaben zur selben Seite bügeln, bei jeder Naht in derselben Richtung.
 }
flat-felled-seam-open-edges = Die Arbeit aufklappen, linke Stoffseite oben, und beide Nahtzugaben nach oben bügeln, auf { PIECE($to) }.
flat-felled-seam-trim = Nur die untere Nahtzugabe zurückschneiden, auf { $trim }.
    .check = Die obere Nahtzugabe ist noch { $seam-width } breit.
flat-felled-seam-fold = Von der breiten Nahtzugabe { $under } einschlagen, um die zurückgeschnittene herum, und den Bruch bügeln.
# $flat-on: die Teile, auf die der Einschlag gesteppt wird.
# Er liegt, wo Klammern nicht hinkommen.
flat-felled-seam-lay-flat = Den Einschlag flach auf { PIECE($flat-on) } legen und feststecken.
    .check = Der Einschlag ist überall { $fell } breit, keine offene Kante ist zu sehen.
    .tolerance = { $fold-off } mehr oder weniger
    .remedy = Wo eine offene Kante hervorsieht, dort die untere Nahtzugabe zurückschneiden und neu einschlagen.

## Die zweite Naht

flat-felled-seam-fell-ring = Den Einschlag nach oben: { $from-fold } neben dem Bruch durch alle Lagen steppen, { $stitch }, { $length } rundum. Das Ende drei Stiche über den Anfang nähen.
    .check = { flat-felled-seam-fell-flat.check }
    .remedy = { flat-felled-seam-fell-flat.remedy }
flat-felled-seam-fell-flat = Den Einschlag nach oben: { $from-fold } neben dem Bruch durch alle Lagen steppen, { $stitch }, { $length }; an beiden Enden verriegeln.
    .check = Beide Nähte laufen nebeneinander, { $apart } Abstand.
    .remedy = Wo die Naht vom Einschlag abgekommen ist, auftrennen und neu steppen.
