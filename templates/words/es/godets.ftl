### Poner piezas en punta en cortes de un borde inferior, para ensanchar solo el bajo.
### $slit: del borde cortado hacia arriba; $wide: lo que un godet añade al bajo.

godets-title = { $many ->
    [one] Pon un godet en { EDGE($edge) }
   *[other] Pon { $many } godets en { EDGE($edge) }
 }
    .number = { $wide }
godets-aim = { $many ->
    [one] El godet añade { $wide } al bajo.
   *[other] Cada godet añade { $wide } al bajo.
 }

## Marcar, sujetar y cortar las aberturas

godets-mark = { $ring ->
    [yes] Marca { EDGE($edge) } cada { $every }, { $many } marcas en total, la primera a { $first } de { side-seam }. Desde cada una traza una línea de { $slit } recta hacia arriba, a escuadra con el borde.
   *[no] Marca { EDGE($edge) } cada { $every }, { $many } marcas en total, la primera a { $first } de un extremo. Desde cada una traza una línea de { $slit } recta hacia arriba, a escuadra con el borde.
 }
    .check = Todas las líneas acaban a la misma altura.
    .tolerance = { $mark-off } de más o de menos
    .remedy = Mide otra vez desde el borde, a lo largo de la línea.
godets-hold = Por el revés, pon un cuadrado de la misma tela, de { $patch } de lado, bajo el extremo de arriba de cada línea. Cose a { $beside } de la línea hasta el final, una puntada atravesada y baja por el otro lado, { $short }.
godets-cut = Corta cada línea entre las dos costuras, hasta el último hilo antes de la punta.
    .check = La punta se abre plana y no hay ninguna puntada cortada.
    .remedy = Cose otra vez alrededor de la punta y corta más cerca.

## Poner

godets-pin = Pon un lado de un godet sobre un lado de su abertura, derecho con derecho. En el bajo los dos bordes entran { $seam-width } en la costura; hacia la punta la abertura se va saliendo, hasta que solo se coge su costura. { pin-start } desde la punta hacia abajo.
godets-sew = Cose desde la punta hacia abajo, a { $seam-width } del borde { PIECE($godet, case: "of") } y pegado a la costura de la abertura, { $stitch }, con unas puntadas atrás en la punta.
    .check = Por el derecho no se ve la costura de la abertura.
    .remedy = Cose otra vez una pizca más adentro, desde la punta.
godets-other = Abate el godet y cose el otro lado igual, otra vez desde la punta hacia abajo. Plancha los márgenes hacia la falda y recorta el cuadrado a { $patch-left }.
    .check = En la punta no se ha cogido ningún pliegue.
    .remedy = Descose { $unpicked } a cada lado de la punta y vuelve a coserlos.
godets-level = Las esquinas { PIECE($godet, case: "of") } cuelgan { $hangs } por debajo del borde de la falda. Traza una curva de costura a costura, a la altura de ese borde en las dos y que toque apenas el borde inferior en el centro, y corta por ella.
    .check = En las dos costuras el godet acaba a la altura de la falda.
    .remedy = Recorta lo que aún cuelgue.
godets-measure = Mide { EDGE($edge) }: { $length }.
    .check = Mide { $length }, y cada godet acaba a la altura de la falda.
    .tolerance = { $off } de más o de menos
    .remedy = Corta lo que sobresalga por debajo del borde de la falda.
