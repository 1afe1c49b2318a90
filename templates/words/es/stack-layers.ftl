### Colocar unos bordes dentro de otros y sujetarlos como un solo borde, capa por capa.

stack-layers-title = Junta { $count } capas: { EDGE($stack) }
stack-layers-aim = Un solo borde de { $length }, que de aquí en adelante se llama { EDGE($stack) }.
# Una sola capa: no queda nada que hacer.
stack-layers-title-single = Prepara { PIECE($pieces) }
stack-layers-aim-single = La capa está lista.

## Una cinturilla doblada por la mitad, con sus dos bordes uno sobre otro

stack-layers-title-fold = Dobla { PIECE($band) } por la mitad
stack-layers-fold = Dobla { PIECE($band) } por la mitad a lo largo, revés con revés, con los dos bordes cortados a ras, y marca el doblez con la plancha.
    .check = Desde el doblez tiene de alto { $deep } más el ancho de la costura que vendrá.

## Marcar

# Solo dentro del mensaje de abajo. $several: capas que aún no llevan marcas.
stack-faces = { $several ->
    [yes] las dos caras de cada capa
   *[no] las dos caras
 }
# Ejemplares que salieron distintos: cuánto distan las marcas de cada uno, o cuánto mide.
stack-layers-own = { $part } (ejemplar { $letter })
# $marked: los bordes que aún no llevan marcas. $seam: cómo se dice el lugar de la primera marca.
stack-layers-mark = { $parts ->
    [8] { $seam ->
        [bright] Marca en octavos { $marked } por { stack-faces }, cada { $part }, la primera marca en la costura lateral del hilo de color vivo.{ marks-on-line }
        [some] Marca en octavos { $marked } por { stack-faces }, cada { $part }, la primera marca en la costura lateral, la del hilo de color vivo si lo hay.{ marks-on-line }
        [plain] Marca en octavos { $marked } por { stack-faces }, cada { $part }, la primera marca en la costura lateral.{ marks-on-line }
       *[ends] Marca en octavos { $marked } por { stack-faces }, cada { $part } desde un extremo.{ marks-on-line }
    }
   *[4] { $seam ->
        [bright] Marca en cuartos { $marked } por { stack-faces }, cada { $part }, la primera marca en la costura lateral del hilo de color vivo.{ marks-on-line }
        [some] Marca en cuartos { $marked } por { stack-faces }, cada { $part }, la primera marca en la costura lateral, la del hilo de color vivo si lo hay.{ marks-on-line }
        [plain] Marca en cuartos { $marked } por { stack-faces }, cada { $part }, la primera marca en la costura lateral.{ marks-on-line }
       *[ends] Marca en cuartos { $marked } por { stack-faces }, cada { $part } desde un extremo.{ marks-on-line }
    }
 }

## Colocar cada capa, de la más exterior a la más cercana al cuerpo

# Se dicen solo dentro de los mensajes de abajo: qué cara mira hacia dónde, y cómo coincide una capa con la anterior.
stack-layers-way = { $face ->
    [either] con los márgenes de costura hacia las piernas
    [out] con el derecho hacia fuera
   *[in] con el derecho hacia las piernas y el revés hacia la capa anterior
 }
stack-layers-meet = { $ring ->
    [yes] Haz coincidir las costuras laterales y las marcas, con los bordes superiores a ras, y { pin } ahí.
   *[no] Haz coincidir los extremos y las marcas, con los bordes superiores a ras, y { pin } ahí.
 }
stack-layers-hold = Sostén { PIECE($layer) } como al llevar la prenda puesta, { stack-layers-way }.
# Varias iguales, las primeras que se colocan.
stack-layers-nest = { $ring ->
    [yes] Mete los { $copies } aros { PIECE($layer, case: "of") } uno dentro de otro, { stack-layers-way }. { stack-layers-meet }
   *[no] Coloca los { $copies } ejemplares { PIECE($layer, case: "of") } uno sobre otro, { stack-layers-way }. { stack-layers-meet }
 }
    .check = Ninguna capa queda floja entre las marcas.
    .remedy = { $parts ->
        [8] { $hold ->
            [clips] Quita las pinzas de ese octavo y vuelve a repartir lo que sobra.
           *[pins] Quita los alfileres de ese octavo y vuelve a repartir lo que sobra.
        }
       *[4] { $hold ->
           [clips] Quita las pinzas de ese cuarto y vuelve a repartir lo que sobra.
          *[pins] Quita los alfileres de ese cuarto y vuelve a repartir lo que sobra.
       }
     }
# Se dice solo dentro de las comprobaciones siguientes: dónde acaba una capa junto a la anterior.
stack-layers-ends = { $ends ->
    [above] { " " }Su borde inferior acaba { $by } por encima del de la capa anterior.
    [below] { " " }Su borde inferior acaba { $by } por debajo del de la capa anterior.
   *[level] { "" }
 }
stack-layers-put-in = { $ring ->
    [yes] Mete dentro { PIECE($layer) }, { stack-layers-way }. { stack-layers-meet }
   *[no] Coloca detrás { PIECE($layer) }, { stack-layers-way }. { stack-layers-meet }
 }
    .check = { stack-layers-nest.check }{ stack-layers-ends }
    .remedy = { stack-layers-nest.remedy }
stack-layers-lined = { PIECE($layer, at: "start") } ya cuelga detrás: alísala. { stack-layers-meet }
    .check = { stack-layers-nest.check }{ stack-layers-ends }
    .remedy = { stack-layers-nest.remedy }
stack-layers-put-in-alike = { $ring ->
    [yes] Mete dentro los { $copies } aros { PIECE($layer, case: "of") }, { stack-layers-way }. { stack-layers-meet }
   *[no] Coloca detrás los { $copies } ejemplares { PIECE($layer, case: "of") }, { stack-layers-way }. { stack-layers-meet }
 }
    .check = { stack-layers-nest.check }{ stack-layers-ends }
    .remedy = { stack-layers-nest.remedy }

## Sujetarlas todas

stack-layers-share = Los ejemplares no miden lo mismo: { $lengths }. Reparte por igual de marca a marca lo que sobra, { $gap } en total.
stack-layers-pin = { pin-start } cada { $spacing } entre las marcas.
# Más de dos capas: esos alfileres atravesaban las capas que había entonces.
stack-layers-pin-through = { $hold ->
    [clips] Cuando estén todas las capas, sujétalas todas juntas con pinzas: primero en las marcas, después cada { $spacing }.
   *[pins] Cuando estén todas las capas, pasa los alfileres por todas ellas: primero en las marcas, después cada { $spacing }.
 }
stack-layers-sew = { $count ->
    [2] Cose juntas las dos capas a { $from-edge } del borde, { $length }, con la puntada más larga. Esta pasada se queda puesta.
   *[other] Cose juntas las { $count } capas a { $from-edge } del borde, { $length }, con la puntada más larga. Esta pasada se queda puesta.
 }
# Puntada corta: el fruncido de las capas queda sujeto para siempre.
stack-layers-sew-short = { $count ->
    [2] Cose juntas las dos capas a { $from-edge } del borde, { $stitch }, { $length }. Esta pasada se queda puesta.
   *[other] Cose juntas las { $count } capas a { $from-edge } del borde, { $stitch }, { $length }. Esta pasada se queda puesta.
 }
    .check = Todas las capas han quedado cogidas y ningún fruncido se ha empujado hasta formar un pliegue.
    .remedy = Descose el ancho de una mano, prende los alfileres más juntos y vuelve a coserlo.
