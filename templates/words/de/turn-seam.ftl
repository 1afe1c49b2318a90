### Eine Nahtzugabe zu einer Seite legen und absteppen.
### $onto: das Teil, an dem die Nahtzugabe flach anliegt.

# $seams: wo die Nähte liegen, jede gesagt als `turn-seam-between`.
turn-seam-title = { COUNT($seams) ->
    [one] Die Naht { $seams } absteppen
   *[other] Die Nähte { $seams } absteppen
 }
    .number = { $from-seam }
turn-seam-between = zwischen { PIECE($pieces) }
turn-seam-aim = Die Nahtzugabe ist gehalten und kann nicht kratzen.

# $gathered: Eine der beiden Kanten ist gekräuselt.
turn-seam-press = { $way ->
    [up] { $gathered ->
        [yes] Die Nahtzugabe nach oben legen, flach auf die linke Stoffseite von { PIECE($onto) }, und so bügeln. Nur die Nahtzugabe bügeln: Das Eisen drückt die Kräuselung platt.
       *[no] Die Nahtzugabe nach oben legen, flach auf die linke Stoffseite von { PIECE($onto) }, und so bügeln.
    }
   *[down] { $gathered ->
        [yes] Die Nahtzugabe nach unten legen, flach auf die linke Stoffseite von { PIECE($onto) }, und so bügeln. Nur die Nahtzugabe bügeln: Das Eisen drückt die Kräuselung platt.
       *[no] Die Nahtzugabe nach unten legen, flach auf die linke Stoffseite von { PIECE($onto) }, und so bügeln.
    }
 }
    .check = Auf der rechten Stoffseite ist entlang der Naht keine Falte eingebügelt.
    .remedy = Die beiden Teile an der Naht auseinanderziehen und neu bügeln.
turn-seam-sew-ring = Rechte Stoffseite oben: auf { PIECE($onto) } { $from-seam } neben der Naht absteppen, { $stitch }, { $length } rundum, von einer Seitennaht aus. Das Ende drei Stiche über den Anfang nähen. { turn-seam-feel }
    .check = { turn-seam-feel.check }
    .remedy = { turn-seam-feel.remedy }
turn-seam-sew-flat = Rechte Stoffseite oben: auf { PIECE($onto) } { $from-seam } neben der Naht absteppen, { $stitch }, { $length }; an beiden Enden verriegeln. { turn-seam-feel }
    .check = { turn-seam-feel.check }
    .remedy = { turn-seam-feel.remedy }
# Nur in den beiden darüber gesagt.
turn-seam-feel = { $way ->
    [up] Mit den Fingern fühlen, dass die Nahtzugabe nach oben liegt.
   *[down] Mit den Fingern fühlen, dass die Nahtzugabe nach unten liegt.
 }
    .check = Die Nahtzugabe ist überall gefasst, unter der Naht liegt keine Falte.
    .remedy = Auftrennen, wo sie weggerutscht ist, die Nahtzugabe zurücklegen und neu steppen.
