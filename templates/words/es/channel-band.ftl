### Doblar por la mitad una cinturilla cerrada y pespuntear junto al doblez una jareta para la goma, antes de coserla.
### $band es la cinturilla; $stack sus dos bordes sin rematar, que se cosen como uno.

channel-band-title = Cose la jareta { PIECE($band, case: "of") }
channel-band-aim = { PIECE($band, at: "start") } queda doblada por la mitad, con una jareta de { $channel } a lo largo del doblez.

channel-band-fold = Abre con la plancha la costura vertical que cerró el aro { PIECE($band, case: "of") }. Dobla la cinturilla por la mitad a lo largo, revés con revés, con los dos bordes cortados a ras, y marca el doblez con la plancha.
    .check = Del doblez a los bordes cortados hay { $depth } todo alrededor.
    .tolerance = { $off } de más o de menos
    .remedy = Ábrela con la plancha y vuelve a doblarla desde los bordes cortados.
channel-band-edge-stitch = Pespuntea a { $edge-stitch } del doblez, { $stitch }, { $length } todo alrededor. Al terminar, monta tres puntadas sobre el principio.
    .check = El doblez está marcado y el pespunte lo sigue sin ondas.
    .remedy = Descose la onda y vuelve a coserla sin tirar de la cinturilla.
channel-band-row = Haz del mismo modo un segundo pespunte a { $row } del doblez.
    .check = Entre los dos pespuntes la jareta tiene { $channel } de ancho todo alrededor: la goma queda plana dentro.
    .tolerance = { $off } de más o de menos
    .remedy = Donde sea más estrecha, descose el segundo pespunte y vuelve a hacerlo.
