### Colocar un borde doblado sobre otro borde y pespuntearlo.
### $to: el borde que va encima. $edge: el borde sobre el que se coloca, fruncido o liso. -ring: los dos son aros.

lapped-seam-title = Monta { PIECE($to) } sobre { PIECE($edge) }
    .number = { $lap }
lapped-seam-aim = La costura queda plana y su pespunte se ve por el derecho.

## El borde de encima

lapped-seam-fold = Dobla { EDGE($to) } { $turn } hacia el revés y marca el doblez con la plancha.
lapped-seam-mark-ring = { $turned ->
    [yes] Marca el doblez { PIECE($to, case: "of") } por el derecho cada { $part }, la primera marca en { side-seam }.
   *[no] Marca { EDGE($to) } por el derecho cada { $part }, la primera marca en { side-seam }.
 }
lapped-seam-mark-flat = { $turned ->
    [yes] Marca el doblez { PIECE($to, case: "of") } por el derecho cada { $part }.
   *[no] Marca { EDGE($to) } por el derecho cada { $part }.
 }

## El borde de debajo

lapped-seam-line = Traza una línea a { $lap } { EDGE($edge, case: "of") }, por su derecho.

## Colocar

lapped-seam-lay-ring = { $turned ->
    [yes] Pon los dos del derecho y pasa { PIECE($to) } por encima { PIECE($edge, case: "of") }, con el doblez sobre esa línea.
   *[no] Pon los dos del derecho y pasa { PIECE($to) } por encima { PIECE($edge, case: "of") }, con el borde cortado sobre esa línea.
 }
lapped-seam-lay-flat = { $turned ->
    [yes] Coloca el doblez { PIECE($to, case: "of") } sobre esa línea, los dos con el derecho encima.
   *[no] Coloca { EDGE($to) } sobre esa línea, los dos con el derecho encima.
 }
# Está adonde no llegan las pinzas, así que $hold es siempre pins.
lapped-seam-pin = { match-and-pin }
    .check = { COUNT($edge) ->
        [one] { PIECE($edge, at: "start") } queda metida { $lap } por debajo en todas partes.
       *[other] { PIECE($edge, at: "start") } quedan metidas { $lap } por debajo en todas partes.
     }
    .tolerance = { $lap-off } de más o de menos
    .remedy = Córrela donde se haya salido de la línea.

## Coser

lapped-seam-sew-ring = { $turned ->
    [yes] Cose a { $from-fold } del doblez, { $stitch }, { $length } todo alrededor. Al terminar, monta tres puntadas sobre el principio.
   *[no] Cose a { $from-fold } del borde de encima, { $stitch }, { $length } todo alrededor. Al terminar, monta tres puntadas sobre el principio.
 }
    .check = { lapped-seam-sew-flat.check }
    .remedy = { lapped-seam-sew-flat.remedy }
lapped-seam-sew-flat = { $turned ->
    [yes] Cose a { $from-fold } del doblez, { $stitch }, { $length }, rematando en los dos extremos.
   *[no] Cose a { $from-fold } del borde de encima, { $stitch }, { $length }, rematando en los dos extremos.
 }
    .check = El borde de debajo ha quedado sujeto a todo lo largo; compruébalo con los dedos por el revés.
    .remedy = Descose donde se haya escapado, empújalo hasta la línea y vuelve a coser.
