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
    [back] Vuelve { PIECE($piece) } del revés. Dobla la nesga de atrás por la mitad a lo largo, lado sobre lado: el doblez es el centro de la espalda. Traza sobre él una línea recta.
   *[front] Vuelve { PIECE($piece) } del revés. Dobla por la mitad en el centro de la nesga delantera: el otro doblez es el centro de la espalda. Traza ahí una línea recta hacia abajo.
 }
bustle-tapes-mark-one = La línea es el sitio de la cinta. Marca en ella { $below } bajo el borde superior y { $long } más abajo.
    .check = La marca de abajo queda { $long } bajo la de arriba.
    .tolerance = { $off } de más o de menos
    .remedy = Mide otra vez desde el borde superior acabado.
bustle-tapes-mark-upper = { $middle ->
    [yes] Marca dónde empiezan las cintas, con la cinta métrica plana sobre la tela: a { $below } del borde superior hacia abajo, en la línea y a { $upper } de ella a los dos lados.
   *[no] Marca dónde empiezan las cintas, con la cinta métrica plana sobre la tela: a { $below } del borde superior hacia abajo, a { $upper } de la línea a los dos lados.
 }
bustle-tapes-mark-lower = { $middle ->
    [yes] Mide del mismo modo y marca a { $foot } del borde superior hacia abajo: en la línea y a { $lower } de ella a los dos lados.
   *[no] Mide del mismo modo y marca a { $foot } del borde superior hacia abajo: a { $lower } de la línea a los dos lados.
 }
    .check = A la izquierda y a la derecha de la línea las marcas quedan igual.
    .remedy = Mide otra vez desde la línea y desde el borde superior acabado.
bustle-tapes-lines = Traza { $tapes } líneas rectas, de cada marca de arriba hacia la que tiene debajo. Termina cada una a los { $long }, medidos sobre ella.
    .check = Cada línea mide { $long }.
    .tolerance = { $off } de más o de menos
    .remedy = Mide otra vez la línea desde su marca de arriba.

## Coser y enhebrar

bustle-tapes-sew = Corta { $cut } de { $tape } y remete { $turn } en los dos extremos. Sujétala con alfileres sobre la línea desde la marca de arriba hacia abajo.
bustle-tapes-stitch = Pon la labor de modo que solo la espalda quede bajo la aguja. Cose los dos bordes largos de la cinta, { $stitch }. Las costuras se ven por el derecho.
    .check = Bajo la cinta no ha quedado cogido nada más que la espalda.
    .remedy = Descose donde se cogió otra cosa y cose otra vez ese tramo.
bustle-tapes-rings = Cose a mano { $rings } anillas en la cinta, a { $every } una de otra, la primera en el extremo de arriba y la última en el de abajo: ocho puntadas cada una, en la cinta y no en la falda.
    .check = Al tirar de cada anilla no se mueve.
    .remedy = Vuelve a coserla con hilo doble.
bustle-tapes-thread = Corta { $cord-long } de { $cord }. Ata un extremo con nudo doble a la anilla de abajo y pasa el otro por todas hasta la de arriba.
bustle-tapes-draw = Pon la falda sobre la mesa. Tira de cada cordón hasta que su cinta mida { $left }. Anuda el cordón a la anilla de arriba pasando por el nudo solo un bucle, para que un tirón del extremo suelte la cola.
    .check = Al tirar del bajo, la cinta sigue midiendo { $left }.
    .tolerance = { $off } de más o de menos
    .remedy = Deshaz el nudo, vuelve a tirar del cordón y marca en él el sitio del nudo.
bustle-tapes-draw-each = Pon la falda sobre la mesa. Tira de cada cordón hasta que su cinta mida esto, del centro de la espalda hacia fuera, a izquierda y derecha igual: { $lefts }.
bustle-tapes-knot = Anuda el cordón a la anilla de arriba pasando por el nudo solo un bucle, para que un tirón del extremo suelte la cola.
    .check = Al tirar del bajo, cada cinta sigue midiendo lo mismo.
    .tolerance = { $off } de más o de menos
    .remedy = { bustle-tapes-draw.remedy }
bustle-tapes-mark-cord = Marca el cordón en su nudo con dos puntadas de otro color, que se quedan: ahí se anuda cada vez que se recoge la cola.
bustle-tapes-tuck = Enrolla en dos dedos el cabo que sobra y prende el rollito a la cinta con un imperdible pequeño cerrado, para que nada cuelgue.
