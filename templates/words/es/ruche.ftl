### Fruncir una tira ya rematada por una línea o por dos y coserla plana sobre otra pieza.
### $lines: una por el centro de la tira, o dos por dentro de sus bordes largos.

ruche-title = Cose { PIECE($strip) } sobre { PIECE($on) }
    .number = { $cloth } → { $length }
ruche-aim = { $cloth } de tira caben en { $length }: { $ratio } a 1.

## Marcar

# Una tira plana cuyos extremos no sujeta ninguna costura: los de la pieza ya están rematados.
ruche-ends = Dobla { $under } { PIECE($strip, case: "of") } hacia el revés en los dos extremos y cose los dobleces a { $beside } de ellos.
ruche-mark-ring = { $parts ->
    [8] Marca en octavos { PIECE($strip) }, cada { $cloth-part }, y { PIECE($on) }, cada { $part }, las primeras marcas en las costuras laterales.
   *[4] Marca en cuartos { PIECE($strip) }, cada { $cloth-part }, y { PIECE($on) }, cada { $part }, las primeras marcas en las costuras laterales.
 }
ruche-mark-flat = { $parts ->
    [8] Marca en octavos { PIECE($strip) }, cada { $cloth-part }, y { PIECE($on) }, cada { $part }.
   *[4] Marca en cuartos { PIECE($strip) }, cada { $cloth-part }, y { PIECE($on) }, cada { $part }.
 }
ruche-mark-line = Marca una línea en { PIECE($on) }, { line-place }.

## Fruncir

ruche-row = { $lines ->
    [two] Haz una pasada a { $inset } de cada borde largo { PIECE($strip, case: "of") }. { rows-runs }
   *[one] Haz una pasada por el centro { PIECE($strip, case: "of") }. { rows-runs }
 }
ruche-pull = { $parts ->
    [8] { $lines ->
        [two] En el otro extremo, tira de los hilos de la canilla de las dos pasadas hasta que cada octavo mida { $part }. Enrolla también estos cabos en un alfiler.
       *[one] En el otro extremo, tira del hilo de la canilla hasta que cada octavo mida { $part }. Enrolla también estos cabos en un alfiler.
    }
   *[4] { $lines ->
        [two] En el otro extremo, tira de los hilos de la canilla de las dos pasadas hasta que cada cuarto mida { $part }. Enrolla también estos cabos en un alfiler.
       *[one] En el otro extremo, tira del hilo de la canilla hasta que cada cuarto mida { $part }. Enrolla también estos cabos en un alfiler.
    }
 }
    .check = { $lines ->
        [two] { PIECE($strip, at: "start") } mide { $length } en las dos líneas y sus frunces son iguales.
       *[one] { PIECE($strip, at: "start") } mide { $length } y sus frunces son iguales.
     }
    .tolerance = hasta { $ease } de menos se puede embeber
    .remedy = Si es más de { $ease } más corta, afloja los frunces. Si es demasiado larga, tira más.

## Coser

ruche-level = Pon los extremos { PIECE($strip, case: "of") } a ras de los extremos { PIECE($on, case: "of") }.
ruche-lay = { $lines ->
    [two] Coloca { PIECE($strip) } sobre { PIECE($on) }, con el derecho encima y cada pasada sobre su línea, y { pin } en las marcas, después cada { $spacing }.
   *[one] Coloca { PIECE($strip) } sobre { PIECE($on) }, con el derecho encima y la pasada sobre su línea, y { pin } en las marcas, después cada { $spacing }.
 }
ruche-sew-ring = { $lines ->
    [two] Cose sobre cada pasada, { $length } todo alrededor, { $stitch }. Al terminar, monta tres puntadas sobre el principio.
   *[one] Cose sobre la pasada, { $length } todo alrededor, { $stitch }. Al terminar, monta tres puntadas sobre el principio.
 }
    .check = Los dos bordes { PIECE($strip, case: "of") } quedan sueltos e iguales.
    .remedy = Descose donde el pespunte se haya salido de la línea y vuelve a coserlo.
ruche-sew-flat = { $lines ->
    [two] Cose sobre cada pasada, { $length }, { $stitch }, rematando en los dos extremos.
   *[one] Cose sobre la pasada, { $length }, { $stitch }, rematando en los dos extremos.
 }
    .check = { ruche-sew-ring.check }
    .remedy = { ruche-sew-ring.remedy }
