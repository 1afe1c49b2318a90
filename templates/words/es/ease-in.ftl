### Embebe un borde algo más largo, de modo que quede liso sobre otro más corto.

ease-in-title = Embebe { EDGE($edge) }
    .number = { $cloth } → { $short }
ease-in-aim = { $cloth } de tela caben en { $short }, sin ningún pliegue.

# El borde es un anillo: el doblado empieza en su costura lateral.
ease-in-fold-ring = { $parts ->
    [8] Dobla tres veces por la mitad { EDGE($edge) }, desde { side-seam }. Marca los dobleces en las dos caras: cada { $cloth-part } a lo largo del borde cortado.
   *[4] Dobla dos veces por la mitad { EDGE($edge) }, desde { side-seam }. Marca los dobleces en las dos caras: cada { $cloth-part } a lo largo del borde cortado.
 }
ease-in-fold-flat = { $parts ->
    [8] Dobla tres veces por la mitad { EDGE($edge) }, extremo con extremo. Marca los dobleces en las dos caras: cada { $cloth-part } a lo largo del borde cortado.
   *[4] Dobla dos veces por la mitad { EDGE($edge) }, extremo con extremo. Marca los dobleces en las dos caras: cada { $cloth-part } a lo largo del borde cortado.
 }
ease-in-set = { rows-set-machine }
ease-in-row = Cose una pasada a { $row } del canto cortado: { EDGE($edge) }. { rows-runs }
ease-in-pull = { $parts ->
    [8] Tira un poco de los hilos de la canilla, desde los dos extremos, hasta que cada octavo mida { $short-part } a lo largo de la pasada. Alisa la tela a lo largo de la pasada con las yemas de los dedos.
   *[4] Tira un poco de los hilos de la canilla, desde los dos extremos, hasta que cada cuarto mida { $short-part } a lo largo de la pasada. Alisa la tela a lo largo de la pasada con las yemas de los dedos.
 }
    .check = La tela se abomba un poco a lo largo de la pasada, y no se forma ningún pliegue.
    .remedy = Donde se forme un pliegue, afloja ahí el hilo y alisa la tela hacia los dos lados.
ease-in-measure-ring = Mide el borde embebido todo alrededor, a lo largo de la pasada: { $short }.
    .check = { ease-in-measure.check }
    .tolerance = { ease-in-measure.tolerance }
    .remedy = { ease-in-measure.remedy }
ease-in-measure-flat = Mide el borde embebido a lo largo de la pasada: { $short }.
    .check = { ease-in-measure.check }
    .tolerance = { ease-in-measure.tolerance }
    .remedy = { ease-in-measure.remedy }
# Se dice solo como partes de los dos de arriba.
ease-in-measure =
    .check = { $has-target ->
        [yes] Mide { $short }, la longitud { EDGE($target, case: "of") } por la línea de costura.
       *[no] Mide { $short }.
     }
    .tolerance = { $ease }
    .remedy = Demasiado largo: tira un poco más. Demasiado corto: afloja el hilo.
ease-in-knot = { $in-runs ->
    [yes] En los dos extremos de cada tramo, anuda los dos hilos entre sí. Córtalos a { $knot }.
   *[no] En los dos extremos de la pasada, anuda los dos hilos entre sí. Córtalos a { $knot }.
 }
    .check = El borde sigue midiendo { $short }.
    .remedy = Si un nudo se soltó, tira otra vez del hilo y anuda más cerca de la tela.
ease-in-set-back = { rows-set-back }
