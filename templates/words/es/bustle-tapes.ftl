### Cintas con anillas y cordones por dentro de la espalda, que recogen una cola.

bustle-tapes-title = Cose las cintas del polisón
    .number = { $up }
bustle-tapes-aim = { $tapes ->
    [one] Una cinta recoge el bajo { $up } por detrás.
   *[other] { $tapes } cintas recogen el bajo { $up } por detrás.
 }

## Marcar

bustle-tapes-middle = { $from ->
    [seam] Vuelve { PIECE($piece) } del revés. Mide un cuarto del contorno, { $quarter }, desde { side-seam } hacia la espalda: es el centro de la espalda. Traza desde ahí una línea recta hacia abajo.
    [fold] Vuelve { PIECE($piece) } del revés. Dobla por la mitad en { side-seam } y busca el medio de la mitad de atrás. Traza desde ahí una línea recta hacia abajo.
   *[front] Vuelve { PIECE($piece) } del revés. Dobla por la mitad en el centro de la nesga delantera: el otro doblez es el centro de la espalda. Traza ahí una línea recta hacia abajo.
 }
bustle-tapes-mark-one = La línea es el sitio de la cinta. Marca en ella { $below } bajo el borde superior y { $long } más abajo.
    .check = La marca de abajo queda { $long } bajo la de arriba.
    .tolerance = { $off } de más o de menos
    .remedy = Mide otra vez desde el borde superior acabado.
bustle-tapes-mark-upper = { $middle ->
    [yes] Marca dónde empiezan las cintas, siempre { $below } bajo el borde superior: en la línea y a { $upper } de ella a los dos lados.
   *[no] Marca dónde empiezan las cintas, siempre { $below } bajo el borde superior: a { $upper } de la línea a los dos lados.
 }
bustle-tapes-mark-lower = { $middle ->
    [yes] Marca dónde acaban, { $long } más abajo: en la línea y a { $lower } de ella a los dos lados.
   *[no] Marca dónde acaban, { $long } más abajo: a { $lower } de la línea a los dos lados.
 }
    .check = Las marcas de abajo quedan a nivel, { $long } bajo las de arriba.
    .tolerance = { $off } de más o de menos
    .remedy = Mide otra vez desde el borde superior acabado.
bustle-tapes-lines = { $tapes ->
    [one] Traza una línea recta de la marca de arriba a la de abajo.
   *[other] Traza { $tapes } líneas rectas, de cada marca de arriba a la que tiene debajo.
 }

## Coser y enhebrar

bustle-tapes-sew = Corta { $cut } de { $tape } y remete { $turn } en los dos extremos. Sujétala con alfileres sobre la línea de marca a marca y cose los dos bordes largos, { $stitch }.
bustle-tapes-rings = Cose a mano { $rings } anillas en la cinta, a { $every } una de otra, la primera en el extremo de arriba y la última en el de abajo: ocho puntadas cada una, en la cinta y no en la falda.
    .check = Al tirar de cada anilla no se mueve.
    .remedy = Vuelve a coserla con hilo doble.
bustle-tapes-thread = Corta { $cord-long } de { $cord }. Ata un extremo con nudo doble a la anilla de abajo y pasa el otro por todas hasta la de arriba.
bustle-tapes-draw = Pon la falda sobre la mesa. Tira de cada cordón hasta que su cinta mida { $left }. Anuda el cordón a la anilla de arriba pasando por el nudo solo un bucle, para que un tirón del extremo suelte la cola.
    .check = Al tirar del bajo, la cinta sigue midiendo { $left }.
    .tolerance = { $off } de más o de menos
    .remedy = Deshaz el nudo, vuelve a tirar del cordón y marca en él el sitio del nudo.
