### Cortar una pieza entre dos arcos, de modo que caiga con vuelo sin frunces.

ring-cut-title = Corta { PIECE($piece) } en redondo
    .number = { $radius }
ring-cut-aim = Radio { $radius }, { $degrees } grados: { $top } arriba, { $hem } abajo.

## Trazar

ring-cut-lay = Extiende liso el rectángulo para { PIECE($piece) }, de { $wide } de ancho y { $high } de alto.
ring-cut-centre = Traza la línea vertical del medio del rectángulo. Marca en ella el centro, { $outer } por encima del borde inferior.
# El centro cae fuera de la tela.
ring-cut-centre-beyond = Traza la línea vertical del medio del rectángulo y prolóngala fuera de él, en un papel pegado a la mesa. Marca en ella el centro, { $outer } por encima del borde inferior y { $beyond } más allá del borde superior.
ring-cut-outer = Sujeta una cinta métrica en el centro y traza el arco exterior a { $outer }.
    .check = El arco toca justo el borde inferior.
    .tolerance = { $arc-off } de más o de menos
    .remedy = Comprueba que el 0 de la cinta esté en el centro y vuelve a trazarlo.
ring-cut-inner = Traza el arco interior a { $inner }.
# Se dice solo dentro de los mensajes de abajo.
ring-cut-end-lines = { $has-seam ->
    [yes] Mide { $along } por el arco exterior desde la línea del medio hacia los dos lados. Traza una línea recta de cada marca al centro; después, una segunda línea { $ends } más afuera para la costura.
   *[no] Mide { $along } por el arco exterior desde la línea del medio hacia los dos lados. Traza una línea recta de cada marca al centro.
 }
ring-cut-ends = { ring-cut-end-lines }
    .check = Las marcas están a { $across } una de otra en línea recta.
    .tolerance = { $across-off } de más o de menos
    .remedy = Vuelve a medir por el arco, con la cinta de canto.
# Casi medio círculo o más: el ángulo se dice mejor que la línea recta.
ring-cut-ends-wide = { ring-cut-end-lines }
    .check = Las líneas están a { $whole-degrees } grados una de otra.
    .tolerance = 1 grado de más o de menos
    .remedy = { ring-cut-ends.remedy }

# Solo dentro de los mensajes siguientes.
ring-cut-move = { $on-paper ->
    [yes] Corre el centro { $shift } por la línea del medio; el último queda { $farthest } más allá del borde superior, sobre papel pegado a la mesa. Traza desde ahí otra vez los dos arcos y los extremos rectos.
   *[no] Corre el centro { $shift } por la línea del medio, alejándolo del borde inferior, y traza desde ahí otra vez los dos arcos y los extremos rectos.
 }
# Varias piezas en un rectángulo, una encima de otra; $short: en el último rectángulo solo hay $last.
ring-cut-next = { $short ->
    [yes] { ring-cut-move } Sigue así hasta que haya { $stacked } piezas en el rectángulo, en el último { $last }.
   *[no] { ring-cut-move } Sigue así hasta que haya { $stacked } piezas en el rectángulo.
 }
    .check = Cada nuevo arco exterior queda por encima del arco interior de la pieza anterior, más cerca en los dos extremos, y no lo cruza.
    .remedy = Vuelve a medir { $shift }, desde el último centro usado.

## Cortar y sujetar

ring-cut-cut = Corta por los dos arcos y por las líneas rectas más exteriores.
# Se dice solo dentro de los mensajes de abajo.
ring-cut-stay-row = Haz enseguida un pespunte a { $stay } del arco interior, { $stitch }, sin estirarlo. Este pespunte queda dentro de la costura.
ring-cut-stay = { ring-cut-stay-row }
    .check = El arco interior mide { $top } entre las costuras de los extremos.
    .tolerance = { $top-off } de más o de menos
    .remedy = Si es más largo, recoge un poco el pespunte. Si es más corto, da piquetes en el margen hasta el pespunte.
# Una costura o un doblez posterior se lleva algo en el arco interior.
ring-cut-stay-above = { ring-cut-stay-row }
    .check = La línea de la costura posterior, a { $above } del borde cortado, mide { $top } entre las costuras de los extremos.
    .tolerance = { ring-cut-stay.tolerance }
    .remedy = { ring-cut-stay.remedy }
ring-cut-hang = No le hagas todavía el dobladillo. Déjala colgada antes toda una noche y corta a nivel lo que se haya descolgado.
