### Abrir el borde superior con un corte ribeteado, para que la cintura no tenga que pasar por la cadera.
### $edge es el borde superior; $strip la tira que ribetea el corte.

placket-title = Abre { EDGE($edge) } con una abertura con tapeta
    .number = { $slit }
# La abertura se dejó en una costura: no se corta nada.
placket-title-seam = Ribetea la abertura { EDGE($edge, case: "of") } con una tapeta
    .number = { $slit }
placket-aim = La abertura de { $slit } deja pasar la cintura por la cadera; cruza { $overlap }.

## El corte

placket-mark = Marca una línea recta de { $slit } hacia abajo desde { EDGE($edge) }, en el centro de la espalda o en el lado izquierdo, a { $clear } o más de cualquier costura.
placket-stay = Con puntada de { $short } mm, haz un pespunte que refuerce el corte. Empieza en el borde superior a { $stay } de la línea y acércate cada vez más a ella, hasta acabar abajo en punta. Da una puntada a través de la punta y sube por el otro lado del mismo modo.
    .check = Arriba cada pespunte está a { $stay } de la línea; abajo se juntan en punta.
    .tolerance = { $stay-off } de más o de menos
    .remedy = Vuelve a coser ese lado junto al primer pespunte. Un pespunte demasiado cerca de la línea acaba cortado.
# La abertura sigue a través de una costura.
placket-fasten = A unos { $to-seam } del borde la línea cruza una costura. A los dos lados de la línea, a { $stay } de ella, cose tres puntadas hacia delante y hacia atrás sobre esa costura; si está cosida a mano, remata ahí sus hilos a mano.
    .check = Al tirar a ambos lados de la línea, la costura aguanta en los dos.
    .remedy = Remátala otra vez antes de cortar.
placket-cut = Corta por la línea hasta un hilo antes de la punta.
    .check = El corte acaba antes de las puntadas.
    .remedy = Si se ha cortado una puntada, cose otra punta justo por debajo.
# En una costura que se dejó abierta.
placket-clip = Al final de la abertura, da un corte recto en los dos márgenes hasta la última puntada de la costura. De ahí hacia arriba, recorta los dos márgenes a { $seam-width }.
    .check = Los cortes acaban un hilo antes de la puntada, y la costura de debajo está entera.
    .remedy = Si se ha cortado la puntada, vuelve a coser los últimos { $past } de la costura.

## La tira

placket-spread = Abre el corte en línea recta. Coloca debajo { PIECE($strip) }, derecho con derecho. En los dos extremos sus bordes están a ras; al final del corte, este queda { $in-at-foot } hacia dentro del borde { PIECE($strip, case: "of", form: "short") }. { pin-start }.
placket-sew = Con el corte encima, cose a { $seam-width } del borde { PIECE($strip, case: "of") }, justo al lado del pespunte que refuerza el corte, { $both-sides }, { $stitch }.
    .check = Al final del corte han quedado sujetos { $foot } y no hay ningún pliegue en la costura.
    .remedy = Descose { $past } al final, alísalo y vuelve a coserlo.
placket-spread-seam = Abre la abertura en línea recta. Coloca debajo { PIECE($strip) }, derecho con derecho, todos los bordes a ras y los dos extremos a ras del borde superior. { pin-start }.
placket-sew-seam = Con la abertura encima, cose a { $seam-width } de los bordes, sobre la línea de la costura, { $both-sides }, { $stitch }.
    .check = Al final el pespunte llega a la última puntada de la costura, sin ningún pliegue.
    .remedy = Descose { $past } al final, alísalo y vuelve a coserlo.
placket-press = Plancha el margen hacia { PIECE($strip) }.
placket-fold = Dobla con la plancha { $seam-width } de su borde libre hacia el revés. Dobla { PIECE($strip) } por encima de la costura hacia dentro, con el doblez sobre la línea de costura, y { pin }.
placket-stitch = Con el interior encima, cose a { $edge-stitch } de ese doblez, { $both-sides }.
    .check = { PIECE($strip, at: "start") } tiene { $overlap } de ancho a todo lo largo.
    .tolerance = { $wide-off } de más o de menos
    .remedy = Corre el doblez sobre la línea de costura y vuelve a coserlo.

## El cruce

placket-turn-in = Vuelve { PIECE($strip) } hacia dentro por el lado que va encima; en el lado izquierdo es el delantero. En el lado de debajo sobresale { $overlap }. { pin-start } por arriba.
placket-foot = Dobla el corte derecho con derecho, de modo que las dos mitades { PIECE($strip, case: "of") } queden una sobre otra. Cose su final en diagonal, { $slant }, atravesando solo { PIECE($strip, form: "short") }.
    .check = Cerrada, los lados cruzan { $overlap }; abierta, el borde superior mide { $across }.
    .tolerance = { $across-off } de más o de menos
    .remedy = Absorbe la diferencia en los frunces o los pliegues, o en la costura más cercana.
