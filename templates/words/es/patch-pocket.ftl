### Poner un bolsillo de parche en una pieza.
### $pocket: el bolsillo; $on: la pieza de debajo; $pockets: cuántos.

patch-pocket-title = { $pockets ->
    [one] Cose { PIECE($pocket) } sobre { PIECE($on) }
   *[other] Cose cada unidad { PIECE($pocket, case: "of") } sobre { PIECE($on) }
 }
patch-pocket-aim = { $pockets ->
    [one] El bolsillo mide { $wide } de ancho y { $high } de alto, y se abre por arriba.
   *[other] Cada bolsillo mide { $wide } de ancho y { $high } de alto, y se abre por arriba.
 }

## Preparar

patch-pocket-hem = Plancha { $under } del borde superior { PIECE($pocket, case: "of") } hacia el revés, después otros { $hem }. Cose a { $edge } del doblez interior, de un lado al otro, { $stitch }.
patch-pocket-press = Dobla en diagonal las dos esquinas de abajo y plancha después { $turn } de los dos lados y de abajo hacia el revés.
    .check = Mide { $wide } de ancho y { $high } de alto, y sus esquinas están a escuadra.
    .tolerance = { $off } de más o de menos
    .remedy = Vuelve a planchar el doblez donde se desvíe.
# $finished: el borde superior de la pieza de debajo ya está en una costura, y se mide desde ella.
patch-pocket-mark-ring = { $finished ->
    [yes] Por el derecho { PIECE($on, case: "of") } marca las dos esquinas de arriba { $from-edge } por debajo de la costura superior: a { $near } y a { $far } de { side-seam }.
   *[no] Por el derecho { PIECE($on, case: "of") } marca las dos esquinas de arriba { $from-edge } por debajo del borde superior cortado: a { $near } y a { $far } de { side-seam }.
 }
    .check = { patch-pocket-level.check }
    .tolerance = { patch-pocket-level.tolerance }
    .remedy = { patch-pocket-level.remedy }
patch-pocket-mark-flat = { $finished ->
    [yes] Por el derecho { PIECE($on, case: "of") } marca las dos esquinas de arriba { $from-edge } por debajo de la costura superior: a { $near } y a { $far } del extremo izquierdo tal como está ahora.
   *[no] Por el derecho { PIECE($on, case: "of") } marca las dos esquinas de arriba { $from-edge } por debajo del borde superior cortado: a { $near } y a { $far } del extremo izquierdo tal como está ahora.
 }
    .check = { patch-pocket-level.check }
    .tolerance = { patch-pocket-level.tolerance }
    .remedy = { patch-pocket-level.remedy }
# Se dice solo como partes de los dos de arriba.
patch-pocket-level =
    .check = Las dos marcas están a la misma altura.
    .tolerance = { $level-off } de más o de menos
    .remedy = Vuelve a medir desde el borde superior.
patch-pocket-mark-other = Marca el otro bolsillo a la misma altura y a la misma distancia del otro lado.

## Coser

patch-pocket-pin = Coloca { PIECE($pocket) } encima, con el derecho hacia arriba y las esquinas de arriba en las marcas, y préndelo con alfileres.
patch-pocket-sew = Cose a { $edge } del borde bajando por un lado, a lo largo de abajo y subiendo por el otro, { $stitch }. En las dos esquinas de arriba cose un triángulo de { $triangle } y remata.
    .check = El bolsillo queda plano, cabe una mano y no ha quedado ningún alfiler dentro.
    .remedy = Descose el lado que tire, alísalo y vuelve a coserlo.
