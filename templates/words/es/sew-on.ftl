### Coser una hilera sobre una línea que cruza una pieza, para que caiga desde ahí.
### $edge: el borde superior de la hilera; $on: la pieza que la lleva.

sew-on-title = Cose { PIECE($edge) } sobre { PIECE($on) }
    .number = { $from-edge }
sew-on-aim = { COUNT($edge) ->
    [one] { PIECE($edge, at: "start") } cae { $hangs } desde una línea de { $length } y tapa su propia costura.
   *[other] { PIECE($edge, at: "start") } caen { $hangs } desde una línea de { $length } y tapan su propia costura.
 }

## Marcar

sew-on-mark-parts-ring = { $parts ->
    [8] Marca los octavos de la línea, cada { $part }, la primera marca en { side-seam }.
   *[4] Marca los cuartos de la línea, cada { $part }, la primera marca en { side-seam }.
 }
sew-on-mark-parts-flat = { $parts ->
    [8] Marca los octavos de la línea, cada { $part }.
   *[4] Marca los cuartos de la línea, cada { $part }.
 }

## Coser

sew-on-lay = Coloca { PIECE($edge) } sobre { PIECE($on) }, derecho con derecho y con el dobladillo hacia arriba, el borde superior { $seam-width } por debajo de la línea.
    .check = El dobladillo mira hacia la parte de arriba { PIECE($on, case: "of") }.
    .remedy = Dale la vuelta: cosido al contrario enseñaría el revés.
sew-on-pin = Haz coincidir { match-places }, y { pin } primero ahí. Después { pin } cada { $spacing } entre ellas: alrededor de { pins-needed }.
sew-on-sew-ring = Cose a { $seam-width } del borde superior, sobre la línea, { $length } todo alrededor, { $stitch }. Al terminar, monta tres puntadas sobre el principio.
    .check = Debajo, { PIECE($on) } queda liso: no se ha pillado ningún pliegue.
    .remedy = Descose el ancho de una mano, alísalo y vuelve a coserlo.
sew-on-sew-flat = Cose a { $seam-width } del borde superior, sobre la línea, { $length }, { $stitch }, rematando en los dos extremos.
    .check = { sew-on-sew-ring.check }
    .remedy = { sew-on-sew-ring.remedy }
sew-on-turn-down = Vuelve { PIECE($edge) } hacia abajo por encima de la costura y alisa el doblez con los dedos.
    .check = El dobladillo cuelga { $hangs } por debajo del doblez en todo su largo y no asoma ningún margen.
    .tolerance = { $level-off } de más o de menos
    .remedy = Si cuelga torcido, el borde se salió de la línea: descose ahí y vuelve a coser.
