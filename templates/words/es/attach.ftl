### Coser un borde a otro de la misma longitud.
### $edge y sus piezas cuelgan debajo, $to es el borde de arriba.

attach-title = Cose { PIECE($edge) } { PIECE($to, case: "to") }
    .number = { $seam-width }
attach-aim = { COUNT($edge) ->
    [one] { PIECE($edge, at: "start") } cuelga { PIECE($to, case: "of") }, costura de { $seam-width }.
   *[other] { PIECE($edge, at: "start") } cuelgan { PIECE($to, case: "of") }, costura de { $seam-width }.
 }

## Colocar

attach-turn = Pon { PIECE($edge) } del derecho y { PIECE($to) } del revés.
attach-slip = { COUNT($to) ->
    [one] Pasa { PIECE($to) }, cabeza abajo, por encima { PIECE($edge, case: "of") }, hasta que { EDGE($to, form: "short") } quede a ras { EDGE($edge, form: "short", case: "of") }.
   *[other] Pasa { PIECE($to) }, cabeza abajo, por encima { PIECE($edge, case: "of") }, hasta que { EDGE($to, form: "short") } queden a ras { EDGE($edge, form: "short", case: "of") }.
 }
    .check = Los derechos se miran y los dos bordes cortados están a ras.
attach-slip-tails = { COUNT($to) ->
    [one] Pasa { PIECE($to) }, cabeza abajo, por encima { PIECE($edge, case: "of") }, hasta que { EDGE($to, form: "short") } quede a ras { EDGE($edge, form: "short", case: "of") }. Deja que los cabos de hilo cuelguen por fuera del borde.
   *[other] Pasa { PIECE($to) }, cabeza abajo, por encima { PIECE($edge, case: "of") }, hasta que { EDGE($to, form: "short") } queden a ras { EDGE($edge, form: "short", case: "of") }. Deja que los cabos de hilo cuelguen por fuera del borde.
 }
    .check = { attach-slip.check }
attach-lay = Coloca { EDGE($edge) } contra { EDGE($to) }, derecho con derecho y a ras.
attach-lay-tails = Coloca { EDGE($edge) } contra { EDGE($to) }, derecho con derecho y a ras. Deja que los cabos de hilo cuelguen por fuera del borde.

## Prender

attach-pin-gathers = { match-and-pin }
    .check = { $hold ->
        [clips] Los bordes están a ras y los frunces no se amontonan en las marcas. Donde el borde liso es más largo, va embebido entre las pinzas sin formar ningún pliegue.
       *[pins] Los bordes están a ras y los frunces no se amontonan en las marcas. Donde el borde liso es más largo, va embebido entre los alfileres sin formar ningún pliegue.
     }
    .tolerance = el borde fruncido, hasta { $ease } más corto en total
    .remedy = Si es más de { $ease } más corto, afloja los frunces.
attach-pin-pleats = { match-and-pin }
    .check = { $hold ->
        [clips] Los bordes están a ras y los pliegues no se amontonan en las marcas. Donde el borde liso es más largo, va embebido entre las pinzas sin formar ningún pliegue.
       *[pins] Los bordes están a ras y los pliegues no se amontonan en las marcas. Donde el borde liso es más largo, va embebido entre los alfileres sin formar ningún pliegue.
     }
    .tolerance = el borde plisado, hasta { $ease } más corto en total
    .remedy = Si es más de { $ease } más corto, afloja los pliegues.
attach-pin-flat = { match-and-pin }
    .check = Los bordes están a ras.
    .tolerance = un borde { $off } más largo
    .remedy = Reparte la diferencia entre las marcas.

## Coser

# Frunces sobre pasadas de hilo: cada uno se ve antes de que la aguja llegue a él.
attach-turn-work-gathers-up = Gira la labor de modo que los frunces queden encima. Así ves cada uno a tiempo y puedes alisarlo, con la máquina parada, con la punta de un alfiler.
attach-turn-work-gathers-up-ring = { attach-turn-work-gathers-up } Cose por el interior del aro.
# Los frunces de un plisador los sujeta su propio pespunte.
attach-turn-work-gathers = { COUNT($to) ->
    [one] Gira la labor de modo que { PIECE($to) } quede encima y los frunces debajo. El pespunte del plisador los sujeta, y la máquina arrastra por debajo la tela con más vuelo.
   *[other] Gira la labor de modo que { PIECE($to) } queden encima y los frunces debajo. El pespunte del plisador los sujeta, y la máquina arrastra por debajo la tela con más vuelo.
 }
attach-turn-work-pleats = { COUNT($to) ->
    [one] Gira la labor de modo que { PIECE($to) } quede encima y los pliegues debajo. Ahí el prensatelas no puede volcarlos.
   *[other] Gira la labor de modo que { PIECE($to) } queden encima y los pliegues debajo. Ahí el prensatelas no puede volcarlos.
 }
attach-turn-work-flat = { COUNT($to) ->
    [one] Gira la labor de modo que { PIECE($to) } quede encima.
   *[other] Gira la labor de modo que { PIECE($to) } queden encima.
 }
# Se dice solo dentro de los mensajes de abajo.
attach-seam = { $ring ->
    [yes] Cose a { $seam-width } del borde, { $stitch }, { $length } todo alrededor. Al terminar, monta tres puntadas sobre el principio.
   *[no] Cose a { $seam-width } del borde, { $stitch }, { $length }, rematando en los dos extremos.
 }
attach-sew-gathers = { attach-seam }
    .check = Ningún pliegue ha quedado pillado en la costura y por el derecho no se ve ninguna pasada de fruncido.
    .remedy = Descose el ancho de una mano, alísalo y vuelve a coserlo. La pasada que se vea por debajo de la costura se saca.
attach-sew-pleats = { attach-seam }
    .check = Cada pliegue está como se hilvanó y el hilván no se ve por el derecho.
    .remedy = Descose el ancho de una mano, vuelve a colocar el pliegue y cose.
attach-sew-flat = { attach-seam }
    .check = Los bordes siguen a ras.
    .remedy = Descose el ancho de una mano, alísalo y vuelve a coserlo.
