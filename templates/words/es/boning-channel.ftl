### Coser una jareta de cinta alrededor de una falda y meter en ella un aro de varilla.

boning-channel-title = Pon un aro { PIECE($piece, case: "to") }
    .number = { $around }
boning-channel-aim = Un aro de { $around } mantiene la falda ahuecada.

## Coser la jareta

boning-channel-mark = Traza una línea por dentro { PIECE($piece, case: "of") }, { line-place }, todo alrededor.
    .check = La línea guarda la distancia: un aro que se hunde se nota enseguida.
    .tolerance = { $line-off } de más o de menos
    .remedy = Vuelve a trazarla donde se hunda.
boning-channel-cut-tape = Corta { $tape-length } de cinta ({ $tape }): { $around } y { $fold } en cada extremo para remeter.
boning-channel-pin = { pin-start } la cinta ({ $tape }) a lo largo de la línea, con su borde inferior sobre ella, cada { $spacing }. Empieza en el centro de la espalda, con los dos extremos remetidos de modo que se toquen justo.
boning-channel-sew-lower = Cose a { $from-edge } del borde inferior de la cinta, { $around } todo alrededor, { $stitch }. Al terminar, monta tres puntadas sobre el principio.
boning-channel-sew-upper = Cose a { $from-edge } del borde superior, { $stitched }, { $stitch }, y deja una abertura de { $gap } donde se juntan los extremos. Remata a los dos lados de la abertura.
    .check = La jareta está libre todo alrededor; compruébalo pasando un pasacintas.
    .remedy = Descose lo que la cierre.

## Meter el aro

boning-channel-cut-bone = Corta la varilla ({ $bone }) a { $bone-length } y pon una contera o un ribete en los dos extremos.
    .check = No queda ningún extremo desnudo.
    .remedy = Vuelve a cubrirlo: un extremo desnudo acaba atravesando la tela.
boning-channel-push = Mete la varilla por la jareta y solapa sus extremos { $overlap }; ata bien fuerte el solape.
    .check = El aro mide { $around } de contorno y la tela se apoya en él sin pliegues.
    .tolerance = { $hoop-off } de más o de menos
    .remedy = Solapa más los extremos donde la tela tire, menos donde quede floja.
boning-channel-close = Cierra a mano la abertura de { $gap }.
