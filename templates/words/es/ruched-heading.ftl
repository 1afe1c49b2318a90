### Fruncir un volante por debajo de su borde, de modo que quede una cabecilla por encima de las pasadas, y coserlo por ellas.

ruched-heading-title = Cose { PIECE($flounce) } con una cabecilla por encima de la costura
    .number = { $cloth } → { $length }
ruched-heading-aim = { $cloth } de tela caben en { $length }: { $ratio } a 1.

## Marcar

ruched-heading-mark-ring = { $parts ->
    [8] Marca los octavos { EDGE($edge, case: "of") } por las dos caras, cada { $cloth-part }, la primera marca en { side-seam }.
   *[4] Marca los cuartos { EDGE($edge, case: "of") } por las dos caras, cada { $cloth-part }, la primera marca en { side-seam }.
 }
ruched-heading-mark-flat = { $parts ->
    [8] Marca los octavos { EDGE($edge, case: "of") } por las dos caras, cada { $cloth-part }.
   *[4] Marca los cuartos { EDGE($edge, case: "of") } por las dos caras, cada { $cloth-part }.
 }
ruched-heading-mark-line = Marca una línea { $lap } por encima { EDGE($to, case: "of") }, por el derecho, a todo lo largo.

## Fruncir

ruched-heading-first-row = Haz una pasada { $heading } por debajo { EDGE($edge, case: "of") }. { rows-runs }
ruched-heading-second-row = Cose una segunda pasada del mismo modo, { $apart } por debajo de la primera.
    .check = Las dos pasadas corren paralelas.
ruched-heading-pull = { $parts ->
    [8] En el otro extremo, tira a la vez de los dos hilos de la canilla hasta que cada octavo mida { $part }. Enrolla también estos cabos en un alfiler.
   *[4] En el otro extremo, tira a la vez de los dos hilos de la canilla hasta que cada cuarto mida { $part }. Enrolla también estos cabos en un alfiler.
 }
    .check = La línea fruncida mide { $length }; la cabecilla queda suelta por encima.
    .tolerance = hasta { $ease } de menos se puede embeber
    .remedy = Si es más de { $ease } más corta, afloja los frunces. Si es demasiado larga, tira más.

## Coser

ruched-heading-lay = Coloca { PIECE($flounce) } sobre el derecho { PIECE($to, case: "of") }, con el derecho encima, la pasada superior sobre la línea y marca con marca. { pin-start } en las marcas, después cada { $spacing }.
ruched-heading-sew-ring = Cose por el derecho sobre las dos pasadas de fruncido, { $length } todo alrededor cada una, { $stitch }. Al terminar cada una, monta tres puntadas sobre el principio.
    .check = La cabecilla sobresale { $heading } por encima de la costura a todo lo largo.
    .tolerance = { $frill-off } de más o de menos
    .remedy = Descose donde el pespunte se haya salido de los frunces y vuelve a coserlo.
ruched-heading-sew-flat = Cose por el derecho sobre las dos pasadas de fruncido, { $length } cada una, { $stitch }, rematando en los dos extremos.
    .check = { ruched-heading-sew-ring.check }
    .tolerance = { ruched-heading-sew-ring.tolerance }
    .remedy = { ruched-heading-sew-ring.remedy }
