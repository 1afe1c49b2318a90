### Un borde con sus marcas, después un tramo de los dos bordes sujetos con alfileres, antes de coserlos.
### $to: las piezas del borde de arriba, $edge: las del borde que se cose; $up: las que quedan encima en la máquina, $under: las de debajo.

figure-marks-edge = { PIECE($to, at: "start") }
figure-marks-other-seam = otra costura
figure-marks-every = una marca cada { $part }
figure-marks-both-faces = { $ring ->
    [yes] Los dos extremos son la costura lateral. Una esquina está doblada: marca las dos caras.
   *[no] Una esquina está doblada: marca las dos caras.
 }
figure-marks-alt = { PIECE($to, at: "start") }, el borde de { $length } de largo, con { $parts } partes iguales marcadas cada { $part } en las dos caras.

figure-pinned-up = { PIECE($up, at: "start") }, revés arriba
figure-pinned-mark = marca
figure-pinned-below = Debajo, donde la esquina está doblada: { PIECE($under) }, derecho arriba, los bordes a la par.
figure-pinned-alt = { $hold ->
    [clips] Un tramo de los dos bordes, a la par, { PIECE($up) } encima con el revés arriba y { PIECE($under) } debajo, derecho con derecho; una pinza en la marca y una cada { $spacing }.
   *[pins] Un tramo de los dos bordes, a la par, { PIECE($up) } encima con el revés arriba y { PIECE($under) } debajo, derecho con derecho; un alfiler en la marca y uno cada { $spacing }.
 }
figure-pinned-caption = Haz coincidir marca con marca, derecho con derecho.
