### Ribetear con cinta un borde sin rematar o el margen de una costura.
### $edge: el borde, o las piezas de la costura; $tape: el nombre de la cinta.

bound-edge-title-edge = Ribetea { EDGE($edge) }
    .number = { $length }
bound-edge-title-margin = Ribetea el margen de costura { PIECE($edge, case: "of") }
    .number = { $length }
bound-edge-aim = El borde sin rematar queda encerrado en la cinta: ni se deshilacha ni rasca.

## Doblar la cinta

bound-edge-cut = Corta { $cut } de cinta ({ $tape }).
bound-edge-fold = Dobla la cinta por la mitad a lo largo, una mitad un pelo más ancha que la otra, y marca el doblez con la plancha.

## Ponerla a caballo del borde

bound-edge-pin-edge-ring = Empieza junto a { side-seam }. { pin-start } la cinta a caballo { EDGE($edge, case: "of") }, el borde sin rematar contra su doblez, la mitad más ancha por el revés.
    .check = La cinta cubre { $half } por los dos lados.
    .tolerance = { $off } de más o de menos
    .remedy = Vuelve a meter el borde en el doblez donde se haya salido.
bound-edge-pin-edge-flat = { pin-start } la cinta a caballo { EDGE($edge, case: "of") }, el borde sin rematar contra su doblez, la mitad más ancha por el revés.
    .check = { bound-edge-pin-edge-ring.check }
    .tolerance = { bound-edge-pin-edge-ring.tolerance }
    .remedy = { bound-edge-pin-edge-ring.remedy }
bound-edge-pin-margin = { pin-start } la cinta a caballo del margen de costura { PIECE($edge, case: "of") }, el borde sin rematar contra su doblez, la mitad más ancha debajo.
    .check = { bound-edge-pin-edge-ring.check }
    .tolerance = { bound-edge-pin-edge-ring.tolerance }
    .remedy = { bound-edge-pin-edge-ring.remedy }
bound-edge-lap = Remete { $half-lap } del final de la cinta y monta el doblez { $half-lap } sobre el principio.
# Los extremos de la tela ya están rematados.
bound-edge-ends = Remete { $under } de cinta en los dos extremos, los dobleces a ras de los extremos de la tela.

## Coser

bound-edge-sew-ring = Con la mitad más estrecha encima, cose a { $edge-stitch } de su borde libre, { $length } todo alrededor, { $stitch }. Al terminar, monta tres puntadas sobre el principio.
    .check = El pespunte ha sujetado también la mitad de abajo.
    .remedy = Descose donde se haya escapado, tira hacia fuera de la mitad de abajo y vuelve a coser.
bound-edge-sew-flat = Con la mitad más estrecha encima, cose a { $edge-stitch } de su borde libre, { $length }, { $stitch }, rematando en los dos extremos.
    .check = { bound-edge-sew-ring.check }
    .remedy = { bound-edge-sew-ring.remedy }
