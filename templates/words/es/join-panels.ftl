### Coser los ejemplares de una pieza lado con lado en un largo plano.

join-panels-title = Une los paños { PIECE($piece, case: "of") }
    .number = { $seam-width }
join-panels-aim = { $panels } paños se convierten en un largo plano; sus dos lados exteriores quedan abiertos.
join-panels-lay = Pon cada paño sobre el siguiente, { faces-together } y arriba con arriba, pero no el último sobre el primero. { pin-start } a lo largo de los lados, { $length } cada uno.
    .check = Todos los bordes de arriba quedan en el mismo extremo, y sobran dos lados: los exteriores.
    .remedy = Saca el que está al revés y dale la vuelta.
join-panels-sew = Cose { $length }, a { $seam-width } del borde, { $stitch }, con unas puntadas atrás en los dos extremos. Dobla los dos márgenes hacia el mismo lado con la uña, en cada costura en el mismo sentido.
join-panels-measure = Extiende { PIECE($piece) } y mide el borde inferior de lado a lado: { $whole }.
    .check = Mide { $whole }, con los dos lados exteriores aún sin dobladillo.
    .tolerance = { $off } de más o de menos
    .remedy = Si es largo, vuelve a coser una costura un poco más ancha; si es corto, descose una y cósela más estrecha.
