### Pespuntear líneas a lo largo de una jareta, para varias filas de goma.
### $piece: la cinturilla, o la pieza cuyo borde se dobló; $band: cuál de las dos.

divide-casing-title = Divide la jareta en { $channels } canales
    .number = { $channel }
divide-casing-aim = { $channels } canales quedan uno debajo de otro, cada uno de { $channel } de ancho, para una fila de goma cada uno.

divide-casing-mark = { $band ->
    [yes] { $rows ->
        [one] Traza una línea todo alrededor de la jareta por el derecho, a { $channel } por debajo del doblez.
       *[other] Traza { $rows } líneas todo alrededor de la jareta por el derecho: la primera a { $channel } por debajo del doblez, cada una de las siguientes { $channel } más abajo.
     }
   *[no] { $rows ->
        [one] Traza una línea todo alrededor de la jareta por dentro, a { $channel } por debajo del doblez.
       *[other] Traza { $rows } líneas todo alrededor de la jareta por dentro: la primera a { $channel } por debajo del doblez, cada una de las siguientes { $channel } más abajo.
     }
 }
    .check = De cada línea a la siguiente, y de la última al pespunte de la jareta, hay { $channel }.
    .tolerance = { $off } de más o de menos
    .remedy = Borra la línea mal puesta y vuelve a trazarla.
# La abertura está en el pespunte de la jareta, y cada pespunte nuevo deja abierto el mismo tramo.
divide-casing-sew-gap = Cose sobre cada línea de un extremo de la abertura al otro dando toda la vuelta, { $sewn }, { $stitch }, de modo que quede una abertura de { $gap } justo encima de la primera. Remata en los dos extremos.
    .check = Un resto de la goma se desliza por cada canal, y las aberturas quedan una encima de otra.
    .remedy = Descose el pespunte donde se atasque el resto y vuelve a coserlo sobre su línea.
# La abertura es un corte a través de la jareta, en una costura: los pespuntes pasan por encima.
divide-casing-sew = Cose sobre cada línea todo alrededor, { $sewn }, { $stitch }, también a través de la costura abierta. Monta el final tres puntadas sobre el principio.
    .check = Un resto de la goma se desliza por cada canal, y cada uno tiene su propia abertura en la costura.
    .remedy = Descose el pespunte donde se atasque el resto y vuelve a coserlo sobre su línea.
