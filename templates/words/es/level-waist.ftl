### Cortar más bajo el borde superior donde la cintura está más baja, para que el bajo caiga a nivel.

level-waist-title = Nivela la cintura
level-waist-aim = La cintura está { $deepest } más baja { $lowest }, así que ahí se corta más bajo el borde y el bajo cae a nivel.
# No se rebaja nada en ningún sitio: el paso no tiene acciones.
level-waist-aim-level = La cintura está a nivel: no se rebaja nada.
# Se dicen solo como partes del propósito de arriba: dónde está más baja la cintura.
level-waist-in-front = por delante
level-waist-at-the-sides = a los lados
level-waist-behind = por detrás

## Encontrar delante y detrás en cada borde

level-waist-hold-ring = Sostén { PIECE($edge) } como al llevar la prenda puesta, con { side-seam } a la izquierda de quien la lleva.
level-waist-lay-flat = Extiende lisa { PIECE($edge) }, con el derecho encima y el borde superior lejos de ti. Los dos extremos quedan a la izquierda de quien la lleva.
level-waist-mark-ring = Marca los cuartos { EDGE($edge, case: "of") }, cada { $quarter } desde { side-seam }: el centro del delantero, el otro lado, el centro de la espalda. Marca por las dos caras.
    .check = El último cuarto acaba en la costura.
    .tolerance = { $quarter-off } de más o de menos
    .remedy = Reparte la diferencia entre los cuatro.
level-waist-mark-flat = { $open ->
    [yes] Marca los cuartos { EDGE($edge, case: "of") }, el primero a { $first } del extremo derecho y luego cada { $quarter }: el centro del delantero, el otro lado, el centro de la espalda. Marca por las dos caras.
   *[no] Marca los cuartos { EDGE($edge, case: "of") }, cada { $quarter } desde el extremo derecho: el centro del delantero, el otro lado, el centro de la espalda. Marca por las dos caras.
 }
    .check = { $open ->
        [yes] El último cuarto acaba a { $margin } del extremo izquierdo.
       *[no] El último cuarto acaba en el extremo izquierdo.
     }
    .tolerance = { level-waist-mark-ring.tolerance }
    .remedy = { level-waist-mark-ring.remedy }
level-waist-tag = Prende una etiqueta de papel en la marca de delante y otra en la de detrás.

## Trazar y cortar

# Se dice en el lugar de una longitud.
level-waist-nothing = nada
level-waist-dots = Mide hacia abajo desde el borde en cada marca: { $front } delante, { $side } a los lados, { $back } detrás. Haz ahí un punto.
    .check = No se rebaja nada donde la cintura está más alta.
    .remedy = Si se han cambiado delante y detrás, borra los puntos y vuelve a medir.
level-waist-line = Traza una línea suave de punto a punto. Déjala horizontal el ancho de una mano por delante y por detrás. Prolonga las cuatro marcas por debajo de la línea: harán falta otra vez.
    .check = La línea no hace ningún pico a los lados.
    .remedy = Vuelve a trazarla, un poco más redonda.
level-waist-cut = Corta por la línea. Este es ahora el borde superior; todo lo que sigue se mide desde él.
