### Unir los dos extremos de una tira en un aro, o varios paños en un solo aro.
### $pieces: los pisos que atraviesa la costura. -panels: $copies de ellos forman un solo aro.

join-ends-title = Cierra { PIECE($pieces) } en aro
join-ends-title-panels = Cose { PIECE($pieces) } en un aro
join-ends-aim = { COUNT($pieces) ->
    [one] { PIECE($pieces, at: "start") } queda cerrada.
   *[other] { PIECE($pieces, at: "start") } quedan cerradas.
 }

## Coser

join-ends-sew = Cose { $length }, a { $seam-width } de los extremos, { $stitch }, rematando al principio y al final. Tumba con la uña los dos márgenes hacia el mismo lado; da igual cuál.
# La tira se unió antes a partir de trozos.
join-ends-sew-pieced = { join-ends-sew }
    .check = Su margen está por el revés, igual que los de las uniones.
join-ends-sew-panels = Cose { $length }, a { $seam-width } del borde, { $stitch }, rematando al principio y al final. Tumba con la uña los dos márgenes hacia el mismo lado, en todas las costuras en el mismo sentido.
join-ends-sew-panels-pieced = { join-ends-sew-panels }
    .check = Todos los márgenes están por el revés, igual que los de las uniones.

## Medir

join-ends-measure = Mide el contorno del borde inferior { PIECE($lowest, case: "of") }: { $round }.
    .check = El aro mide { $round } todo alrededor.
    .tolerance = { $off } de más o de menos
    .remedy = { $panels ->
        [yes] Si es demasiado largo, vuelve a coser una costura con un poco más de margen; si es demasiado corto, descose una y cósela con menos.
       *[no] Si es demasiado largo, vuelve a coser la costura con un poco más de margen; si es demasiado corto, descósela y cósela con menos.
     }
