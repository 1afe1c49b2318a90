### La prenda tal como quedará, dibujada según sus medidas sobre un maniquí sencillo.

picture-view = { $view ->
    [side] de lado
    [left] desde la izquierda de quien la lleva
    [back] por detrás
    [peeled] con las capas apartadas
   *[front] de frente
 }
picture-caption = { $view ->
    [side] De lado.
    [left] Desde la izquierda de quien la lleva, donde se cierra.
    [back] Por detrás.
    [peeled] Con las capas apartadas.
   *[front] Una impresión de frente: los largos son exactos; cuánto se abre depende de la tela.
 }
# Bajo el pie, donde un modelo de la tela halla que un bajo amplio se abre y sube por encima de lo que debe tapar.
picture-shows = Abierta como en el dibujo, { PIECE($outer, form: "short") } termina unos { $lower } por encima de { PIECE($inner, form: "short") }; solo por los largos terminaría { $longer } por debajo. Si eso no debe asomar, corta de { $cut } de alto como máximo, en lugar de { $now }: { PIECE($inner, form: "short") }.

## En palabras

picture-alt = { $title } sobre un maniquí sencillo, { picture-view }: { $long } de largo, unos { $across } de ancho en el bajo. { picture-made } { picture-closed }
# Los bolsillos de parche y los tirantes.
picture-not-drawn = Sin dibujar: { PIECE($pieces, form: "bare") }.
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
    [ties] { $at-left ->
        [yes] Está abierta en el costado izquierdo y se ata ahí.
       *[no] Está abierta por detrás y se ata ahí.
    }
    [button] { $at-left ->
        [yes] Una abertura en el costado izquierdo se cierra con un botón.
       *[no] Una abertura por detrás se cierra con un botón.
    }
    [zip] { $at-left ->
        [yes] Una cremallera la cierra en el costado izquierdo.
       *[no] Una cremallera la cierra por detrás.
    }
    [slit] { $at-left ->
        [yes] Una abertura en el costado izquierdo la deja pasar por la cadera.
       *[no] Una abertura por detrás la deja pasar por la cadera.
    }
   *[band] La cintura conserva su medida.
 }
