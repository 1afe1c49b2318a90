### Coser cinturilla y forro a las capas fruncidas de modo que el forro, vuelto hacia dentro, tape todos los márgenes.
### $band es la cinturilla; $lining el forro, $lining-edge su borde superior; $to el borde superior de las capas, $layers sus piezas.

turned-lining-title = Monta { PIECE($band) } y { PIECE($lining) }
turned-lining-aim = { PIECE($band, at: "start") } queda arriba, y todos los márgenes entre las capas y { PIECE($lining) }.

## Marcar

turned-lining-mark-band = { $parts ->
    [8] Marca los octavos de los bordes sin rematar { PIECE($band, case: "of") }, cada { $part }, la primera en la costura que cierra el anillo.
   *[4] Marca los cuartos de los bordes sin rematar { PIECE($band, case: "of") }, cada { $part }, la primera en la costura que cierra el anillo.
 }
# $marked: un borde que aún no lleva marcas.
turned-lining-mark = { $parts ->
    [8] Marca los octavos { EDGE($marked, case: "of") } por las dos caras, la primera marca en la costura lateral.
   *[4] Marca los cuartos { EDGE($marked, case: "of") } por las dos caras, la primera marca en la costura lateral.
 }

## La cinturilla en el forro

turned-lining-lay-band = { $out ->
    [yes] Vuelve { PIECE($lining) } del revés. Pasa { PIECE($band) } por encima, con el doblez hacia el bajo y los bordes sin rematar a ras con { EDGE($lining-edge) }. La mitad que tiene la abertura queda contra el revés del forro, que irá hacia las piernas.
   *[no] Vuelve { PIECE($lining) } del derecho. Pasa { PIECE($band) } por encima, con el doblez hacia el bajo y los bordes sin rematar a ras con { EDGE($lining-edge) }. La mitad que tiene la abertura queda contra el derecho del forro, que irá hacia las piernas.
 }
    .check = La abertura no se ve: queda entre la cinturilla y el forro.
turned-lining-pin-lining = { pin-start } primero las costuras, después las marcas y después cada { $spacing }.
    .check = Los dos quedan a ras y sin ningún pliegue.
    .remedy = Reparte lo que sobra entre las marcas.
# El forro es más largo que la cinturilla: $lining-over.
turned-lining-ease-lining = { pin-start } primero las costuras, después las marcas y después cada { $spacing }. El forro mide { $lining-over } más: repártelo entre los alfileres, con el fruncido algo más apretado, nunca en un pliegue.
    .check = Los dos quedan a ras y el fruncido está parejo, sin ningún pliegue tumbado.
    .remedy = Quita los alfileres de ese tramo y corre el fruncido hacia el siguiente.
turned-lining-sew-band = Cose a { $inside } del borde, { $stitch }, { $length } todo alrededor, desde dentro del aro, con el forro encima.
    .check = No ha quedado pillado ningún pliegue y la cinturilla no está encogida.
    .remedy = Descose el ancho de una mano, alísalo y vuelve a coserlo.

## Los dos en las capas

turned-lining-slip = { $out ->
    [yes] Vuelve { PIECE($lining) } del derecho: la cinturilla cuelga ahora por dentro. Pon también las capas del derecho y pasa el forro por encima, con todos los bordes superiores a ras.
   *[no] Vuelve { PIECE($lining) } del revés: la cinturilla cuelga ahora por dentro. Pon las capas del derecho y pasa el forro por encima, con todos los bordes superiores a ras.
 }
    .check = { $out ->
        [yes] El derecho del forro mira hacia fuera, y la cinturilla queda entre él y las capas, con el doblez hacia el bajo.
       *[no] El revés del forro mira hacia fuera, y la cinturilla queda entre él y las capas, con el doblez hacia el bajo.
     }
turned-lining-pin-layers = { pin-start } primero las costuras laterales, después las marcas y después cada { $spacing }, atravesándolo todo.
    .check = Todos los bordes están a ras.
    .remedy = Reparte lo que sobra entre las marcas.
turned-lining-ease-layers = { pin-start } primero las costuras laterales, después las marcas y después cada { $spacing }, atravesándolo todo. Las capas miden { $layers-over } más: repártelo entre los alfileres, con el fruncido algo más apretado, nunca en un pliegue.
    .check = Todos los bordes están a ras y el fruncido está parejo.
    .remedy = Quita los alfileres de ese tramo y corre el fruncido hacia el siguiente.
turned-lining-gathers-up = Gira la labor para que el fruncido de las capas quede encima; así coses desde dentro del aro.
turned-lining-sew = Cose a { $seam-width } del borde atravesándolo todo, despacio, porque es grueso: { $stitch }, { $length } todo alrededor. Al terminar, monta tres puntadas sobre el principio.
    .check = Todas las capas han quedado cogidas y el primer pespunte está en el margen.
    .remedy = Vuelve a coser donde se haya escapado una capa.

## Volver

# Se dice solo dentro del mensaje siguiente: dónde acaba el forro.
turned-lining-ends = { $ends ->
    [above] { " " }Su bajo acaba { $by } por encima del de las capas.
    [below] { " " }Su bajo acaba { $by } por debajo del de las capas.
   *[level] { "" }
 }
turned-lining-turn = Levanta { PIECE($lining) } por encima del borde y deja que caiga hacia dentro. Tira de la cinturilla hacia arriba.
    .check = { $out ->
        [yes] No se ve ningún borde sin rematar ni ninguna pasada de fruncido, ni por dentro ni por fuera. La abertura de la jareta queda por dentro, y el derecho del forro queda contra las capas.
       *[no] No se ve ningún borde sin rematar ni ninguna pasada de fruncido, ni por dentro ni por fuera. La abertura de la jareta queda por dentro, y el derecho del forro mira hacia las piernas.
     }{ turned-lining-ends }
    .remedy = Si la abertura queda por fuera, la cinturilla se cosió al revés: descose los dos pespuntes y dale la vuelta.
turned-lining-press = Plancha la costura un poco por dentro, con los márgenes hacia el bajo.
