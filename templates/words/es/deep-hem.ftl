### Subir un dobladillo ancho y fijarlo a mano o a máquina.
### $edge: el borde que se dobla. $neat: se sobrehiló y no se remete.

deep-hem-title = Haz un dobladillo ancho { EDGE($edge, case: "to") }
    .number = { $depth }
deep-hem-aim = Un dobladillo de { $depth } da peso al borde.

## Doblar

deep-hem-turn-under = Dobla { EDGE($edge) } { $under } hacia el revés y marca el doblez con la plancha.
# En tela acampanada, lo que se vuelve es $fuller más largo que la línea sobre la que queda.
deep-hem-ease-row = Cose una pasada, { $long-stitch }, a { $row } { $neat ->
    [yes] del borde sobrehilado
   *[no] del doblez planchado
 }, de costura a costura, y deja un dedo de hilo en los dos extremos de cada tramo. Después vuelve a ajustar la máquina: { $seam-stitch }.
deep-hem-ease-pull = El borde interior mide { $fuller } más que la línea de debajo: en cada costura, tira de los hilos de la pasada hasta que el dobladillo quede plano en todas partes. Después plancha el dobladillo con un paño.
    .check = El borde interior queda liso sobre { PIECE($edge) }, y no se forma ningún pliegue.
    .remedy = Donde se forme un pliegue, alisa la tela a lo largo de la pasada hacia los dos lados y vuelve a planchar.
deep-hem-fold-up-ring = { $neat ->
    [yes] Dobla { EDGE($edge) } { $depth } hacia el revés y marca el doblez con la plancha. { pin-start } el dobladillo, primero en las costuras.
   *[no] Vuelve a doblarlo { $depth } y marca el nuevo doblez con la plancha. { pin-start } el dobladillo, primero en las costuras.
 }
    .check = El dobladillo tiene { $depth } de ancho en todo su recorrido.
    .tolerance = { $off } de más o de menos
    .remedy = Desdóblalo y vuelve a plancharlo donde se desvíe.
deep-hem-fold-up-flat = { $neat ->
    [yes] Dobla { EDGE($edge) } { $depth } hacia el revés y marca el doblez con la plancha. { pin-start } el dobladillo, primero en los dos extremos.
   *[no] Vuelve a doblarlo { $depth } y marca el nuevo doblez con la plancha. { pin-start } el dobladillo, primero en los dos extremos.
 }
    .check = { deep-hem-fold-up-ring.check }
    .tolerance = { deep-hem-fold-up-ring.tolerance }
    .remedy = { deep-hem-fold-up-ring.remedy }

## Fijar

deep-hem-fasten-hand = { $neat ->
    [yes] Con el revés encima, fija el borde sobrehilado con puntada invisible, una puntada cada { $every }, { $length }. Coge un solo hilo { PIECE($edge, case: "of") } y sigue por dentro del borde. No tires del hilo. Remata el hilo en el dobladillo en los dos extremos.
   *[no] Con el revés encima, fija el doblez interior con puntada invisible, una puntada cada { $every }, { $length }. Coge un solo hilo { PIECE($edge, case: "of") } y sigue por dentro del doblez. No tires del hilo. Remata el hilo en el dobladillo en los dos extremos.
 }
    .check = Ninguna puntada frunce la tela y ninguna se ve por el derecho.
    .remedy = Corta la puntada que frunza y vuelve a darla más floja.
deep-hem-fasten-machine-ring = { $neat ->
    [yes] Empieza en { side-seam }, con el revés encima. Cose a { $from-fold } del borde sobrehilado, { $length } todo alrededor, { $stitch }. Al terminar, monta tres puntadas sobre el principio.
   *[no] Empieza en { side-seam }, con el revés encima. Cose sobre el dobladillo, a { $from-fold } de su doblez interior, { $length } todo alrededor, { $stitch }. Al terminar, monta tres puntadas sobre el principio.
 }
    .check = El dobladillo ha quedado sujeto en todas partes.
    .remedy = Vuelve a coser el tramo que se haya escapado.
deep-hem-fasten-machine-flat = { $neat ->
    [yes] Con el revés encima, cose a { $from-fold } del borde sobrehilado, { $length }, { $stitch }, rematando en los dos extremos.
   *[no] Con el revés encima, cose sobre el dobladillo, a { $from-fold } de su doblez interior, { $length }, { $stitch }, rematando en los dos extremos.
 }
    .check = { deep-hem-fasten-machine-ring.check }
    .remedy = { deep-hem-fasten-machine-ring.remedy }
