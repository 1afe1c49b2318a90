### Pasar una goma por una jareta y unir sus extremos en un aro.
### $band es la cinturilla, o la pieza cuyo borde se dobló.

insert-elastic-title = Pasa la goma
    .number = { $loop }
insert-elastic-aim = Un aro de goma de { $loop } recoge { $casing } de jareta a la cintura.

## Probar y cortar

insert-elastic-try = Antes de cortar, cierra la goma con un imperdible en un aro de { $loop }. Póntela en la cintura, siéntate con ella y toma aire.
    .check = Se sujeta y no se clava. Caben dos dedos por debajo.
    .remedy = Ciérrala más larga o más corta hasta que vaya bien, y usa esa medida en lugar de { $loop } de aquí en adelante.
insert-elastic-write = Apunta la longitud del aro que usas, con la fecha.
insert-elastic-cut = Corta la goma a { $cut }: son { $loop } más { $lap } para el solape.
    .check = Mide { $cut } cuando está floja junto a la cinta métrica.
    .remedy = Si es demasiado larga, corta lo que sobra. Si es demasiado corta, corta otra: no estires esta.
insert-elastic-ends = Cose por encima a mano los dos extremos cortados, puntada junto a puntada, con el hilo alrededor del borde cada vez, para que no se deshilachen.
insert-elastic-line = Traza una raya recta de lado a lado, a { $lap } de un extremo.
    .check = De la raya al otro extremo hay { $loop }, sin estirar.
    .tolerance = { $lap-off } de más o de menos
    .remedy = Traza la raya en su sitio y tacha la primera.
insert-elastic-cross = Traza una cruz en la misma cara, a { $cross } del otro extremo: sigue a la vista cuando los extremos están solapados.
# La jareta tiene varios canales, una goma en cada uno.
insert-elastic-order = Pasa una goma por cada uno de los { $channels } canales, primero por el del doblez. { $opened ->
    [seam] Cada una entra por su propia abertura en la costura.
   *[row] Todas entran por la abertura y por las de encima, y todas sus puntas cuelgan fuera hasta que estén cosidas.
 }
    .check = En ningún canal hay dos.
## Cortada larga, probada en la prenda y acortada

insert-elastic-cut-long = Corta la goma a { $cut }: son { $loop }, más { $lap } para el solape y { $spare } para la prueba.
    .check = Mide { $cut } cuando está floja junto a la cinta métrica.
    .remedy = Si es demasiado corta, corta otra: no estires esta.
insert-elastic-pin-end = Deja colgando fuera de la abertura { $tail } de un extremo. Préndelo ahí { PIECE($band, case: "to") } con un imperdible para que no se meta dentro.
insert-elastic-thread-long = Sujeta un segundo imperdible o un pasacintas en el otro extremo y llévalo por la jareta dando toda la vuelta hasta la abertura. Ve empujando la tela hacia atrás sobre la goma.
    .check = La goma está plana todo alrededor.
    .remedy = Si está retorcida, retrocede el último tramo, el ancho de una mano, desenróscala y sigue.
insert-elastic-thread-long-band = Sujeta un segundo imperdible o un pasacintas en el otro extremo y llévalo por la jareta dando toda la vuelta hasta la abertura, entre el margen de costura y el exterior. Ve empujando la tela hacia atrás sobre la goma.
    .check = { insert-elastic-thread-long.check }
    .remedy = { insert-elastic-thread-long.remedy }
insert-elastic-lap-to-try = Quita los dos imperdibles, o el imperdible y el pasacintas, sin soltar los extremos. Solápalos hasta que el aro mida { $loop } y sujeta el solape con un imperdible cerrado.
insert-elastic-try-on = Primero cuenta los alfileres y busca los que hayan quedado; después ponte la prenda, siéntate con ella y coge aire.
    .check = Se sujeta y no se clava. Caben dos dedos por debajo.
    .remedy = Solapa menos o más hasta que vaya bien, y usa ese aro en lugar de { $loop } de aquí en adelante.
insert-elastic-mark-lap = Traza una raya en el extremo de debajo donde acaba el de encima, quítate la prenda y saca { $out } de los dos extremos por la abertura. Quita el imperdible del solape.
insert-elastic-shorten = El extremo de debajo sigue por debajo: córtalo a { $lap } de la raya, por el lado que quedaba bajo el extremo de encima.
    .check = Del borde cortado a la raya hay { $lap }.
    .tolerance = { $lap-off } de más o de menos
    .remedy = Si es demasiado largo, corta lo que sobra. Si es demasiado corto, solapa eso menos y cóselo dos veces.

# La jareta es plana, y después la cierra una costura. $half-lap: lo que queda en la costura en cada extremo.
insert-elastic-aim-flat = La goma recoge { $casing } de jareta a { $loop }; la costura sujeta sus extremos.
insert-elastic-cut-flat = Corta la goma a { $cut }: son { $loop }, más { $half-lap } en cada extremo para la costura.
    .check = { insert-elastic-cut.check }
    .remedy = { insert-elastic-cut.remedy }
insert-elastic-mark-flat = Traza una raya recta de lado a lado, a { $half-lap } de cada extremo.
    .check = De raya a raya hay { $loop }, sin estirar.
    .tolerance = { $lap-off } de más o de menos
    .remedy = Traza la raya en su sitio y tacha la primera.

## Por la jareta

insert-elastic-thread-flat = Prende un extremo de la goma a ras del borde cortado { PIECE($band, case: "of") }. Sujeta un imperdible o un pasacintas en el otro extremo y llévalo por la jareta hasta su otra boca. Ve empujando la tela hacia atrás sobre la goma, y prende también este extremo a ras de la tela.
    .check = La goma está plana en todas partes, y sus dos extremos quedan a ras de la tela.
    .remedy = Si está retorcida, retrocede el último tramo, el ancho de una mano, desenróscala y sigue.
insert-elastic-bar-flat = Cose en cada extremo dos filas de zigzag de lado a lado de la goma, entre la raya y el borde cortado, a través de todas las capas, y remata cada vez. Quita los alfileres.
    .check = Tira fuerte: nada cede. La costura irá sobre las rayas.
    .remedy = Vuelve a coser sobre las filas.
insert-elastic-spread-flat = Reparte el vuelo por la goma con los dedos.
    .check = Las dos mitades de la jareta miden lo mismo.
    .remedy = Empuja más hacia el lado más corto.


insert-elastic-tail = Deja colgando fuera de la abertura { $tail } del extremo de la raya. Préndelo ahí { PIECE($band, case: "to") } con un alfiler para que no se meta dentro.
insert-elastic-thread = Sujeta un imperdible o un pasacintas en el extremo de la cruz y llévalo por la jareta dando toda la vuelta hasta la abertura. Ve empujando la tela hacia atrás sobre la goma.
    .check = La goma está plana todo alrededor, y la raya y la cruz están en la misma cara.
    .remedy = Si está retorcida, retrocede el último tramo, el ancho de una mano, desenróscala y sigue.
# La jareta es una cinturilla cosida, con el margen de su costura dentro.
insert-elastic-thread-band = Sujeta un imperdible o un pasacintas en el extremo de la cruz y llévalo por la jareta dando toda la vuelta hasta la abertura, entre el margen de costura y el exterior. Ve empujando la tela hacia atrás sobre la goma.
    .check = { insert-elastic-thread.check }
    .remedy = { insert-elastic-thread.remedy }
insert-elastic-pull-out = Quita el primer imperdible y saca { $out } de los dos extremos por la abertura. Quita también el otro imperdible o el pasacintas.

## El solape

insert-elastic-lap = Coloca el extremo de la cruz sobre el de la raya, las dos señales hacia arriba, con su borde cortado en la raya. Sujeta el solape con un imperdible cerrado.
    .check = El borde cortado está en la raya: así el solape es de { $lap } y el aro de { $loop } sin estirar.
    .tolerance = { $lap-off } de más o de menos
    .remedy = Abre el imperdible, corre el extremo hasta la raya y vuelve a cerrarlo.
# La goma se probó en la prenda: la raya marca hasta dónde se solapaban los extremos.
insert-elastic-lap-long = Coloca el extremo de encima sobre el de debajo como antes, con su borde cortado en la raya. Sujeta el solape con un imperdible cerrado.
    .check = El solape mide { $lap } y el aro, sin estirar, lo que apuntaste.
    .tolerance = { $lap-off } de más o de menos
    .remedy = Abre el imperdible, corre el extremo hasta la raya y vuelve a cerrarlo.
insert-elastic-sew = Quita el imperdible y sujeta el solape en su sitio. Cose dos pasadas de zigzag sobre el solape y después una a lo largo de cada uno de sus dos extremos, rematando cada vez.
    .check = Da un tirón fuerte: nada cede.
    .remedy = Vuelve a coser sobre el solape.
insert-elastic-slip-back = Deja que el solape vuelva a meterse en la jareta.
insert-elastic-stretch = Extiende la cintura, doblez con doblez. Estírala con las manos hasta que mida { $half-over } de ancho, que son { $over } de contorno, y deja que vuelva, tres veces. No la estires nunca más que eso.
    .check = El vuelo es igual todo alrededor.
    .remedy = Córrelo por la goma con los dedos.
# Cuando una guía no dice ninguna medida del cuerpo.
insert-elastic-stretch-over = Extiende la cintura, doblez con doblez. Estírala con las manos tanto como las caderas por las que pasa, y deja que vuelva, tres veces. No la estires nunca más que eso.
    .check = El vuelo es igual todo alrededor.
    .remedy = Córrelo por la goma con los dedos.
