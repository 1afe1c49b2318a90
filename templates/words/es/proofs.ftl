### Lo que se demostró antes de cortar y cómo: una afirmación y lo que mostró el ensayo.

proof-sizes = Las medidas de corte menos costuras y dobleces son las medidas finales
proof-sizes-measured = { $pieces ->
    [one] comprobado en { $pieces } tipo de pieza
   *[other] comprobado en { $pieces } tipos de pieza
 }

proof-gap = La abertura para la goma estuvo abierta a tiempo y está cerrada
proof-gap-closed = cerradas: { $gaps }
proof-gap-none = ninguna jareta tiene abertura
# Se dice solo dentro de «cerradas».
proof-gap-in = { $gap } en { PIECE($piece) }
proof-gap-in-cord = { $gap } en { PIECE($piece) }, por donde sale el cordón
proof-gap-in-elastic = { $gap } en { PIECE($piece) }, por donde sale la goma
proof-seam-gaps = Una abertura que se deja en una costura se rellena o se cierra
proof-seam-gap-filled = { $gap } en la costura { PIECE($piece, case: "of") }

proof-gathers = Cada borde fruncido está sujeto por una costura
proof-gathers-sewn = { $edges ->
    [one] { $edges } borde fruncido está cosido
   *[other] { $edges } bordes fruncidos están cosidos
 }

proof-hem-level = El bajo cae a nivel
proof-hem-above-floor = { PIECE($piece) } acaba a { $height } del suelo
proof-hem-above-floor-places = { PIECE($piece) } acaba a { $front } del suelo por delante, a { $side } por los lados y a { $back } por detrás

proof-edges-match = Los bordes casan en todas las costuras
proof-edges-matched = { $seams ->
    [one] { $seams } costura une bordes de la misma longitud
   *[other] { $seams } costuras unen bordes de la misma longitud
 }

proof-hidden = Lo que va debajo queda oculto
proof-hidden-above = { PIECE($piece) } acaba { $left } por encima del bajo
proof-hidden-layers = de fuera hacia dentro, las capas acaban a { $ends }

proof-one-garment = Se usan todas las piezas y la prenda es una sola
proof-one-garment-pieces = { $pieces ->
    [one] la única pieza está cosida
   *[other] las { $pieces } piezas están unidas
 }

proof-opening = Pasa por la cadera y se sujeta en la cintura
proof-opening-flat = { $flat } en liso para { $girth } de cuerpo
proof-opening-cord = un cordón la recoge
proof-opening-stretch = la goma se estira un { $stretch }
proof-opening-stretch-rated = la goma se estira un { $stretch } del { $rated } que admite
proof-opening-band = abierta, { $way-in } de contorno para { $passes }; cerrada, { $waist } en la cintura
proof-opening-none = la prenda no tiene jareta ni abertura con tapeta

proof-no-raw-edge = Ningún borde puede deshilacharse
proof-edges-finished = { $edges ->
    [one] { $edges } borde está con dobladillo, sobrehilado, cosido o encerrado
   *[other] { $edges } bordes están con dobladillo, sobrehilados, cosidos o encerrados
 }
proof-edges-stay-raw = { $edges } pueden quedar sin rematar, pues la tela no se deshilacha

proof-no-raw-margin = Ningún margen de costura puede deshilacharse
proof-margins = de { $seams } costuras, { $neatened } sobrehiladas, { $enclosed } encerradas y { $free } en tela que no se deshilacha

proof-used = Se usa todo lo que se compra
proof-used-materials = { $materials ->
    [one] se usa { $materials } material
   *[other] se usan { $materials } materiales
 }
proof-used-materials-thread = { $materials ->
    [one] se usan { $materials } material y el hilo
   *[other] se usan { $materials } materiales y el hilo
 }

proof-elastic = La goma sostiene el peso de la prenda
proof-elastic-none = no se mira: no se pasa ninguna goma por una cintura conocida
proof-elastic-no-weight = no se mira: una tela no tiene peso indicado, así que no se conoce el de la prenda
proof-elastic-load = unos { $weight } en una goma de { $wide } de ancho, { $less } más corta que la cintura
proof-elastic-limit = hasta { $limit } sirve cualquier goma más corta que la cintura
proof-elastic-limit-heavy = hasta { $limit } sirve cualquier goma más corta que la cintura; por encima, una que sea { $usual } más corta

proof-thickness = Ninguna costura es más gruesa de lo que admite la máquina
proof-thickest = la más gruesa tiene cerca de { $thick }
proof-thickest-none = no se une nada con costuras

proof-clear = Nada estorba a ninguna otra cosa
proof-clear-things = { $things ->
    [one] { $things } cosa está sobre la tela
   *[other] { $things } cosas están sobre la tela, cada una apartada de las demás
 }

proof-numbers = Todos los números se pueden coser y usar
proof-numbers-within = { $numbers ->
    [one] { $numbers } número está dentro de sus límites
   *[other] { $numbers } números están dentro de sus límites
 }

proof-fullness = La tela admite el vuelo en todas las líneas
proof-fullness-held = { $stretches ->
    [one] { $stretches } tramo está sujeto como admite su tela
   *[other] { $stretches } tramos están sujetos como admite su tela
 }

proof-length = Los altos suman el largo final
proof-length-sum = { $depths } = { $length }

proof-rings = Cada aro pasa por el cuerpo y deja holgura en su sitio
proof-rings-passed = { $rings ->
    [one] { $rings } aro por debajo del borde superior, { $narrowest } al abrirlo
   *[other] { $rings } aros por debajo del borde superior, el más estrecho { $narrowest } al abrirlo
 }
proof-rings-none = no hay ningún aro por debajo del borde superior
proof-rings-no-hips = no se mira: no consta el contorno de cadera

proof-held = Algo la sujeta por arriba
proof-held-ring = { EDGE($edge, at: "start") }, { $rest } sin estirar
proof-held-cord = un cordón en { EDGE($edge) }
proof-held-tied = un cordón que se ata a la cintura
proof-held-band = una cinturilla que se cierra
proof-held-straps = tirantes sobre los hombros
proof-held-none = nada que se sepa

proof-way-round = La tela muestra su derecho y cuelga en su sentido
proof-way-round-shown = se miraron todas las capas y todos los estampados

proof-no-bag = Lo que va cosido arriba y abajo tiene el mismo largo entre medias
proof-no-bag-shown = ninguna capa hace bolsas

proof-rows-covered = La hilera que ha de tapar la costura de la de abajo cuelga por encima
proof-rows-covered-by = { PIECE($row, at: "start") } cuelga { $over } por encima de la costura de abajo

proof-measures = Las medidas del cuerpo no están cambiadas
proof-measures-shown = se compararon cintura, cadera y alturas

proof-ends = Los extremos sueltos no llegan al suelo y convienen a quien la lleva
proof-ends-shown = se siguieron cordones, cintas y lazos hasta sus extremos
proof-held-by-maker = otra cosa, según indica quien la diseñó

# La razón está al lado, en las palabras de quien escribió el archivo.
proof-accepted = Es a propósito

proof-heat = Nada se plancha con más calor del que admite
proof-heat-shown = la plancha se pone siempre para lo más delicado que puede tocar
