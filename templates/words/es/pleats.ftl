### Plegar un borde en pliegues planos, tablas dobles o tablas encontradas.

pleats-title = { $kind ->
    [knife] Pliega { EDGE($edge) } en pliegues planos
    [box] Pliega { EDGE($edge) } en tablas dobles
   *[inverted] Pliega { EDGE($edge) } en tablas encontradas
 }
    .number = { $cloth } → { $length }
pleats-aim = { $count ->
    [one] { $cloth } - { $length } = { $taken } se recogen en { $count } pliegue, de { $depth } de profundidad.
   *[other] { $cloth } - { $length } = { $taken } se recogen en { $count } pliegues, de { $depth } de profundidad cada uno.
 }

## Marcas

pleats-mark-ring = { $count ->
    [one] Marca { EDGE($edge) } una sola vez, en la costura.
   *[other] Marca { EDGE($edge) } cada { $every }, { $count } veces, la primera en la costura.
 }
    .check = { $count ->
        [one] { $count } marca.
       *[other] { $count } marcas, la última a { $every } de la primera.
     }
    .tolerance = { $mark-off } en total
    .remedy = Reparte lo que sobre entre todas las marcas.
# Los pliegues planos empiezan en sus marcas.
pleats-mark-flat = { $count ->
    [one] Marca { EDGE($edge) } una sola vez, en un extremo.
   *[other] Marca { EDGE($edge) } cada { $every }, { $count } veces, desde un extremo.
 }
    .check = { $count ->
        [one] { $count } marca.
       *[other] { $count } marcas, la última a { $every } del otro extremo.
     }
    .tolerance = { pleats-mark-ring.tolerance }
    .remedy = { pleats-mark-ring.remedy }
# Las tablas dobles y encontradas tienen su marca en el centro.
pleats-mark-flat-middles = { $count ->
    [one] Marca { EDGE($edge) } una sola vez, en el centro.
   *[other] Marca { EDGE($edge) } cada { $every }, { $count } veces, la primera a { $half } de un extremo.
 }
    .check = { $count ->
        [one] { $count } marca, a { $half } de los dos extremos.
       *[other] { $count } marcas, la última a { $half } del otro extremo.
     }
    .tolerance = { pleats-mark-ring.tolerance }
    .remedy = { pleats-mark-ring.remedy }
pleats-lines-knife = En cada marca, traza una segunda línea { $twice } más adelante.
pleats-lines-box = En cada marca, traza una línea { $half-shown } a cada lado.
pleats-lines-inverted = En cada marca, traza una línea { $twice } a cada lado.

## Plegar

pleats-fold-knife = Dobla por la segunda línea y lleva el doblez hasta la primera marca, todos los dobleces hacia el mismo lado. { pin-start } cada pliegue.
pleats-fold-box = Dobla las dos líneas hacia atrás, { $depth } de profundidad, de modo que cada tabla toque la siguiente. { pin-start } cada doblez.
pleats-fold-inverted = Lleva las dos líneas hasta la marca que hay entre ellas, de modo que los dos dobleces se junten por delante. { pin-start } cada doblez.

## Medir y sujetar

pleats-measure-ring = Mide el borde plegado todo alrededor: { $length }.
    .check = Mide { $length } y de cada pliegue se ven { $shown }.
    .tolerance = { $off } de más o de menos
    .remedy = Si es demasiado largo, haz unos cuantos pliegues un pelo más profundos. Si es demasiado corto, menos profundos. Repártelo entre muchos pliegues.
pleats-measure-flat = Mide el borde plegado: { $length }.
    .check = { pleats-measure-ring.check }
    .tolerance = { pleats-measure-ring.tolerance }
    .remedy = { pleats-measure-ring.remedy }
pleats-sew-down = Cose los pliegues a { $from-edge } del borde con la puntada más larga, { $length }. Esta pasada queda dentro de la costura.
pleats-press = Plancha los pliegues desde arriba, hasta donde deban quedar marcados. Levanta la plancha y apóyala, sin arrastrarla.
