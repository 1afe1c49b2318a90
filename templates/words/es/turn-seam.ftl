### Tumbar el margen de una costura hacia un lado y pespuntearlo.
### $onto: la pieza contra la que se tumba el margen.

# $seams: por dónde van las costuras, cada una dicha como `turn-seam-between`.
turn-seam-title = { COUNT($seams) ->
    [one] Pespuntea la costura { $seams }
   *[other] Pespuntea las costuras { $seams }
 }
    .number = { $from-seam }
turn-seam-between = entre { PIECE($pieces) }
turn-seam-aim = El margen queda sujeto y no rasca.

# $gathered: uno de los dos bordes está fruncido.
turn-seam-press = { $way ->
    [up] { $gathered ->
        [yes] Tumba el margen hacia arriba, plano contra el revés { PIECE($onto, case: "of") }, y plánchalo así. Plancha solo el margen: la plancha aplasta los frunces.
       *[no] Tumba el margen hacia arriba, plano contra el revés { PIECE($onto, case: "of") }, y plánchalo así.
    }
   *[down] { $gathered ->
        [yes] Tumba el margen hacia abajo, plano contra el revés { PIECE($onto, case: "of") }, y plánchalo así. Plancha solo el margen: la plancha aplasta los frunces.
       *[no] Tumba el margen hacia abajo, plano contra el revés { PIECE($onto, case: "of") }, y plánchalo así.
    }
 }
    .check = Por el derecho no ha quedado ningún pliegue planchado a lo largo de la costura.
    .remedy = Separa las dos piezas tirando de ellas en la costura y vuelve a planchar.
turn-seam-sew-ring = Con el derecho encima, pespuntea { PIECE($onto) } a { $from-seam } de la costura, { $stitch }, { $length } todo alrededor, empezando en una costura lateral. Al terminar, monta tres puntadas sobre el principio. { turn-seam-feel }
    .check = { turn-seam-feel.check }
    .remedy = { turn-seam-feel.remedy }
turn-seam-sew-flat = Con el derecho encima, pespuntea { PIECE($onto) } a { $from-seam } de la costura, { $stitch }, { $length }, rematando en los dos extremos. { turn-seam-feel }
    .check = { turn-seam-feel.check }
    .remedy = { turn-seam-feel.remedy }
# Se dice solo dentro de los dos de arriba.
turn-seam-feel = { $way ->
    [up] Comprueba con los dedos que el margen va hacia arriba.
   *[down] Comprueba con los dedos que el margen va hacia abajo.
 }
    .check = El margen ha quedado sujeto a todo lo largo y no hay ningún pliegue bajo el pespunte.
    .remedy = Descose el tramo donde se haya escapado, vuelve a tumbar el margen y cóselo de nuevo.
