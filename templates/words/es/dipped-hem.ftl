### Cortar un borde inferior más alto delante que detrás, para un bajo en pico o una cola.

dipped-hem-title = Corta la caída { EDGE($edge, case: "of") }
    .number = { $front }
dipped-hem-aim = El bajo sube { $side } en los costados y { $front } delante.

## Encontrar delante y detrás

dipped-hem-hold = { $front-gore ->
    [yes] Vuelve { PIECE($piece) } del derecho y dobla la pieza por la mitad en el centro de la nesga delantera: el otro doblez es el centro de la espalda.
   *[no] Vuelve { PIECE($piece) } del derecho y sostén la pieza como al llevar la prenda puesta, con { side-seam } a la izquierda de quien la lleva.
 }
dipped-hem-mark = { $front-gore ->
    [yes] Marca los cuartos { EDGE($edge, case: "of") }, cada { $quarter } desde el centro del delantero: el centro del delantero, un lado, el centro de la espalda, el otro lado.
   *[no] Marca los cuartos { EDGE($edge, case: "of") }, cada { $quarter } desde { side-seam }: el centro del delantero, el otro lado, el centro de la espalda.
 }
    .check = El último cuarto acaba donde empezó el primero.
    .tolerance = { $quarter-off } de más o de menos
    .remedy = Reparte la diferencia entre los cuatro.
dipped-hem-tag = Prende una etiqueta de papel en la marca del delantero y en la de la espalda.

## Trazar y cortar

dipped-hem-dots = Por el derecho, en cada marca mide desde el borde recto hacia arriba: { $front } delante, { $side } en los dos costados, nada detrás. Haz ahí un punto: el bajo acabado queda tanto más alto que detrás.
    .check = La etiqueta del punto más alto dice delante.
    .remedy = Si delante y detrás están cambiados, borra los puntos y mide otra vez.
dipped-hem-between = Entre las marcas haz un punto cada { $every }. Del delantero a cada costado quedan a { $to-side } de altura; de cada costado a la espalda, a { $to-back }.
    .check = A izquierda y derecha del delantero los puntos quedan iguales, y hacia la espalda ninguno está más alto que el anterior.
    .remedy = Borra el punto que se sale de la línea y mídelo otra vez.
dipped-hem-line = Traza una línea suave por todos los puntos, horizontal delante y detrás.
    .check = La línea no hace esquina en los costados.
    .remedy = Trázala otra vez, un poco más redonda.
dipped-hem-cut = Corta por la línea, una capa cada vez.
    .check = El nuevo borde mide { $length } de contorno.
    .tolerance = { $off } de más o de menos
    .remedy = Dobla por el centro del delantero y por el centro de la espalda, izquierda sobre derecha. Donde se diferencien, recorta el más largo según el otro.
