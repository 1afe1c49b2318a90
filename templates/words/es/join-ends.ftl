### Unir los dos extremos de una tira en un aro, o varios paños en un solo aro.
### $pieces: los pisos que atraviesa la costura. -panels: $copies de ellos forman un solo aro.

join-ends-title = Cierra { PIECE($pieces) } en aro
    .number = { $seam-width }
join-ends-title-panels = Cose { PIECE($pieces) } en un aro
    .number = { $seam-width }
join-ends-aim = { COUNT($pieces) ->
    [one] { PIECE($pieces, at: "start") } queda cerrada.
   *[other] { PIECE($pieces, at: "start") } quedan cerradas.
 }

## Coser

# Se dice solo dentro de los mensajes siguientes: qué se hace con los márgenes; una costura larga se plancha con una frase propia.
join-ends-margins = { $margins ->
    [ironed] { "" }
    [apart] { " " }Abre los márgenes con la uña.
   *[aside] { " " }Tumba con la uña los dos márgenes hacia el mismo lado; da igual cuál.
 }
join-ends-margins-panels = { $margins ->
    [ironed] { "" }
    [apart] { " " }Abre con la uña los márgenes de todas las costuras.
   *[aside] { " " }Tumba con la uña los dos márgenes hacia el mismo lado, en todas las costuras en el mismo sentido.
 }
join-ends-margins-open = { $margins ->
    [ironed] { "" }
   *[apart] { " " }Abre los márgenes con los dedos.
 }
join-ends-margins-open-panels = { $margins ->
    [ironed] { "" }
   *[apart] { " " }Abre con los dedos los márgenes de todas las costuras.
 }
join-ends-sew = Cose { $length }, a { $seam-width } de los extremos, { $stitch }, rematando al principio y al final.{ join-ends-margins }
# La tira se unió antes a partir de trozos.
join-ends-sew-pieced = { join-ends-sew }
    .check = Su margen está por el revés, igual que los de las uniones.
join-ends-sew-panels = Cose cada costura, { $length }, a { $seam-width } del borde, { $stitch }, rematando al principio y al final.{ join-ends-margins-panels }
join-ends-sew-panels-pieced = { join-ends-sew-panels }
    .check = Todos los márgenes están por el revés, igual que los de las uniones.

# La costura queda abierta en un tramo: cada sitio se marca antes.
seam-open-top = { $which ->
    [only] Por el revés marca dónde acaba la abertura, { $open } bajo el borde superior, en los dos bordes que se cosen juntos.
   *[numbered] Por el revés marca dónde acaba la abertura, { $open } bajo el borde superior, en los dos bordes de { seam-named }.
 }
seam-open-hem = { $which ->
    [only] Por el revés marca dónde empieza la abertura del bajo, { $open-at-hem } sobre el borde inferior, en los dos bordes que se cosen juntos.
   *[numbered] Por el revés marca dónde empieza la abertura del bajo, { $open-at-hem } sobre el borde inferior, en los dos bordes de { seam-named }.
 }
seam-open-gap = { $which ->
    [only] Por el revés marca un hueco de { $gap-from } a { $gap-to } bajo el borde superior, en los dos bordes que se cosen juntos.
   *[numbered] Por el revés marca un hueco de { $gap-from } a { $gap-to } bajo el borde superior, en los dos bordes de { seam-named }.
 }
seam-sewn = { $opens-above ->
    [yes] desde la marca de la abertura
   *[no] desde el borde superior
 }{ $opens-between ->
    [yes] { " " }hasta la marca superior del hueco y luego desde la inferior
   *[no] { "" }
 } { $opens-below ->
    [yes] hasta la marca de la abertura del bajo
   *[no] hasta el borde inferior
 }
join-ends-sew-open = Cose a { $seam-width } de los extremos, { seam-sewn }, { $sewn } en total, { $stitch }, con unas puntadas atrás en cada extremo y en cada marca.{ join-ends-margins-open }
    .check = Ninguna puntada pasa de una marca, y lo que debe quedar abierto lo está.
    .remedy = Descose lo que pase de una marca y vuelve a rematar ahí.
# Solo una de las costuras queda abierta: primero las demás.
join-ends-sew-closed = { $others ->
    [one] Cose a { $seam-width } de los bordes, { $stitch }, con unas puntadas atrás en los dos extremos. Cose de borde a borde la costura sin marcas, { $length }.
   *[other] Cose a { $seam-width } de los bordes, { $stitch }, con unas puntadas atrás en los dos extremos de cada costura. Cose de borde a borde las { $others } costuras sin marcas, { $length } cada una.
 }
    .check = Ninguna costura empieza ni acaba antes de un borde.
    .remedy = Sigue cosiendo sobre el final de la costura hasta el borde.
join-ends-sew-open-panels = De la costura marcada cose solo lo que va { seam-sewn }, { $sewn } en total, con unas puntadas atrás en cada extremo y en cada marca.{ join-ends-margins-open-panels }
    .check = { join-ends-sew-open.check }
    .remedy = { join-ends-sew-open.remedy }

join-ends-press = { $panels ->
    [yes] Abre con la plancha los márgenes de todas las costuras, por el revés y en todo su largo.
   *[no] Abre con la plancha los márgenes de la costura, por el revés y en todo su largo.
 }
    .check = Por el derecho no queda ningún pliegue junto a una costura.
    .remedy = Tira de las dos piezas a ambos lados de la costura y plancha otra vez.

## Medir

join-ends-measure = { $open-ends ->
    [yes] Mide el contorno del borde inferior { PIECE($lowest, case: "of") }, de un extremo cortado de la abertura al otro: { $round }.
   *[no] Mide el contorno del borde inferior { PIECE($lowest, case: "of") }: { $round }.
 }
    .check = { $open-ends ->
        [yes] El aro mide { $round } de un extremo al otro.
       *[no] El aro mide { $round } todo alrededor.
     }
    .tolerance = { $off } de más o de menos
    .remedy = { $panels ->
        [yes] Si es demasiado largo, vuelve a coser una costura con un poco más de margen; si es demasiado corto, descose una y cósela con menos.
       *[no] Si es demasiado largo, vuelve a coser la costura con un poco más de margen; si es demasiado corto, descósela y cósela con menos.
     }
# Tela que se ensancha: arriba tiene otro largo.
join-ends-measure-top = { $open-top ->
    [yes] Mide también el borde superior { PIECE($highest, case: "of") }, plano y sin tirar, de un extremo cortado de la abertura al otro: { $round-top }.
   *[no] Mide también el contorno del borde superior { PIECE($highest, case: "of") }, plano y sin tirar: { $round-top }.
 }
    .check = Mide { $round-top }, antes de que la costura de arriba tome su margen.
    .tolerance = { $off-top } de más o de menos
    .remedy = Si es demasiado largo, cose una costura con un poco más de margen arriba, hasta nada { $run-out } más abajo; si es demasiado corto, descósela hasta ahí y cósela con menos.
