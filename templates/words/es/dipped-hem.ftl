### Cortar un borde inferior más alto delante que detrás, para un bajo en pico o una cola.

dipped-hem-title = Corta la caída { EDGE($edge, case: "of") }
    .number = { $front }
dipped-hem-aim = El bajo sube { $side } en los costados y { $front } delante.

## Encontrar delante y detrás

dipped-hem-hold = Sostén { PIECE($piece) } como al llevar la prenda puesta, con { side-seam } a la izquierda de quien la lleva.
dipped-hem-mark = Marca los cuartos { EDGE($edge, case: "of") }, cada { $quarter } desde { side-seam }: el centro del delantero, el otro lado, el centro de la espalda.
    .check = El último cuarto acaba en la costura.
    .tolerance = { $quarter-off } de más o de menos
    .remedy = Reparte la diferencia entre los cuatro.
dipped-hem-tag = Prende una etiqueta de papel en la marca del delantero y en la de la espalda.

## Trazar y cortar

dipped-hem-dots = En cada marca mide desde el borde hacia arriba: { $front } delante, { $side } en los dos costados, nada detrás. Haz ahí un punto.
    .check = La etiqueta del punto más alto dice delante.
    .remedy = Si delante y detrás están cambiados, borra los puntos y mide otra vez.
dipped-hem-line = Traza una línea suave de punto a punto. Deja que corra horizontal un palmo delante y detrás.
    .check = La línea no hace esquina en los costados.
    .remedy = Trázala otra vez, un poco más redonda.
dipped-hem-cut = Corta por la línea y marca el centro de la espalda en el nuevo borde.
    .check = El nuevo borde mide { $length } de contorno.
    .tolerance = { $off } de más o de menos
    .remedy = Dobla delante sobre detrás y compara los dos lados: recorta el más largo según el otro.
