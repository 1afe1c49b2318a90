### Sobrehilar bordes sin rematar o márgenes de costura para que no se deshilachen.
### Un paso trabaja en uno o varios sitios: $pieces o $edge dicen cuáles, $length el largo de cada uno.

## Lo que se sobrehíla

neaten-title-joins = Sobrehíla { neaten-joins }
neaten-title-ends = Sobrehíla { neaten-ends }
neaten-title-between = Sobrehíla { neaten-between }
neaten-title-edge = Sobrehíla { EDGE($edge) }
neaten-title-all-joins = Sobrehíla los márgenes de todas las uniones
neaten-title-margins = Sobrehíla { $places } márgenes { PIECE($pieces, case: "of") }
neaten-title-edges = Sobrehíla { $places } bordes { PIECE($pieces, case: "of") }
neaten-title-several = Sobrehíla { $places } bordes y márgenes { PIECE($pieces, case: "of") }
neaten-aim = Los bordes cortados no pueden deshilacharse.
# Tijeras de picos: los picos frenan los hilos, pero no para siempre.
neaten-aim-pinked = Los bordes cortados se deshilachan menos.
# Tela que no se deshilacha.
neaten-aim-firm = Los bordes cortados quedan sujetos y no rascan.

# Se dicen solo dentro de otros mensajes de este archivo.
neaten-joins = los márgenes de las uniones { PIECE($pieces, case: "of") }
# $several: el aro se cerró con varios paños, así que hay más de una costura.
neaten-ends = { $several ->
    [yes] los márgenes de las costuras laterales { PIECE($pieces, case: "of") }
   *[no] el margen de la costura lateral { PIECE($pieces, case: "of") }
 }
neaten-between = { $where ->
    [edge] el margen { EDGE($beside, case: "of") }
    [round] el margen alrededor { PIECE($pieces, case: "of") }
   *[between] el margen entre { PIECE($pieces) }
 }

# Como $place en los pasos de abajo.
neaten-place-joins = { neaten-joins }, todas las capas juntas, { $length } cada uno
neaten-place-ends = { $several ->
    [yes] { neaten-ends }, todas las capas juntas, { $length } cada uno
   *[no] { neaten-ends }, todas las capas juntas, { $length }
 }
neaten-place-between = { neaten-between }, todas las capas juntas, { $length }
# $layers: las de un montón o de una cinturilla doblada se rematan como una.
neaten-place-edge = { $layers ->
    [1] { EDGE($edge) }, { $length }
    [2] { EDGE($edge) }, las dos capas juntas, { $length }
   *[other] { EDGE($edge) }, todas las capas juntas, { $length }
 }
# $longest: las nesgas que difieren tienen lados de varios largos.
neaten-place-sides = { EDGE($edge) }, de { $length } a { $longest }

# $side: cuál de los dos lados de una pieza, que todavía está sola.
neaten-side = { $side ->
    [start] { $each ->
        [gore] Pon una nesga { PIECE($piece, case: "of") } con el derecho arriba y su extremo estrecho lejos de ti. El borde inicial es el lado de la izquierda.
        [panel] Pon un ejemplar { PIECE($piece, case: "of") } con el derecho arriba y el borde superior lejos de ti. El borde inicial es el lado de la izquierda.
       *[piece] Pon { PIECE($piece) } con el derecho arriba y el borde superior lejos de ti. El borde inicial es el lado de la izquierda.
    }
   *[end] { $each ->
        [gore] Pon una nesga { PIECE($piece, case: "of") } con el derecho arriba y su extremo estrecho lejos de ti. El borde final es el lado de la derecha.
        [panel] Pon un ejemplar { PIECE($piece, case: "of") } con el derecho arriba y el borde superior lejos de ti. El borde final es el lado de la derecha.
       *[piece] Pon { PIECE($piece) } con el derecho arriba y el borde superior lejos de ti. El borde final es el lado de la derecha.
    }
 }

## Con remalladora

neaten-overlock-ring = Empieza en una costura vertical. Pasa por la remalladora { $place }. Monta { $past } sobre el principio y sal por el borde con una cadeneta de { $tail }.
    .check = { neaten-overlock-flat.check }
    .remedy = { neaten-overlock-flat.remedy }
neaten-overlock-flat = Pasa por la remalladora { $place }. Sal por el borde en los dos extremos con una cadeneta de { $tail }.
    .check = { $ravels ->
        [yes] Todas las capas han quedado sujetas y la cuchilla ha cortado hilos sueltos, pero nada de tela.
       *[no] Todas las capas han quedado sujetas y la cuchilla ha cortado solo lo que sobresalía.
     }
    .remedy = Vuelve a pasar por el tramo que se haya escapado.
neaten-chain = Enhebra cada cadeneta en una aguja de punta roma, pásala bajo las puntadas y corta el resto.
    .check = No cuelga ninguna cadeneta suelta.
neaten-chain-back = Dobla cada cadeneta hacia atrás sobre su costura y cose { $catch } de ella con un zigzag pequeño. Corta el resto.
    .check = No cuelga ninguna cadeneta suelta y el zigzag la sujeta.

## Con puntada zigzag

neaten-try-zigzag = { zigzag-set } Pruébala en el borde de un retal.
    .check = La aguja entra en la tela y cae fuera de su borde alternativamente, y el borde queda plano.
    .remedy = Si el borde se enrolla, pon la puntada más estrecha.
neaten-zigzag-ring = Empieza en una costura vertical. Cose en zigzag { $place }. Monta { $past } sobre el principio y remata. Corta los hilos a ras.
    .check = { neaten-zigzag-flat.check }
    .remedy = { neaten-zigzag-flat.remedy }
neaten-zigzag-flat = Cose en zigzag { $place }. Remata en los dos extremos. Corta los hilos a ras.
    .check = Todas las capas han quedado sujetas.
    .remedy = Vuelve a pasar por el tramo que se haya escapado.

## Con tijeras de picos

neaten-pink = Recorta con tijeras de picos { $place }. No quites más que los picos.
    .check = Los picos son iguales.
    .remedy = Vuelve a pasar por el tramo que se haya escapado.

## Con la plancha

# Una costura vertical larga: sus márgenes van hacia un lado.
neaten-press = Plancha por el revés los márgenes de las costuras verticales { PIECE($pieces, case: "of") } planos hacia un lado, en todas las costuras en el mismo sentido.
    .check = Por el derecho no queda ningún pliegue junto a una costura.
    .remedy = Tira de las dos piezas a ambos lados de la costura y plancha otra vez.
