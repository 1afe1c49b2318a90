### Poner una cinturilla doblada sobre el borde superior: encierra la costura y lleva dentro una goma o un cordón.
### $band es la cinturilla; $to el borde donde va; $seam la costura lateral de la falda, $band-seam la de la cinturilla.

band-casing-title = Monta { PIECE($band) }
    .number = { $depth }
band-casing-aim = { $holds ->
    [cord] El borde superior queda encerrado y la jareta para el cordón está libre por la abertura.
   *[elastic] El borde superior queda encerrado y la jareta para la goma está libre por la abertura.
 }
band-casing-aim-holes = El borde superior está encerrado y la jareta del cordón se abre por sus dos { cord-holes }.

# Se dicen solo dentro de los mensajes de abajo. El primero sigue a «los cuartos».
band-casing-top = { COUNT($to) ->
    [one] { EDGE($to, case: "of") }
   *[other] del borde superior de la falda
 }
band-casing-seam = { $band-seam ->
    [bright] la costura lateral del hilo de color vivo
   *[plain] la costura lateral
 }

## Marcas

band-casing-fold = Dobla un borde largo { PIECE($band, case: "of") } { $seam-width } hacia el revés y marca el doblez con la plancha.
# La mitad con los agujeros queda por fuera.
band-casing-fold-holes = Dobla hacia el revés { $seam-width } el borde largo { PIECE($band, case: "of") } que está más cerca de los { cord-holes } y plancha el doblez.
band-casing-mark = { $parts ->
    [8] Marca los octavos { band-casing-top } por las dos caras, cada { $part }, la primera marca en { side-seam }.{ marks-on-line }
   *[4] Marca los cuartos { band-casing-top } por las dos caras, cada { $part }, la primera marca en { side-seam }.{ marks-on-line }
 }
# Las marcas de los pliegues siguen ahí.
band-casing-mark-pleats = { $parts ->
    [8] Marca los octavos { band-casing-top } por las dos caras, de otro color que los pliegues, cada { $part }, la primera marca en { side-seam }.{ marks-on-line }
   *[4] Marca los cuartos { band-casing-top } por las dos caras, de otro color que los pliegues, cada { $part }, la primera marca en { side-seam }.{ marks-on-line }
 }
band-casing-mark-band = Marca del mismo modo el borde sin doblar { PIECE($band, case: "of") }, la primera marca en { band-casing-seam }.
# Lo que salió distinto de lo previsto: el borde superior, $top, y la cinturilla, $length, no miden lo mismo.
band-casing-mark-band-own = { $parts ->
    [8] Marca los octavos del borde sin doblar { PIECE($band, case: "of") }, de su propia longitud, cada { $part }, la primera marca en { band-casing-seam }.
   *[4] Marca los cuartos del borde sin doblar { PIECE($band, case: "of") }, de su propia longitud, cada { $part }, la primera marca en { band-casing-seam }.
 }
# El borde superior lleva marcas de un paso anterior.
band-casing-mark-band-alone = { $parts ->
    [8] Marca los octavos del borde sin doblar { PIECE($band, case: "of") }, cada { $part }, la primera marca en { band-casing-seam }. El borde superior ya tiene sus marcas.
   *[4] Marca los cuartos del borde sin doblar { PIECE($band, case: "of") }, cada { $part }, la primera marca en { band-casing-seam }. El borde superior ya tiene sus marcas.
 }

## Colocar

band-casing-turn = Pon la falda del revés, con el borde superior hacia arriba.
band-casing-label = Coloca la etiqueta por dentro, sobre { PIECE($inner) } junto a { side-seam }, con el texto a la vista y un extremo a ras del borde superior: la costura de la cinturilla sujeta ese extremo. { pin-start } la etiqueta ahí.
# Qué cara de la falda queda por dentro: el revés de su única capa o de la más interior, ...
band-casing-slip = Pasa { PIECE($band) } por encima, con el revés hacia fuera: el derecho de la cinturilla contra el revés { PIECE($inner, case: "of") }.
    .check = El borde sin doblar está a ras del borde superior y el doblez planchado cuelga hacia abajo.
# ... el derecho de un forro que se lleva hacia las piernas, ...
band-casing-slip-lining = Pasa { PIECE($band) } por encima, con el revés hacia fuera: el derecho de la cinturilla contra el derecho { PIECE($inner, case: "of") }, que ahora queda por fuera.
    .check = { band-casing-slip.check }
# ... o una tela de dos caras iguales.
band-casing-slip-either = Pasa { PIECE($band) } por encima, con el revés hacia fuera: el derecho de la cinturilla contra la cara interior { PIECE($inner, case: "of") }.
    .check = { band-casing-slip.check }
band-casing-front = Gira la cinturilla sobre la falda hasta que el punto medio entre los dos { cord-holes } quede en la marca que es el centro del delantero.
band-casing-pin = { pin-start } { band-casing-seam } de la cinturilla en la primera marca, después las demás marcas y después cada { $spacing }.
    .check = { $alike ->
        [yes] La cinturilla queda sin ningún pliegue; los dos bordes miden { $length }.
       *[no] La cinturilla mide { $length } y el borde superior { $top }; lo que sobra queda repartido entre las marcas, sin ningún pliegue.
     }
    .tolerance = { $off } de más o de menos
    .remedy = Reparte la diferencia entre las marcas. Si es mayor, vuelve a coser la costura lateral de la cinturilla a la medida.

## Coser y doblar por encima

band-casing-sew = { $gathered ->
    [yes] Gira la labor para que el fruncido quede encima; así coses desde dentro del aro. Cose a { $seam-width } del borde, { $stitch }, { $length } todo alrededor; al terminar, monta tres puntadas sobre el principio.
   *[no] Cose a { $seam-width } del borde, { $stitch }, { $length } todo alrededor; al terminar, monta tres puntadas sobre el principio.
 }
    .check = Todas las capas han quedado sujetas.
    .remedy = Vuelve a coser donde se haya escapado una capa, { $past } más allá por cada lado.
band-casing-fold-up = Pon la falda del derecho. Sube la cinturilla, apartándola de la falda, con todo el margen dentro, y plancha la costura.
band-casing-cover = Lleva el borde doblado por encima hacia fuera hasta que cubra la línea de costura y la sobrepase { $cover }, y { pin } todo alrededor.
    .check = La cinturilla tiene { $depth } de alto todo alrededor.
    .tolerance = { $fold-off } de más o de menos
    .remedy = Desplaza el doblez hasta que cubra la línea de costura en todas partes. Si la cinturilla sigue siendo más baja, se cortó demasiado estrecha: corta otra de { $cut-depth } de alto.
band-casing-gap = Marca una abertura de { $gap }: de { $beside } a { $gap-end } a la derecha de { band-casing-seam } de la cinturilla, vista por el derecho. Traza una raya en cada extremo.
band-casing-gap-front = Marca una abertura de { $gap } en el centro del delantero, a { $quarter } de { band-casing-seam } de la cinturilla, la mitad a cada lado. Traza una raya en cada extremo.
band-casing-topstitch = Con el derecho encima, pespuntea a { $edge-stitch } del doblez inferior, de una raya de la abertura a la otra dando toda la vuelta, { $stitch }, { $stitched }. Remata en los dos extremos.
    .check = La abertura está libre y la jareta tiene { $channel } de ancho por dentro.
    .tolerance = { $fold-off } de más o de menos
    .remedy = Descose lo que cierre la abertura.
band-casing-topstitch-round = Con el derecho encima, pespuntea a { $edge-stitch } del doblez inferior todo alrededor, { $stitch }, { $stitched }; monta el final tres puntadas sobre el principio.
    .check = El doblez queda sujeto todo alrededor y la jareta tiene { $channel } de ancho por dentro.
    .tolerance = { $fold-off } de más o de menos
    .remedy = Descose donde el pespunte se salió del doblez y vuelve a coser ese tramo.
