### Unir en una sola tira los trozos en que se cortó una pieza.
### $piece: la pieza, de la que hay $copies tiras. $pieces: todas las piezas del paso que se cortan en trozos.

join-strips-title = Une las tiras { PIECE($pieces, case: "of") }
join-strips-aim = Cada tira es de un solo largo.

# Las etiquetas son las del plano de corte.
join-strips-lay = Extiende los trozos { PIECE($piece, case: "of") } en el orden de sus etiquetas, con los bordes largos a ras. { pin-start } los extremos cortos que están frente a frente, derecho con derecho.
    .check = { $copies ->
        [one] Todos los trozos de la tira tienen la misma cara encima.
       *[other] Cada tira tiene los trozos con su número y todos tienen la misma cara encima.
     }
join-strips-sew = Cose cada unión a { $seam-width } de los extremos, { $stitch }, rematando al principio y al final. Tumba con la uña los dos márgenes hacia el mismo lado; da igual cuál.
    .check = Todos los márgenes están por el revés.
    .remedy = Descose la unión cuyo margen esté por el derecho, da la vuelta a un trozo y vuelve a coserla.
join-strips-measure = { $copies ->
    [one] Mide la tira unida: { $whole }.
   *[other] Mide cada tira unida: { $whole }.
 }
    .check = { $copies ->
        [one] La tira { PIECE($piece, case: "of") } mide { $whole } de un extremo cortado al otro.
       *[other] Cada tira { PIECE($piece, case: "of") } mide { $whole } de un extremo cortado al otro.
     }
    .tolerance = { $off } de más o de menos
    .remedy = Si es más larga, recorta un extremo a escuadra. Si es más corta, descose la unión que tenga demasiado margen y vuelve a coserla. Si ninguna lo tiene, alarga la tira con un trozo de lo que sobró y recórtala.

## Detrás de un paso, entre paréntesis

join-strips-joins-for = { $copies ->
    [one] { chain-joins }
   *[other] { chain-joins } para { $copies } tiras
 }
