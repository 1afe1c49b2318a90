### Cortar paños que se ensanchan hacia el bajo, dos de cada rectángulo por una línea inclinada.

figure-gores-head = El rectángulo
figure-gores-top = arriba
figure-gores-hem = bajo
figure-gores-alt = { $paired ->
    [yes] Un rectángulo de { $wide } por { $high } con una línea inclinada de { $narrow } en el borde superior a { $broad } en el inferior: dos nesgas contrapeadas.
   *[no] Un rectángulo de { $wide } por { $high } con una línea inclinada de { $narrow } en el borde superior a la esquina inferior derecha: una nesga.
 }
figure-gores-caption = Las nesgas dentro de su rectángulo.
