### Coser una costura cuyos márgenes se doblan uno dentro de otro y se pespuntean planos.
### -ends: cierra en aro los extremos de $pieces. -edges: une $edge, que cuelga debajo, con $to, arriba.

flat-felled-seam-title-ends = Costura sobrecargada: la costura lateral { PIECE($pieces, case: "of") }
    .number = { $seam-width }
flat-felled-seam-title-edges = Costura sobrecargada: la costura entre { PIECE($pieces) }
    .number = { $seam-width }
flat-felled-seam-aim = La costura queda plana y no se ve ningún borde sin rematar por ningún lado.

## El primer pespunte, derecho con derecho

flat-felled-seam-lay-edges = Coloca { EDGE($edge) } contra { EDGE($to) }, derecho con derecho y a ras.
flat-felled-seam-turn = Pon { PIECE($edge) } del derecho y { PIECE($to) } del revés.
flat-felled-seam-slip = { COUNT($to) ->
    [one] Pasa { PIECE($to) }, cabeza abajo, por encima { PIECE($edge, case: "of") }, hasta que { EDGE($to, form: "short") } quede a ras { EDGE($edge, form: "short", case: "of") }.
   *[other] Pasa { PIECE($to) }, cabeza abajo, por encima { PIECE($edge, case: "of") }, hasta que { EDGE($to, form: "short") } queden a ras { EDGE($edge, form: "short", case: "of") }.
 }
    .check = Los derechos se miran y los dos bordes cortados están a ras.
flat-felled-seam-pin = { match-and-pin }
    .check = Los bordes están a ras.
    .tolerance = un borde { $off } más largo
    .remedy = Reparte la diferencia entre las marcas.
flat-felled-seam-sew-ring = Cose a { $seam-width } del borde, { $stitch }, { $length } todo alrededor. Al terminar, monta tres puntadas sobre el principio.
flat-felled-seam-sew-flat = Cose a { $seam-width } del borde, { $stitch }, { $length }, rematando en los dos extremos.

## El doblez

flat-felled-seam-open-ends = { $seams ->
    [one] Abre la labor, con el revés encima, y plancha los dos márgenes hacia el mismo lado.
   *[other] Abre la labor, con el revés encima, y plancha los dos márgenes hacia el mismo lado, en todas las costuras en el mismo sentido.
 }
flat-felled-seam-open-edges = Abre la labor, con el revés encima, y plancha los dos márgenes hacia arriba, sobre { PIECE($to) }.
flat-felled-seam-trim = Recorta a { $trim } solo el margen que queda debajo.
    .check = El margen de encima sigue teniendo { $seam-width } de ancho.
flat-felled-seam-fold = Remete { $under } del margen ancho alrededor del recortado y marca el doblez con la plancha.
# $flat-on: las piezas a las que se cose el doblez.
# Está adonde no llegan las pinzas.
flat-felled-seam-lay-flat = Tumba el doblez plano sobre { PIECE($flat-on) } y préndelo con alfileres.
    .check = El doblez tiene { $fell } de ancho a todo lo largo y no se ve ningún borde sin rematar.
    .tolerance = { $fold-off } de más o de menos
    .remedy = Donde se vea un borde sin rematar, recorta ahí el margen de debajo y vuelve a doblar.

## El segundo pespunte

flat-felled-seam-fell-ring = Con el doblez encima, cose a { $from-fold } de él a través de todas las capas, { $stitch }, { $length } todo alrededor. Al terminar, monta tres puntadas sobre el principio.
    .check = { flat-felled-seam-fell-flat.check }
    .remedy = { flat-felled-seam-fell-flat.remedy }
flat-felled-seam-fell-flat = Con el doblez encima, cose a { $from-fold } de él a través de todas las capas, { $stitch }, { $length }, rematando en los dos extremos.
    .check = Los dos pespuntes corren paralelos, a { $apart } uno de otro.
    .remedy = Descose donde el pespunte se haya salido del doblez y vuelve a coserlo.
