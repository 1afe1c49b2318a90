### Las piezas de un paso antes y después de él, con cada borde en la trama de su estado.

## Encabezamientos

figure-piece-before = Antes:
figure-piece-after = Después:
figure-piece-alike = { $copies } iguales
figure-piece-ring = un aro, medidas alrededor
figure-piece-flat = en plano
# Qué cara de la tela se ve.
figure-piece-up = { $up ->
    [margins] márgenes encima
    [either] cualquier cara encima
    [wrong] con el revés encima
   *[right] con el derecho encima
 }
figure-piece-margins-wide = Los márgenes de costura están dibujados más anchos de lo que son.
figure-piece-left-out = El centro está omitido en las líneas onduladas.
figure-piece-further = Lo que está cosido más lejos no se dibuja.

## Etiquetas

# Cómo está un borde.
figure-edge-state = { $state ->
    [raw] sin rematar
    [selvedge] orillo
    [neatened] sobrehilado
    [hemmed] con dobladillo
    [sewn] cosido
    [enclosed] encerrado
    [trimmed] con adorno
    [gathered] fruncido
    [pleated] plisado
    [sewn-gathered] cosido, fruncido
   *[sewn-pleated] cosido, plisado
 }
# Una sola etiqueta para los dos bordes de una pieza.
figure-piece-both = { figure-edge-state } arriba y abajo
figure-piece-deep = { $deep } de alto
figure-piece-layers = { $layers } capas
figure-piece-fold = doblez
figure-piece-seam = { $margin ->
    [none] costura
    [covered] costura, margen cubierto
    [stitched-down] costura, margen pespunteado
    [enclosed] costura, margen encerrado
    [neatened] costura, margen sobrehilado
   *[raw] costura, margen sin rematar
 }
figure-piece-behind = { $where ->
    [inside] { PIECE($piece, form: "bare") } por dentro
   *[sewn-on] { PIECE($piece, form: "bare") } por encima, con costura
 }

## En palabras, para quien no puede verla

figure-piece-form = { $layers ->
    [one] { $ring ->
        [yes] aro
       *[no] en plano
    }
   *[other] { $ring ->
        [yes] aro, { $layers } capas
       *[no] en plano, { $layers } capas
    }
 }
figure-piece-edge = { $side ->
    [top] borde superior { $length }, { figure-edge-state }
   *[bottom] borde inferior { $length }, { figure-edge-state }
 }
figure-piece-told-one = { PIECE($piece, form: "bare") } ({ figure-piece-form }), { $deep } de alto, { $edges }
figure-piece-told = { $when ->
    [before] Antes: { $pieces }.
   *[after] Después: { $pieces }.
 }
figure-piece-caption = { $broken ->
    [yes] { PIECE($pieces, at: "start") } antes y después, altos a la misma escala, anchos en proporción. Lo que cambia está dibujado más grueso.
   *[no] { PIECE($pieces, at: "start") } antes y después, a escala. Lo que cambia está dibujado más grueso.
 }
