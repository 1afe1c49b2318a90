### Coser dos cintas de atar y fijarlas a los extremos de una cinturilla.

tie-ends-title = Cose cintas de atar { PIECE($band, case: "to") }
    .number = { $tie-long }
tie-ends-aim = La cintura se cierra con cintas de atar de { $tie-long }.

## Cada cinta de atar

tie-ends-fold = Dobla cada cinta por la mitad a lo largo, derecho con derecho, y { pin } los bordes.
tie-ends-sew = Cose a { $seam-width } de los bordes, { $stitch }, a lo largo de la cinta y de lado a lado de un extremo, { $around }. Deja abierto el otro extremo.
tie-ends-turn = Recorta las esquinas, vuelve la cinta del derecho con un palito de punta roma y plánchala.
    .check = Tiene { $depth } de ancho.
    .tolerance = { $wide-off } de más o de menos
    .remedy = Saca bien la costura con los dedos y vuelve a planchar.
tie-ends-turn-under = Mete { $under } del extremo abierto hacia dentro de la cinta y plánchalo.

## En la cinturilla

tie-ends-lay = Coloca { $lap } de ese extremo por dentro de un extremo { PIECE($band, case: "of") } y { pin }.
    .check = La cinta sobresale { $tie-long } de la cinturilla.
    .tolerance = { $length-off } de más o de menos
    .remedy = Córrela antes de coser.
tie-ends-stitch = Cose alrededor del solape un rectángulo de { $lap } por { $depth }, y crúzalo de esquina a esquina.
    .check = Da un tirón fuerte: nada cede.
    .remedy = Vuelve a coser sobre el rectángulo.
