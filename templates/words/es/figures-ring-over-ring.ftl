### Dos aros que se cosen juntos: uno pasado por encima del otro.
### $over: las piezas del aro de fuera, $inside: las del aro sobre el que se pasa.

figure-rings-over = { PIECE($over, at: "start") }
# $side: qué borde del aro de fuera se cose; un borde unido no tiene lado.
figure-rings-over-how = { $side ->
    [top] del revés, cabeza abajo: su borde superior está arriba
    [bottom] del revés, cabeza abajo: su borde inferior está arriba
   *[stack] del revés, cabeza abajo: su borde que se cose está arriba
 }
figure-rings-inside = { PIECE($inside, at: "start") }
figure-rings-inside-how = del derecho

figure-rings-level = Los dos bordes cortados a ras, derecho con derecho
figure-rings-wrong-side = revés { PIECE($over, case: "of") }
figure-rings-right-side = derecho { PIECE($inside, case: "of") }

figure-rings-note = Sin escala. Las líneas que bajan por los aros son las costuras laterales.
figure-rings-alt = { PIECE($over, at: "start") }, del revés y cabeza abajo, se pasa por encima { PIECE($inside, case: "of") }, del derecho, hasta que los dos bordes, de { $length } de contorno cada uno, quedan a ras: por fuera se ve el revés { PIECE($over, case: "of") }, debajo el derecho { PIECE($inside, case: "of") }; las costuras laterales coinciden.
figure-rings-caption = Cómo quedan { PIECE($over) } y { PIECE($inside) } antes de prenderlas.
