### Una hilera sobre una línea que cruza una pieza: colocada cabeza abajo, después vuelta hacia abajo.

figure-row-laid = Colocada y cosida
figure-row-hem-up = dobladillo arriba, revés fuera
figure-row-hanging = Vuelta hacia abajo
figure-row-alt = { PIECE($on, at: "start") }, con el derecho encima; { EDGE($row) } está encima cabeza abajo, { $seam-width } por debajo de una línea trazada a { line-place }, y cosido sobre la línea. Vuelta hacia abajo, la hilera cuelga { $hangs }, con el derecho fuera.
figure-row-caption = { $gathered ->
    [yes] La hilera fruncida se cose cabeza abajo y cae sobre su propia costura.
   *[no] La hilera se cose cabeza abajo y cae sobre su propia costura.
 }
