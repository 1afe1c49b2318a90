### Coser una pieza y su forro juntos todo alrededor y volverlos del derecho.
### $outer: la pieza; $lining: su forro. Se vuelven por una abertura o por el borde superior.

bagged-lining-title = Forra { PIECE($outer) } y dale la vuelta
    .number = { $seam-width }
bagged-lining-aim-gap = Todos los bordes quedan encerrados entre la tela y el forro.
bagged-lining-aim-top = Todos los bordes menos el superior quedan encerrados entre la tela y el forro.

## Coser

bagged-lining-lay = Coloca { PIECE($outer) } y { PIECE($lining) } derecho con derecho, con los bordes a ras, y { pin } todo alrededor.
bagged-lining-mark = Marca una abertura de { $gap } en el centro del borde inferior: queda sin coser.
bagged-lining-sew-gap = Cose a { $seam-width } del borde, de un extremo de la abertura al otro dando toda la vuelta, { $length } en total, { $stitch }. Gira en cada esquina con la aguja clavada. Remata en los dos extremos.
    .check = Todas las esquinas están a escuadra y la abertura está libre.
    .remedy = Descose la esquina que haya quedado redonda hasta los dos lados rectos y vuelve a coserla.
bagged-lining-sew-top = Cose a { $seam-width } del borde, bajando por un lado, a lo largo del bajo y subiendo por el otro lado, { $length } en total, { $stitch }. Gira en las dos esquinas con la aguja clavada. Remata en los dos extremos y deja abierto todo el borde superior.
    .check = Las dos esquinas están a escuadra.
    .remedy = { bagged-lining-sew-gap.remedy }

## Dar la vuelta

bagged-lining-trim = Corta en diagonal cada esquina cosida, a { $corner } de las puntadas.
bagged-lining-turn-gap = Vuelve la labor del derecho por la abertura y saca las esquinas con un palito de punta roma.
bagged-lining-turn-top = Vuelve la labor del derecho por arriba y saca las esquinas con un palito de punta roma.
bagged-lining-roll = Haz rodar la costura entre los dedos hasta el borde y plánchala por el lado del forro, con el forro un pelo hacia dentro.
    .check = Mide { $wide } por { $deep }.
    .tolerance = { $off } de más o de menos
    .remedy = Vuélvela del revés; donde es pequeña, el margen de la costura es demasiado ancho; donde es grande, demasiado estrecho.
bagged-lining-close = Mete los márgenes de la abertura hacia dentro. Cierra a mano los { $gap } con puntada invisible.
    .check = Las puntadas no se ven.
    .remedy = Corta la puntada que se vea y vuelve a darla por dentro del doblez.
