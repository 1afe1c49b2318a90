### Los dos bordes de una costura con sus marcas y sus alfileres, antes de coserlos.
### $to: las piezas del borde de arriba, $edge: las del borde de abajo.

figure-marks-above = { PIECE($to, at: "start") }
figure-marks-below = { $under ->
    [yes] { PIECE($edge, at: "start") }, debajo en la máquina
   *[no] { PIECE($edge, at: "start") }, encima en la máquina
 }
figure-marks-other-seam = otra costura
figure-marks-every = una marca cada { $part }

figure-marks-hold-ring = Los bordes son aros: la primera y la última marca son la misma costura lateral. { figure-marks-hold }
figure-marks-hold-flat = La primera y la última marca son los dos extremos. { figure-marks-hold }
# Se dice solo dentro de los dos de arriba.
figure-marks-hold = { $hold ->
    [clips] Pinzas primero en las marcas, después cada { $spacing }.
   *[pins] Alfileres primero en las marcas, después cada { $spacing }.
 }

figure-marks-alt = { $hold ->
    [clips] { PIECE($to, at: "start") } arriba y { PIECE($edge) } abajo, de { $length } de largo cada una, con { $parts } partes iguales marcadas cada { $part } y pinzas en las marcas y entre ellas.
   *[pins] { PIECE($to, at: "start") } arriba y { PIECE($edge) } abajo, de { $length } de largo cada una, con { $parts } partes iguales marcadas cada { $part } y alfileres en las marcas y entre ellas.
 }
figure-marks-caption = Haz coincidir marca con marca, derecho con derecho.
