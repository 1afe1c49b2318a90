### Biesen quer über ein Teil nähen: Falten, die auf ganzer Länge gesteppt sind.

tucks-title = { $tucks ->
    [one] { $tucks } Biese in { PIECE($piece) } nähen
   *[other] { $tucks } Biesen in { PIECE($piece) } nähen
 }
    .number = { $depth }
tucks-aim = { $tucks ->
    [one] { $tucks } Biese von { $depth } nimmt { $taken } Höhe auf.
   *[other] { $tucks } Biesen von { $depth } nehmen { $taken } Höhe auf.
 }

## Markieren

tucks-mark-first = { $line } über { EDGE($edge, case: "dative") } eine Bruchlinie anzeichnen, auf ganzer Länge.
    .check = Die Linie hält ihren Abstand zur Kante.
    .tolerance = { $line-off } mehr oder weniger
    .remedy = Wo sie abweicht, neu anzeichnen: Jede weitere Biese folgt ihr.
tucks-mark-next = Bruchlinie { $number } anzeichnen, { $line } über der Kante, am flachen Stoff gemessen.

## Nähen

tucks-sew = { $ring ->
    [yes] An Linie { $number } links auf links falten und { $depth } neben dem Bruch steppen, { $length } rundum, { $stitch }. Das Ende drei Stiche über den Anfang nähen.
   *[no] An Linie { $number } links auf links falten und { $depth } neben dem Bruch steppen, { $length }, { $stitch }; an beiden Enden verriegeln.
 }
    .check = Die Biese ist überall { $depth } breit.
    .tolerance = { $line-off } mehr oder weniger
    .remedy = Die abgewichene Strecke auftrennen und vom Bruch aus neu steppen.
# Die letzte von mehreren.
tucks-sew-last = { tucks-sew }
    .check = Die Biesen sind { $depth } breit, ihre Nähte haben { $apart } Abstand.
    .tolerance = { tucks-sew.tolerance }
    .remedy = { tucks-sew.remedy }
tucks-press = { $tucks ->
    [one] Die Biese nach unten bügeln, zum Saum hin. Das Eisen abheben und aufsetzen, nicht schieben.
   *[other] Alle Biesen nach unten bügeln, zum Saum hin. Das Eisen abheben und aufsetzen, nicht schieben.
 }
    .check = { PIECE($piece, at: "start") } ist jetzt { $left } hoch, ohne das, was die anderen Kanten noch abgeben.
