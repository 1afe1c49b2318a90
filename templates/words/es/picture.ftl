### La prenda tal como quedará, dibujada según sus medidas sobre un maniquí sencillo.

picture-view = { $view ->
    [side] de lado
    [back] por detrás
    [peeled] con las capas apartadas
   *[front] de frente
 }
picture-caption = { $view ->
    [side] De lado.
    [back] Por detrás.
    [peeled] Con las capas apartadas.
   *[front] Una impresión de frente: los largos son exactos; cuánto se abre depende de la tela.
 }
# Bajo el pie, donde un modelo de la tela halla que un bajo amplio se abre y sube por encima de lo que debe tapar.
picture-shows = Abierta como en el dibujo, { PIECE($outer, form: "short") } termina unos { $lower } por encima de { PIECE($inner, form: "short") }; solo por los largos terminaría { $longer } por debajo. Si eso no debe asomar, acorta al menos { $lower } antes de cortar: { PIECE($inner, form: "short") }.

## En palabras

picture-alt = { $title } sobre un maniquí sencillo, { picture-view }: { $long } de largo, unos { $across } de ancho en el bajo. { picture-made } { picture-closed }
picture-made = { $count ->
    [one] De arriba abajo: { $layers }.
   *[other] De fuera hacia dentro: { $layers }.
 }
picture-layer = { $alike ->
    [one] { $tiers }
   *[other] { $alike } capas iguales, cada una: { $tiers }
 }
picture-tier-plain = { PIECE($piece, form: "bare") } ({ $deep } de alto)
picture-tier-gathered = { PIECE($piece, form: "bare") } ({ $deep } de alto, con fruncido { $full } : 1)
picture-tier-pleated = { PIECE($piece, form: "bare") } ({ $deep } de alto, en pliegues)
picture-closed = { $closed ->
    [elastic] Una goma elástica recoge la cintura.
    [cord] Un cordón recoge la cintura y sus extremos cuelgan.
    [ties] Está abierta por detrás y se ata ahí.
    [button] Una abertura por detrás se cierra con un botón.
    [zip] Una cremallera la cierra por detrás.
    [slit] Una abertura por detrás la deja pasar por la cadera.
   *[band] La cintura conserva su medida.
 }
