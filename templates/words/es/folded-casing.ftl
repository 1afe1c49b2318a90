### Doblar un borde en una jareta para goma o cordón y coserla, dejando una abertura.
### $edge es el borde que se dobla; $seam su costura lateral.

folded-casing-title = Dobla y cose la jareta
    .number = { $depth }
folded-casing-aim = { $flat ->
    [yes] { $holds ->
        [cord] La jareta para el cordón está abierta por los dos extremos.
       *[elastic] La jareta para la goma está abierta por los dos extremos.
     }
   *[no] { $holds ->
        [cord] La jareta para el cordón está libre por la abertura.
       *[elastic] La jareta para la goma está libre por la abertura.
     }
 }
folded-casing-aim-holes = La jareta del cordón se abre por sus dos { cord-holes }.

folded-casing-turn-under = Dobla { EDGE($edge) } { $under } hacia dentro { $flat ->
    [yes] de un extremo a otro
   *[no] todo alrededor
 } y marca el doblez con la plancha.
folded-casing-fold = Vuelve a doblarlo { $depth } hacia abajo, plancha y { pin } el doblez.
    .check = { folded-casing-folded.check }
    .tolerance = { folded-casing-folded.tolerance }
    .remedy = { folded-casing-folded.remedy }
# El borde no necesita un primer doblez: está rematado, o su tela no se deshilacha.
folded-casing-fold-once = Dobla { EDGE($edge) } { $depth } hacia dentro { $flat ->
    [yes] de un extremo a otro
   *[no] todo alrededor
 }, plancha y { pin } el doblez.
    .check = { folded-casing-folded.check }
    .tolerance = { folded-casing-folded.tolerance }
    .remedy = { folded-casing-folded.remedy }
# Se dicen solo como partes de los dos de arriba.
folded-casing-folded =
    .check = La jareta tiene { $depth } de alto en todas partes.
    .tolerance = nunca menos, hasta { $more } más
    .remedy = { $holds ->
        [cord] Desdóblala y vuelve a plancharla donde se desvíe.
       *[elastic] Desdóblala y vuelve a plancharla donde se desvíe: la goma se retuerce en una jareta desigual.
     }
folded-casing-gap = Marca una abertura de { $gap }: de { $beside } a { $gap-end } a la derecha de { side-seam }, vista por el interior. Traza una raya en cada extremo.
folded-casing-gap-front = Marca una abertura de { $gap } en el centro del delantero, a { $quarter } de { side-seam }, la mitad a cada lado. Traza una raya en cada extremo.
folded-casing-label = Mete un extremo de la etiqueta bajo el doblez inferior junto a { side-seam }, lejos de la abertura, con el texto a la vista, y { pin } la etiqueta ahí.
folded-casing-label-flat = Mete un extremo de la etiqueta bajo el doblez inferior cerca de un extremo de la jareta, con el texto a la vista, y { pin } la etiqueta ahí.
# El borde es plano: no hay abertura, la jareta está abierta por sus dos extremos.
folded-casing-sew-flat = Con el interior encima, cose { $edge-stitch } por encima del doblez inferior, de un extremo a otro, { $stitched }, { $stitch }. Remata en los dos extremos.
    .check = La jareta está abierta por los dos extremos y tiene { $channel } de ancho por dentro.
    .remedy = Descose lo que cierre un extremo.
folded-casing-sew = Con el interior encima, cose { $edge-stitch } por encima del doblez inferior, de una raya de la abertura a la otra dando toda la vuelta, { $stitched }, { $stitch }. Remata en los dos extremos.
    .check = La abertura está libre y la jareta tiene { $channel } de ancho por dentro.
    .remedy = Descose lo que cierre la abertura.
# La abertura se descose después en la costura lateral.
folded-casing-sew-round = Con el interior encima, cose { $edge-stitch } por encima del doblez inferior todo alrededor, { $stitched }, { $stitch }; monta el final tres puntadas sobre el principio.
    .check = El doblez queda sujeto todo alrededor y la jareta tiene { $channel } de ancho por dentro.
    .remedy = Descose donde el pespunte se salió del doblez y vuelve a coser ese tramo.
