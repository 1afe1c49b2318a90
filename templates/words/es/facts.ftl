### La tabla de medidas, y las tallas una junto a otra. `.why` va junto a una medida y dice de dónde sale.

## Largo y bajos

fact-length = largo final, de la cintura al bajo
    .why = el alto de todos los pisos juntos
fact-length-front = largo por delante
    .why = { fact-length-taken-up }
fact-length-sides = largo por los lados
    .why = { $slants ->
        [yes] { fact-length-taken-up }; a lo largo de la costura lateral, que es sesgada; en vertical { $down }
       *[no] { fact-length-taken-up }
     }
fact-length-back = largo por detrás
    .why = { fact-length-taken-up }
# Se dice solo dentro de los tres de arriba.
fact-length-taken-up = { $dips ->
    [yes] el bajo está cortado ahí { $up } más alto que detrás
   *[no] se rebajan { $up } en la cintura para que el bajo caiga a nivel
 }
# Una capa que acaba por encima de la más larga.
fact-length-layer = largo { PIECE($piece, case: "of") }
    .why = acaba { $short } por encima del bajo
fact-hem = contorno del bajo
    .why = un aro { PIECE($piece, case: "of") }
fact-hems = { $layers ->
    [2] contorno de los dos bajos
   *[other] contorno de los { $layers } bajos
 }
    .why = { $hems }
# Se dice solo dentro del mensaje de arriba: tantos aros, su longitud, de qué pieza.
fact-hem-of = { $copies } × { $round } { PIECE($piece, case: "of") }

## Vuelo y peso

fact-fullness = vuelo de la cintura al bajo
    .why = { $hem } de bajo por { $waist } de contorno de cintura, antes de recogerla
# $cloth: su nombre en el archivo de la autora.
fact-strips = tela ({ $cloth }) en tiras fruncidas
    .why = puestas una tras otra: { $strips }
fact-strip = { $count } × { $length }
fact-weight = peso
    .why = la tela ya cortada, sin { $left-out }
fact-weight-about = unos { $weight }
fact-weight-unknown = desconocido
    .why = { $cloths }
fact-no-weight = la tela ({ $cloth }) no tiene peso indicado
thread = hilo

## La cintura

fact-casing = tela en la cintura, antes de la goma
    .why = tiene que pasar por la cadera
fact-elastic = goma, cerrada y sin estirar
fact-elastic-why-step = véase el paso en que se pasa
fact-elastic-why-less = { $less } menos que la cintura
fact-elastic-why-carries = { $less } menos que la cintura, para sostener unos { $weight }
fact-waist = cintura, cerrada
    .why = { $by ->
        [zip] el borde superior; cremallera
        [hook-and-bar] { fact-waist-edge }; corchete
        [hook-and-eye] { fact-waist-edge }; corchete de gancho y ojal
        [button] { fact-waist-edge }; botón
        [snaps] { fact-waist-edge }; automáticos
       *[ties] { fact-waist-edge }; cintas de atar
     }
# Se dice solo como parte de la de arriba.
fact-waist-edge = { $banded ->
    [yes] la cinturilla menos su cruce
   *[no] el borde superior menos su cruce
 }
fact-opening = abertura bajo la cintura
    .why = con la cinturilla abierta tiene que pasar por la cadera

## Tiempo

fact-time = tiempo para todo, aproximado
    .why = al ritmo de una mano experta; sin lavar ni secar
# $times: tantas veces el tiempo de una mano experta.
fact-time-beginner = tiempo para todo, aproximado
    .why = al ritmo de quien empieza, { $times } veces el de una mano experta; sin lavar ni secar
fact-time-cutting = de ello, para cortar

## Las tallas una junto a otra

chart-body = Cuerpo
chart-choices = Elecciones
chart-piece = { PIECE($piece, at: "start") }
chart-count = cuántas
chart-length = largo final
chart-depth = alto final
chart-depth-folded = alto final, doblada
chart-cut-length = largo de corte
chart-cut-depth = alto de corte
chart-garment = La prenda entera
chart-hems = contorno de todos los bajos
chart-weight = peso, aproximado
