### Poner un bolsillo en el hueco de una costura.
### $bag: el fondo del bolsillo, dos piezas; $on: la pieza cuya costura tiene el hueco.

side-pocket-title = Pon un bolsillo en la costura { PIECE($on, case: "of") }
side-pocket-aim = El hueco de { $gap } da a un fondo de { $wide } de ancho y { $high } de alto.

side-pocket-mark = Marca el hueco en los dos márgenes de la costura, a { $begins } y a { $ends } del borde superior, y { $above } por encima del hueco, dónde empieza el fondo.
side-pocket-lay = Coloca una unidad { PIECE($bag, case: "of") } sobre cada margen, derecho con derecho, su borde vertical a ras del borde del margen y su parte de arriba { $above } por encima del hueco. Prende las dos con alfileres.
    .check = Las dos están a la misma altura y miran hacia fuera de la costura.
    .tolerance = { $close-off } de más o de menos
    .remedy = Mueve una antes de coser.
side-pocket-sew = Cose cada una solo a su margen, a { $seam-width } del borde, { $high }, { $stitch }, rematando en los dos extremos.
    .check = La tela exterior no ha quedado pillada.
    .remedy = Descose donde se haya pillado y vuelve a coser ese tramo.
side-pocket-turn = Vuelve las dos por encima de sus costuras y plánchalas juntas hacia delante, derecho con derecho.
side-pocket-close = Prende una sobre otra y cóselas a { $seam-width } del borde, desde la costura a lo largo de arriba, bajando por el lado y a lo largo de abajo hasta la costura, { $around }, { $stitch }.
    .check = La mano llega a las dos esquinas y nada se cae.
    .remedy = Cose otra pasada donde la primera se haya salido de la tela.
side-pocket-bars = Con el derecho hacia arriba haz una presilla de { $bar } que cruce la costura en los dos extremos del hueco, cuatro pasadas una sobre otra.
