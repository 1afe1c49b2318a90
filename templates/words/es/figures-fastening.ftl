### Un cierre en una cintura acabada.

figure-fastening-outside = Por fuera, cerrado
figure-fastening-note = Lo que queda por dentro o entre los extremos va en línea discontinua. Sin escala.
figure-fastening-alt = { $overlaps ->
    [yes] Los extremos cerrados de la abertura, vistos por fuera, a ras por arriba. El derecho monta { $overlap } sobre el otro. La primera mitad va cosida por dentro, { $below } por debajo { $under ->
        [yes] de la cinturilla
       *[no] del borde superior
     }; la otra, donde se encuentra con ella.
   *[no] Los extremos cerrados de la abertura, vistos por fuera, a ras por arriba. Los extremos se tocan. La primera mitad va cosida por dentro, { $below } por debajo { $under ->
        [yes] de la cinturilla
       *[no] del borde superior
     }; la otra, donde se encuentra con ella.
 }
# Los botones quedan por fuera, con sus ojales o presillas.
figure-fastening-alt-buttons = Los extremos cerrados de la abertura, por fuera. { $count ->
    [one] Un botón
   *[other] { $count } botones
 } con { $loops ->
    [yes] una presilla cada uno en el borde del extremo derecho, la primera
   *[no] un ojal cada uno en el extremo de encima, el primero
 } a { $below } por debajo { $under ->
    [yes] de la cinturilla
   *[no] del borde superior
 }.
figure-fastening-caption = { $count ->
    [one] Dónde se cosen las dos mitades.
   *[other] Dónde se cosen las dos mitades de cada uno de los { $count } cierres.
 }
