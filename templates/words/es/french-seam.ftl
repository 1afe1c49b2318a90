### Coser una costura dos veces, de modo que encierre sus bordes sin rematar.
### -ends: cierra en aro los extremos de $pieces. -edges: une $edge, que cuelga debajo, con $to, arriba.

french-seam-title-ends = Costura francesa: la costura lateral { PIECE($pieces, case: "of") }
    .number = { $first } + { $second }
french-seam-title-edges = Costura francesa: la costura entre { PIECE($pieces) }
    .number = { $first } + { $second }
french-seam-aim = Los bordes sin rematar quedan encerrados: de cada borde se usan { $first } y después { $second }.

## La primera costura, revés con revés

french-seam-lay-edges = Coloca { EDGE($edge) } contra { EDGE($to) }, revés con revés y a ras.
french-seam-turn = Pon { PIECE($edge) } del revés y { PIECE($to) } del derecho.
french-seam-slip = { COUNT($to) ->
    [one] Pasa { PIECE($to) }, cabeza abajo, por encima { PIECE($edge, case: "of") }, hasta que { EDGE($to, form: "short") } quede a ras { EDGE($edge, form: "short", case: "of") }.
   *[other] Pasa { PIECE($to) }, cabeza abajo, por encima { PIECE($edge, case: "of") }, hasta que { EDGE($to, form: "short") } queden a ras { EDGE($edge, form: "short", case: "of") }.
 }
    .check = Los reveses se miran y los dos bordes cortados están a ras.
french-seam-pin = { match-and-pin }
    .check = { $folds ->
        [gathers] Los bordes están a ras y los frunces no se amontonan en las marcas.
        [pleats] Los bordes están a ras y los pliegues no se amontonan en las marcas.
       *[flat] Los bordes están a ras.
     }
    .tolerance = { $folds ->
        [gathers] el borde fruncido, hasta { $ease } más corto en total
        [pleats] el borde plisado, hasta { $ease } más corto en total
       *[flat] un borde { $off } más largo
     }
    .remedy = { $folds ->
        [gathers] Si es más de { $ease } más corto, afloja los frunces.
        [pleats] Si es más de { $ease } más corto, afloja los pliegues.
       *[flat] Reparte la diferencia entre las marcas.
     }
french-seam-first-ring = { $folds ->
    [gathers] Con los frunces debajo, cose a { $first } del borde, { $stitch }, { $length } todo alrededor. Al terminar, monta tres puntadas sobre el principio.
    [pleats] Con los pliegues debajo, cose a { $first } del borde, { $stitch }, { $length } todo alrededor. Al terminar, monta tres puntadas sobre el principio.
   *[flat] Cose a { $first } del borde, { $stitch }, { $length } todo alrededor. Al terminar, monta tres puntadas sobre el principio.
 }
french-seam-first-flat = { $folds ->
    [gathers] Con los frunces debajo, cose a { $first } del borde, { $stitch }, { $length }, rematando en los dos extremos.
    [pleats] Con los pliegues debajo, cose a { $first } del borde, { $stitch }, { $length }, rematando en los dos extremos.
   *[flat] Cose a { $first } del borde, { $stitch }, { $length }, rematando en los dos extremos.
 }
french-seam-trim = Recorta los dos márgenes a { $trim }.
    .check = El margen tiene { $trim } de ancho a todo lo largo y no sobresale ningún hilo.
    .tolerance = sigue siendo más estrecho que { $second } en todas partes
    .remedy = Vuelve a recortar donde sea más ancho, o asomará en la costura terminada.

## La segunda costura, derecho con derecho

french-seam-press = Plancha los dos márgenes juntos hacia un lado. Dobla la labor derecho con derecho por la costura, plancha la costura en el doblez y { pin } a lo largo.
    .check = La primera costura está exactamente en el doblez.
    .remedy = Haz rodar la costura entre los dedos hasta que quede en el doblez y vuelve a planchar.
french-seam-second-ring = Cose a { $second } del doblez, { $stitch }, { $length } todo alrededor. Al terminar, monta tres puntadas sobre el principio.
    .check = { french-seam-second-flat.check }
    .remedy = { french-seam-second-flat.remedy }
french-seam-second-flat = Cose a { $second } del doblez, { $stitch }, { $length }, rematando en los dos extremos.
    .check = { $folds ->
        [gathers] Por el derecho no se ve nada del margen ni ninguna pasada de fruncido.
       *[other] Por el derecho no se ve nada del margen.
     }
    .remedy = { $folds ->
        [gathers] Recorta lo que asome; donde el margen haya quedado pillado por fuera, vuelve a coser ese tramo un poco más adentro. La pasada de fruncido que se vea se saca.
       *[other] Recorta lo que asome; donde el margen haya quedado pillado por fuera, vuelve a coser ese tramo un poco más adentro.
     }
french-seam-press-ends = { $seams ->
    [one] Abre la labor y plancha la costura terminada hacia un lado.
   *[other] Abre la labor y plancha las costuras terminadas, todas en el mismo sentido.
 }
french-seam-press-edges = Abre la labor y plancha la costura terminada hacia arriba, hacia { PIECE($to) }.
