### Cortar paños que se ensanchan hacia el bajo, contrapeados en rectángulos.

figure-gores-head = El rectángulo
figure-gores-top = arriba
figure-gores-hem = bajo
figure-gores-alt = { $paired ->
    [yes] Un rectángulo de { $wide } por { $high } con una línea inclinada de { $narrow } en el borde superior a { $broad } en el inferior: dos nesgas contrapeadas.
   *[no] Un rectángulo de { $wide } por { $high } con una línea inclinada de { $narrow } en el borde superior a la esquina inferior derecha: una nesga.
 }
figure-gores-row-head = { $times ->
    [one] Un rectángulo, { $count ->
        [one] una nesga
       *[other] { $count } nesgas
    }
   *[other] { $times } rectángulos, { $count ->
        [one] una nesga
       *[other] { $count } nesgas
    } en cada uno
 }
figure-gores-diagonal = las dos diagonales { $diagonal }
figure-gores-row-alt = Un rectángulo de { $wide } por { $high }, las dos diagonales { $diagonal }, con líneas inclinadas del borde superior al inferior, desde la izquierda: { $lines }. Entre ellas las nesgas van contrapeadas.
figure-gores-caption = Las nesgas dentro de su rectángulo.
