### Acabar la parte de una costura abierta en el bajo, como abertura o con solapa por debajo.

slit-title = Acaba la abertura { PIECE($pieces, case: "of") }
    .number = { $long }
slit-title-vent = Acaba la abertura con solapa { PIECE($pieces, case: "of") }
    .number = { $long }
slit-aim = La abertura mide { $long } por encima del bajo y sus bordes quedan planos.
slit-aim-vent = La abertura mide { $long } por encima del bajo y se cruza { $margin }.
slit-press = Plancha los dos márgenes hacia atrás a lo largo de la abertura y siguiendo la costura de arriba, { $margin } cada uno.
    .check = Los dos dobleces continúan la línea de la costura.
    .remedy = Vuelve a planchar junto a la regla.
slit-sew = Con el derecho hacia arriba cose a { $beside } de la abertura desde el bajo hasta su final, gira con la aguja clavada, cose a lo ancho y baja por el otro lado, { $stitch }, rematando en los dos extremos.
    .check = Los dos pespuntes sujetan el margen a todo lo largo.
    .remedy = Descose donde un margen se haya escapado y vuelve a coser ese tramo.
slit-bar = Haz una presilla de { $bar } a lo ancho del final de la abertura, cuatro pasadas una sobre otra.
slit-press-vent = Plancha los dos márgenes hacia un lado, { $margin } de ancho, el izquierdo encima según se lleva. A lo largo de la abertura dobla el margen de encima hacia atrás por la línea de la costura; el de debajo se queda fuera.
    .check = Cerrados, los dos lados se cruzan { $margin } y cuelgan iguales.
    .tolerance = { $close-off } de más o de menos en el bajo
    .remedy = Deja colgar el lado más largo y vuelve a planchar su doblez.
slit-hold-vent = Cose el margen doblado a { $beside } de su borde, con la abertura extendida, desde el borde inferior hasta el final de la abertura, { $now }, { $stitch }.
slit-across-vent = Con el derecho hacia arriba traza una línea inclinada en el final de la abertura, de { $margin }, y cose sobre ella sujetando los dos márgenes, ida y vuelta.
    .check = Por dentro han quedado sujetos los dos márgenes.
    .remedy = Cose otra pasada al lado de la primera.
