### Las primeras páginas: la prenda de un vistazo, el plan de las sesiones, tomar medidas, vocabulario; y el cuidado.

## De un vistazo

# El colofón: quién ha diseñado la prenda, qué versión de la guía es y en qué condiciones se puede pasar a otros.
front-author = Diseño
front-version = Versión
front-licence = Licencia
front-size = Talla
# $measures: las medidas del cuerpo para las que está hecha la guía.
front-size-with = { $whose }: { $measures }
front-measure = { $name } { $value }
front-length = Largo
front-length-hem = { $length }, contorno del bajo { $hem }
front-cloth = Tela
front-cloth-of = { $cloth } { $amount }
front-cost = Coste del material
front-cost-without = { $cost }, sin { $materials }
front-time = Tiempo
front-time-waits = { $time }, y además { $waits }
front-wait-wash = lavar y secar antes de cortar
front-wait-hang = dejar colgado una noche antes de { $place }
front-wait-dry = { $overnight ->
    [yes] dejar secar una noche en { $place }
   *[no] dejar secar en { $place }
 }
front-weight = Peso
front-skill = Nivel
front-skill-hand = sabes coser a mano
front-skill-straight = sabes coser recto a máquina
front-skill-zigzag = sabes coser recto y en zigzag
front-skill-overlocker = sabes coser recto y usar una remalladora
# $can: uno de los de arriba. $place: la letra del primer trabajo de fruncido.
front-skill-taught = { $can }; a fruncir se enseña en { $place }
front-cutting = Corte
# $waits: what takes hours in this sitting and is no work.
front-sitting-waits = y además { $waits }

## Tomar medidas

front-how = { $name ->
    [height] de la coronilla en vertical hasta el suelo, sin zapatos
    [neck-girth] alrededor de la base del cuello
    [chest-girth] en horizontal por la parte más ancha del pecho, bajo los brazos
    [waist-girth] en horizontal, a media distancia entre la última costilla y el borde superior del hueso de la cadera
    [waist-height] desde ahí en vertical hasta el suelo, sin zapatos
    [hip-girth] en horizontal por la parte más ancha de las nalgas
    [hip-height] desde ahí en vertical hasta el suelo, sin zapatos
    [hip-depth] de la cintura a la parte más ancha de las nalgas
   *[knee-height] del centro de la rótula en vertical hasta el suelo
 }
front-floor = suelo, sin zapatos
front-drawn = { $number }: { $how }
front-measuring = Por dónde pasa la cinta métrica.
front-measuring-alt = Una persona de pie, vista de frente, con una línea numerada para cada medida. { $lines }.

## Vocabulario

term-right-side = derecho, revés
    .means = la cara de la tela que se ve con la prenda puesta, y la otra
term-margin = margen de costura
    .means = la tela entre una costura y su borde cortado
term-selvedge = orillo
    .means = el borde firme de los dos lados de la tela tal como se vende
term-sew-back = rematar
    .means = dos o tres puntadas hacia atrás sobre las últimas, para que la costura no se abra
term-gore = nesga
    .means = un paño de falda más ancho en el bajo que arriba
term-baste = hilvanar
    .means = coser con puntadas largas que sujetan un tiempo y luego se quitan
term-lap = tapeta
    .means = un doblez de tela que queda sobre algo y lo tapa
term-interfacing = entretela
    .means = una tela rígida con cola por un lado, que se pega con la plancha detrás de una pieza para darle cuerpo
term-bustle = polisón
    .means = los pliegues de atrás en los que se recoge una cola
term-gather = fruncir
    .means = encoger un borde largo con hilos hasta que mida lo que uno corto
term-run = tramo
    .means = una pasada de puntada larga de una marca a la siguiente
term-bobbin-thread = hilo de la canilla
    .means = el hilo de abajo de una pasada; es del que se tira
term-ease = embeber
    .means = repartir un poco de largo de más entre los alfileres, sin que se coja ningún pliegue
# So far as a hand is wide: how much of a row is unpicked, and how far a tape goes on. $hand: its width.
term-hand = ancho de una mano
    .means = unos { $hand }
term-neaten = sobrehilar
    .means = coser alrededor de un borde cortado para que no se deshilache ni raspe
term-topstitch = pespuntear
    .means = coser por el derecho una pasada que sujeta lo que hay debajo
term-raw-edge = borde sin rematar
    .means = un borde tal como se cortó
term-casing = jareta
    .means = un canal de tela para una goma o un cordón
term-strip = tira
    .means = una pieza larga y recta, cortada entera o en tramos que se unen
term-offcut = retal
    .means = lo que queda de una tela al cortar las piezas; en él se prueban la puntada y el calor
term-bodkin = pasacintas
    .means = una aguja plana y roma que se empuja por una jareta; un imperdible cerrado también sirve
term-ring = aro
    .means = una pieza cuyos dos extremos están cosidos entre sí
term-layer = capa
    .means = una de las piezas que van una sobre otra y se cosen como una sola

## Cuidado

# $fibres: las de sus telas.
after-wash = Fibras: { $fibres }. Lávala como pida la más delicada. Si ninguna etiqueta lo dice, a mano en agua tibia, sin retorcer, y cuélgala para secar.
    .head = Lavado
# $places: las letras de los trabajos de almidonado.
after-starch = El almidón se va al lavar. Almidónala de nuevo después de cada lavado, como en { $places }.
    .head = Volver a almidonar
after-store = Cuélgala limpia y seca, por la cintura, lejos de radiadores y llamas. No la aplastes: lo que pasa mucho tiempo doblado conserva los dobleces.
    .head = Guardar
after-label = { $fire ->
    [yes] Escribe en una segunda cinta y cósela a mano junto a la que advierte del fuego: de quién es o la talla, el año, { $fibres }.
   *[no] Escribe en una cinta y cósela a mano por dentro de la cintura: de quién es o la talla, el año, { $fibres }.
 }
    .head = Etiqueta
