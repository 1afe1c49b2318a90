### Eine Kante mit einem gefalteten Streifen aus Stoff einfassen.
### $strip: der Streifen; $edge: die Kante, die er einfasst.

binding-strip-title = { EDGE($edge, at: "start") } mit { PIECE($strip) } einfassen
    .number = { $shows }
binding-strip-aim = Die offenen Kanten liegen im Streifen.

## Annähen

binding-strip-press = Eine lange Kante von { PIECE($strip) } { $turn } auf die linke Stoffseite umbügeln.
binding-strip-ends = Jedes Ende von { PIECE($strip) } { $ends } auf die linke Stoffseite umbügeln.
    .check = Gefaltet ist der Streifen so lang wie { EDGE($edge) }.
    .remedy = Die Falten ausbügeln und neu umbügeln.
binding-strip-lay = Die andere lange Kante rechts auf rechts bündig auf { EDGE($edge) } legen und { pin }.
binding-strip-sew-ring = { $seam-width } neben der Kante steppen, { $length } rundum, { $stitch }. Das Ende drei Stiche über den Anfang nähen.
binding-strip-sew-flat = { $seam-width } neben der Kante steppen, { $length }, { $stitch }; an beiden Enden verriegeln.

## Umlegen

binding-strip-fold = { PIECE($strip) } nach oben klappen und um die Kante auf die linke Stoffseite legen, bis der Bruch die Nahtlinie gerade überdeckt. Von der rechten Stoffseite aus { pin-start }.
    .check = Auf der rechten Stoffseite ist { PIECE($strip) } überall { $shows } breit zu sehen.
    .tolerance = { $off } mehr oder weniger
    .remedy = Wo der Bruch die Nahtlinie nicht erreicht, die Nahtzugabe etwas zurückschneiden und neu umlegen.
binding-strip-stitch-down-ring = Rechte Stoffseite oben: auf { PIECE($strip) } { $edge-stitch } neben der Naht absteppen, { $length } rundum. Das Ende drei Stiche über den Anfang nähen.
    .check = Der Bruch auf der Rückseite ist überall gefasst.
    .remedy = Was nicht gefasst wurde, von Hand mit Blindstichen annähen.
binding-strip-stitch-down-flat = Rechte Stoffseite oben: auf { PIECE($strip) } { $edge-stitch } neben der Naht absteppen, { $length }; an beiden Enden verriegeln.
    .check = { binding-strip-stitch-down-ring.check }
    .remedy = { binding-strip-stitch-down-ring.remedy }
