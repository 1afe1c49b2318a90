### Eine umgebügelte Kante über eine andere legen und feststeppen.
### $to: die Kante, die oben liegt. $edge: die Kante, auf die sie gelegt wird, gekräuselt oder glatt. -ring: Beide sind Ringe.

lapped-seam-title = { PIECE($to) } über { PIECE($edge) } legen und aufsteppen
    .number = { $lap }
lapped-seam-aim = Die Naht liegt flach, ihre Stiche sind auf der rechten Stoffseite zu sehen.

## Die obere Lage

lapped-seam-fold = { EDGE($to, at: "start") } { $turn } auf die linke Stoffseite umbügeln.
lapped-seam-mark-ring = { $turned ->
    [yes] Den Bruch von { PIECE($to) } auf der rechten Stoffseite alle { $part } markieren, die erste Markierung an { side-seam }.
   *[no] { EDGE($to, at: "start") } auf der rechten Stoffseite alle { $part } markieren, die erste Markierung an { side-seam }.
 }
lapped-seam-mark-flat = { $turned ->
    [yes] Den Bruch von { PIECE($to) } auf der rechten Stoffseite alle { $part } markieren.
   *[no] { EDGE($to, at: "start") } auf der rechten Stoffseite alle { $part } markieren.
 }

## Die untere Lage

lapped-seam-line = Auf der rechten Stoffseite { $lap } neben { EDGE($edge, case: "dative") } eine Linie anzeichnen.

## Auflegen

lapped-seam-lay-ring = { $turned ->
    [yes] Beide auf rechts wenden und { PIECE($to) } über { PIECE($edge) } ziehen, den Bruch an diese Linie.
   *[no] Beide auf rechts wenden und { PIECE($to) } über { PIECE($edge) } ziehen, die Schnittkante an diese Linie.
 }
lapped-seam-lay-flat = { $turned ->
    [yes] Den Bruch von { PIECE($to) } an diese Linie legen, bei beiden rechte Stoffseite oben.
   *[no] { EDGE($to, at: "start") } an diese Linie legen, bei beiden rechte Stoffseite oben.
 }
# Sie liegt, wo Klammern nicht hinkommen; $hold ist deshalb immer pins.
lapped-seam-pin = { match-and-pin }
    .check = { COUNT($edge) ->
        [one] { PIECE($edge, at: "start") } reicht überall { $lap } darunter.
       *[other] { PIECE($edge, at: "start") } reichen überall { $lap } darunter.
     }
    .tolerance = { $lap-off } mehr oder weniger
    .remedy = Wo die Kante von der Linie abgekommen ist, zurückschieben.

## Nähen

lapped-seam-sew-ring = { $turned ->
    [yes] { $from-fold } neben dem Bruch steppen, { $stitch }, { $length } rundum. Das Ende drei Stiche über den Anfang nähen.
   *[no] { $from-fold } neben der oben liegenden Kante steppen, { $stitch }, { $length } rundum. Das Ende drei Stiche über den Anfang nähen.
 }
    .check = { lapped-seam-sew-flat.check }
    .remedy = { lapped-seam-sew-flat.remedy }
lapped-seam-sew-flat = { $turned ->
    [yes] { $from-fold } neben dem Bruch steppen, { $stitch }, { $length }; an beiden Enden verriegeln.
   *[no] { $from-fold } neben der oben liegenden Kante steppen, { $stitch }, { $length }; an beiden Enden verriegeln.
 }
    .check = Die untere Kante ist überall gefasst; von der linken Stoffseite aus nachfühlen.
    .remedy = Auftrennen, wo sie nicht gefasst wurde, bis an die Linie schieben und neu steppen.
