### Coser lorzas de lado a lado de una pieza: dobleces pespunteados a todo su largo.

tucks-title = { $tucks ->
    [one] Cose { $tucks } lorza en { PIECE($piece) }
   *[other] Cose { $tucks } lorzas en { PIECE($piece) }
 }
    .number = { $depth }
tucks-aim = { $tucks ->
    [one] { $tucks } lorza de { $depth } se lleva { $taken } de alto.
   *[other] { $tucks } lorzas de { $depth } se llevan { $taken } de alto.
 }

## Marcar

tucks-mark-first = Marca una línea de doblez { $line } por encima { EDGE($edge, case: "of") }, a todo lo largo.
    .check = La línea guarda la distancia al borde.
    .tolerance = { $line-off } de más o de menos
    .remedy = Vuelve a trazarla donde se desvíe: todas las lorzas siguientes dependen de ella.
tucks-mark-next = Marca la línea de doblez { $number }, { $line } por encima del borde, medido en la tela lisa.

## Coser

tucks-sew = { $ring ->
    [yes] Dobla por la línea { $number }, revés con revés, y cose a { $depth } del doblez, { $length } todo alrededor, { $stitch }. Al terminar, monta tres puntadas sobre el principio.
   *[no] Dobla por la línea { $number }, revés con revés, y cose a { $depth } del doblez, { $length }, { $stitch }, rematando en los dos extremos.
 }
    .check = La lorza tiene { $depth } de profundidad a todo lo largo.
    .tolerance = { $line-off } de más o de menos
    .remedy = Descose el tramo que se haya desviado y vuelve a coserlo midiendo desde el doblez.
# La última de varias.
tucks-sew-last = { tucks-sew }
    .check = Las lorzas tienen { $depth } de profundidad y sus pespuntes están a { $apart } uno de otro.
    .tolerance = { tucks-sew.tolerance }
    .remedy = { tucks-sew.remedy }
tucks-press = { $tucks ->
    [one] Plancha la lorza hacia abajo, hacia el bajo de la prenda. Levanta la plancha y apóyala, sin arrastrarla.
   *[other] Plancha todas las lorzas hacia abajo, hacia el bajo de la prenda. Levanta la plancha y apóyala, sin arrastrarla.
 }
    .check = { PIECE($piece, at: "start") } tiene ahora { $left } de alto, sin lo que se llevarán sus demás bordes.
