### Recoger a mano un borde en pliegues pequeños y redondos y coserlos por encima al borde que los lleva.

cartridge-pleats-title = Cose { PIECE($edge) } { PIECE($to, case: "to") } con pliegues de cartucho
    .number = { $cloth } → { $length }
cartridge-pleats-aim = { $cloth } de tela caben en { $length }, unos { $pleats } pliegues.

## Doblar y marcar

cartridge-pleats-turn = Dobla { EDGE($edge) } { $turn } hacia el revés y marca el doblez con la plancha.
cartridge-pleats-turn-carrier = Dobla { EDGE($to) } { $turn } hacia el revés y marca el doblez con la plancha.
cartridge-pleats-mark-ring = { $parts ->
    [8] Marca los dos dobleces en octavos, la primera marca en la costura lateral: { PIECE($edge) } cada { $cloth-part }, { PIECE($to) } cada { $part }.
   *[4] Marca los dos dobleces en cuartos, la primera marca en la costura lateral: { PIECE($edge) } cada { $cloth-part }, { PIECE($to) } cada { $part }.
 }
cartridge-pleats-mark-flat = { $parts ->
    [8] Marca los dos dobleces en octavos: { PIECE($edge) } cada { $cloth-part }, { PIECE($to) } cada { $part }.
   *[4] Marca los dos dobleces en cuartos: { PIECE($edge) } cada { $cloth-part }, { PIECE($to) } cada { $part }.
 }
cartridge-pleats-dots = Marca { $rows } hileras de puntos por el revés { PIECE($edge, case: "of") }, la primera { $first-row } por debajo del doblez, a { $apart } una hilera de otra. En cada hilera los puntos van cada { $stitch }, cada uno debajo del de arriba.
    .check = Hay unos { $dots } puntos en cada hilera.

## Recoger

# $runs, $per-run: véase `rows-runs`.
cartridge-pleats-rows = { $in-runs ->
    [yes] { $per-run ->
        [one] Cose punto de bastilla de punto a punto con hilo fuerte, en { $runs } tramos, uno de cada marca a la siguiente. Empieza cada tramo, en cada hilera, con un hilo nuevo y un nudo, y deja colgando { $tail } al final.
       *[other] { $parts ->
            [8] Cose punto de bastilla de punto a punto con hilo fuerte, en { $runs } tramos de { $per-run } octavos cada uno. Empieza cada tramo, en cada hilera, con un hilo nuevo y un nudo, y deja colgando { $tail } al final.
           *[4] Cose punto de bastilla de punto a punto con hilo fuerte, en { $runs } tramos de { $per-run } cuartos cada uno. Empieza cada tramo, en cada hilera, con un hilo nuevo y un nudo, y deja colgando { $tail } al final.
        }
    }
   *[no] Cose punto de bastilla de punto a punto con hilo fuerte, una hilera tras otra. Empieza cada hilera con un hilo nuevo y un nudo, y deja colgando { $tail } al final.
 }
    .check = Las puntadas de todas las hileras quedan unas debajo de otras.
    .remedy = Saca la hilera que se haya descuadrado y vuelve a coserla: con hileras desiguales no se forman los pliegues.
cartridge-pleats-draw = { $in-runs ->
    [yes] { $parts ->
        [8] Tira de todas las hileras a la vez, tramo por tramo, hasta que cada octavo mida { $part }. Clava un alfiler atravesado al final de cada tramo y enrolla en él los cabos.
       *[4] Tira de todas las hileras a la vez, tramo por tramo, hasta que cada cuarto mida { $part }. Clava un alfiler atravesado al final de cada tramo y enrolla en él los cabos.
    }
   *[no] { $parts ->
        [8] Tira de todas las hileras a la vez hasta que cada octavo mida { $part }. Clava un alfiler atravesado al final y enrolla en él los cabos.
       *[4] Tira de todas las hileras a la vez hasta que cada cuarto mida { $part }. Clava un alfiler atravesado al final y enrolla en él los cabos.
    }
 }
    .check = Unos { $pleats } pliegues quedan uno junto a otro en { $length }.
    .tolerance = { $off } de más o de menos
    .remedy = Corre los pliegues por los hilos hasta que queden iguales.
cartridge-pleats-knot = { $in-runs ->
    [yes] Quita esos alfileres, anuda entre sí los cabos de cada tramo y córtalos a { $knot }.
   *[no] Quita ese alfiler, anuda entre sí los cabos de todas las hileras y córtalos a { $knot }.
 }

## Coser

cartridge-pleats-pin = Coloca el doblez plegado contra el doblez { PIECE($to, case: "of") }, derecho con derecho, marca con marca, y { pin } en las marcas.
cartridge-pleats-whip = Cose por encima cada pliegue al doblez { PIECE($to, case: "of") } con dos puntadas: unas { $stitches } en total.
    .check = No falta ningún pliegue.
    .remedy = Coge el pliegue que falte con dos puntadas propias.
