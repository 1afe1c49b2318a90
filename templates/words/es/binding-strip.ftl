### Ribetear un borde con una tira doblada, cortada de tela.
### $strip: la tira; $edge: el borde que ribetea.

binding-strip-title = Ribetea { EDGE($edge) } con { PIECE($strip) }
    .number = { $shows }
binding-strip-aim = Los bordes sin rematar quedan encerrados en la tira.

## Coser

binding-strip-press = Dobla un borde largo { PIECE($strip, case: "of") } { $turn } hacia el revés y marca el doblez con la plancha.
binding-strip-ends = Dobla cada extremo { PIECE($strip, case: "of") } { $ends } hacia el revés y marca el doblez con la plancha.
    .check = Doblada, la tira es tan larga como { EDGE($edge) }.
    .remedy = Abre los dobleces con la plancha y hazlos de nuevo.
binding-strip-lay = Coloca su otro borde largo sobre { EDGE($edge) }, derecho con derecho, a ras, y { pin } a lo largo.
binding-strip-sew-ring = Cose a { $seam-width } del borde, { $length } todo alrededor, { $stitch }. Al terminar, monta tres puntadas sobre el principio.
binding-strip-sew-flat = Cose a { $seam-width } del borde, { $length }, { $stitch }, rematando en los dos extremos.

## Doblar por encima

binding-strip-fold = Sube { PIECE($strip) } y dóblala alrededor del borde hacia el revés hasta que su doblez cubra justo la línea de costura. { pin-start } por el derecho.
    .check = Por el derecho se ven { $shows } { PIECE($strip, case: "of") } a todo lo largo.
    .tolerance = { $off } de más o de menos
    .remedy = Donde el doblez no alcance la línea de costura, recorta un poco el margen y vuelve a doblar.
binding-strip-stitch-down-ring = Por el derecho, cose { PIECE($strip) } a { $edge-stitch } de la costura, { $length } todo alrededor. Al terminar, monta tres puntadas sobre el principio.
    .check = Por detrás, el doblez ha quedado sujeto a todo lo largo.
    .remedy = Coge a mano, con puntada invisible, lo que se haya escapado.
binding-strip-stitch-down-flat = Por el derecho, cose { PIECE($strip) } a { $edge-stitch } de la costura, { $length }, rematando en los dos extremos.
    .check = { binding-strip-stitch-down-ring.check }
    .remedy = { binding-strip-stitch-down-ring.remedy }
