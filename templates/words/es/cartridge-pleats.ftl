### Recoger a mano un borde en pliegues pequeños y redondos y coserlos por encima al borde que los lleva.

cartridge-pleats-title = Cose { PIECE($edge) } { PIECE($to, case: "to") } con pliegues de cartucho
cartridge-pleats-aim = { $cloth } de tela caben en { $length }, unos { $pleats } pliegues.

## Doblar y marcar

cartridge-pleats-turn = Dobla { EDGE($edge) } { $turn } hacia el revés y marca el doblez con la plancha.
cartridge-pleats-turn-carrier = Dobla { EDGE($to) } { $turn } hacia el revés y marca el doblez con la plancha.
cartridge-pleats-dots = Marca puntos cada { $stitch } a lo largo { EDGE($edge, case: "of") }, { $first-row } por debajo del doblez.
    .check = Hay unos { $dots } puntos.

## Recoger

cartridge-pleats-rows = Da { $rows } pasadas de punto de bastilla sobre los puntos, a { $apart } una de otra, con hilo fuerte, cada puntada exactamente debajo de la de arriba; deja cabos largos.
    .check = Las puntadas de todas las pasadas quedan unas debajo de otras.
    .remedy = Saca la pasada que se haya descuadrado y vuelve a darla: con pasadas desiguales no se forman los pliegues.
cartridge-pleats-draw = Tira de todas las pasadas a la vez hasta { $length } y anuda los cabos.
    .check = Unos { $pleats } pliegues quedan uno junto a otro en { $length }.
    .tolerance = { $off } de más o de menos
    .remedy = Corre los pliegues por los hilos hasta que queden iguales.

## Coser

cartridge-pleats-whip = Coloca { EDGE($edge) } contra { EDGE($to) }, derecho con derecho, y cose por encima cada pliegue con dos puntadas.
    .check = No falta ningún pliegue.
    .remedy = Coge el pliegue que falte con dos puntadas propias.
