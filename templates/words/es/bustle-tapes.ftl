### Cintas con anillas y cordones por dentro de la espalda, que recogen una cola.

bustle-tapes-title = Cose las cintas del polisón
    .number = { $up }
bustle-tapes-aim = { $tapes ->
    [one] Una cinta recoge el bajo { $up } por detrás.
   *[other] { $tapes } cintas recogen el bajo { $up } por detrás.
 }

## Marcar

bustle-tapes-middle = { $ring ->
    [yes] Vuelve { PIECE($piece) } del revés. Mide un cuarto del contorno, { $quarter }, desde { side-seam } hacia la espalda: es el centro de la espalda. Traza desde ahí una línea recta hacia abajo.
   *[no] Vuelve { PIECE($piece) } del revés. Dobla por la mitad en { side-seam } y busca el medio de la mitad de atrás. Traza desde ahí una línea recta hacia abajo.
 }
bustle-tapes-mark = { $middle ->
    [yes] { $tapes ->
        [one] La línea es el sitio de la cinta. Marca en ella { $below } bajo el borde superior y { $long } más abajo.
       *[other] Traza las otras líneas a { $apart } de ella y entre sí, tantas a un lado como al otro. Marca en cada una { $below } bajo el borde superior y { $long } más abajo.
    }
   *[no] Traza las líneas de las cintas a { $first } a cada lado, y las demás a { $apart } de esas. Marca en cada una { $below } bajo el borde superior y { $long } más abajo.
 }
    .check = Las marcas de abajo quedan a nivel, { $long } bajo las de arriba.
    .tolerance = { $off } de más o de menos
    .remedy = Mide otra vez desde el borde superior acabado.

## Coser y enhebrar

bustle-tapes-sew = Corta { $cut } de { $tape } y remete { $turn } en los dos extremos. Sujétala con alfileres sobre la línea de marca a marca y cose los dos bordes largos, { $stitch }.
bustle-tapes-rings = Cose a mano { $rings } anillas en la cinta, a { $every } una de otra, la primera en el extremo de arriba y la última en el de abajo: ocho puntadas cada una, en la cinta y no en la falda.
    .check = Al tirar de cada anilla no se mueve.
    .remedy = Vuelve a coserla con hilo doble.
bustle-tapes-thread = Corta { $cord-long } de { $cord }. Ata un extremo con nudo doble a la anilla de abajo y pasa el otro por todas hasta la de arriba.
bustle-tapes-draw = Cuando la falda esté acabada, póntela. Tira de cada cordón hasta que su cinta mida { $left } y átalo con un lazo en la anilla de arriba.
    .check = El bajo queda { $up } más alto por detrás y no toca el suelo al andar.
    .tolerance = { $off } de más o de menos
    .remedy = Tira un poco más de todos los cordones, lo mismo de cada uno, y marca el sitio en cada cordón.
