### Coser pinzas en un borde superior para que se cierre hacia la cintura.
### $intake: lo que toma una pinza; $half: su mitad; $long: del borde cortado al vértice; $leg: a lo largo de un lado.

darts-title = { $count ->
    [one] Cose { $count } pinza en { EDGE($edge) }
   *[other] Cose { $count } pinzas en { EDGE($edge) }
 }
    .number = { $cloth } → { $length }
darts-aim = { $count ->
    [one] En la línea de costura: { $cloth } - { $length } = { $taken }, que toma { $count } pinza.
   *[other] En la línea de costura: { $cloth } - { $length } = { $taken }, que toman { $count } pinzas, { $intake } cada una.
 }

## Marcar

darts-mark = { $ring ->
    [yes] Por el revés marca los centros de las pinzas a lo largo { EDGE($edge, case: "of") }, cada { $every }, { $count } en total, el primero a { $first } de { side-seam }.
   *[no] Por el revés marca los centros de las pinzas a lo largo { EDGE($edge, case: "of") }, cada { $every }, { $count } en total, el primero a { $first } de un extremo.
 }
    .check = { $ring ->
        [yes] La última marca queda a { $first } de la costura, por el otro lado.
       *[no] La última marca queda a { $first } del otro extremo.
     }
    .tolerance = { $mark-off } de más o de menos
    .remedy = Reparte lo que sobre entre todas las marcas.
darts-legs = Desde cada marca traza una línea de { $long } recta hacia abajo, a escuadra con el borde: su final es el vértice. En el borde marca { $half } a cada lado del centro y traza desde ahí con regla los dos lados hasta el vértice.
    .check = Los dos lados miden { $leg }.
    .tolerance = { $mark-off } de más o de menos
    .remedy = La línea del centro está torcida: ponla a escuadra con el borde y traza otra vez los lados.

## Coser

darts-fold = Dobla cada pinza por su línea central, derecho con derecho, un lado sobre el otro. Sujeta con alfileres atravesados.
darts-sew = Cose cada pinza desde el borde a lo largo de su línea, { $leg }, { $stitch }, con unas puntadas atrás en el borde. Deja que las tres últimas puntadas corran sobre el mismo doblez.
    .check = En el borde las puntadas quedan a { $half } del doblez.
    .tolerance = { $hair-off } de más o de menos
    .remedy = Descose la mitad superior y vuelve a coserla sobre la línea.
darts-knot = Deja { $tail } de hilo en cada vértice y haz un nudo doble pegado a la tela; ahí no cosas hacia atrás.
darts-press = Plancha cada pinza plana tal como está cosida y después su doblez hacia el centro más cercano, delante o detrás. Recorta a ras del borde lo que sobresalga.
    .check = Por el derecho no se ve ningún bulto en los vértices.
    .remedy = Vuelve a coser los últimos { $last }, acabando más poco a poco.
darts-measure = { $open ->
    [yes] Mide { EDGE($edge) } por donde está cortado, de un extremo al otro con los dos márgenes de la costura abierta: { $lies }.
   *[no] Mide { EDGE($edge) } por donde está cortado: { $lies }.
 }
    .check = Mide { $lies }.
    .tolerance = { $off } de más o de menos
    .remedy = Si es largo: cose cada pinza una pizca por fuera de su línea, hasta nada en el vértice. Si es corto: una pizca por dentro.
