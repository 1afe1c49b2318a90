### Fruncir una hilera por debajo de su borde y coserla sobre una línea que cruza una pieza, con una cabecilla por encima del pespunte.

headed-row-title = Cose { PIECE($row) } con cabecilla sobre { PIECE($on) }
headed-row-aim = { $cloth } de tela caben en { $length }: { $ratio } a 1.

headed-row-mark-ring = { $parts ->
    [8] Marca los octavos { EDGE($edge, case: "of") } por las dos caras, cada { $cloth-part }, y los de la línea, cada { $part }, las primeras marcas en { side-seam }.
   *[4] Marca los cuartos { EDGE($edge, case: "of") } por las dos caras, cada { $cloth-part }, y los de la línea, cada { $part }, las primeras marcas en { side-seam }.
 }
headed-row-mark-flat = { $parts ->
    [8] Marca los octavos { EDGE($edge, case: "of") } por las dos caras, cada { $cloth-part }, y los de la línea, cada { $part }.
   *[4] Marca los cuartos { EDGE($edge, case: "of") } por las dos caras, cada { $cloth-part }, y los de la línea, cada { $part }.
 }

headed-row-first-row = Haz una pasada { $heading } por debajo { EDGE($edge, case: "of") }. { rows-runs }
headed-row-second-row = Cose una segunda pasada del mismo modo, { $apart } por debajo de la primera.
    .check = Las dos pasadas corren paralelas.
headed-row-pull = { $parts ->
    [8] En el otro extremo, tira a la vez de los dos hilos de la canilla hasta que cada octavo mida { $part }. Enrolla también estos cabos en un alfiler.
   *[4] En el otro extremo, tira a la vez de los dos hilos de la canilla hasta que cada cuarto mida { $part }. Enrolla también estos cabos en un alfiler.
 }
    .check = La línea fruncida mide { $length }; la cabecilla queda suelta por encima.
    .tolerance = hasta { $ease } de menos se puede embeber
    .remedy = Si es más de { $ease } más corta, afloja los frunces. Si es demasiado larga, tira más.

headed-row-lay = Coloca { PIECE($row) } sobre { PIECE($on) }, con el derecho encima, la pasada superior sobre la línea y marca con marca. Prende ahí con alfileres, después cada { $spacing }.
headed-row-sew-ring = Cose por el derecho sobre las dos pasadas de fruncido, { $length } todo alrededor cada una, { $stitch }. Al terminar cada una, monta tres puntadas sobre el principio.
    .check = La cabecilla sobresale { $heading } por encima de la costura a todo lo largo.
    .tolerance = { $frill-off } de más o de menos
    .remedy = Descose donde el pespunte se haya salido de los frunces y vuelve a coserlo.
headed-row-sew-flat = Cose por el derecho sobre las dos pasadas de fruncido, { $length } cada una, { $stitch }, rematando en los dos extremos.
    .check = { headed-row-sew-ring.check }
    .tolerance = { headed-row-sew-ring.tolerance }
    .remedy = { headed-row-sew-ring.remedy }
