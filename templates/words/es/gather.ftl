### Fruncir un borde a una longitud más corta.

gather-title = Frunce { EDGE($edge) }
    .number = { $cloth } → { $short }
gather-aim = { $cloth } de tela caben en { $short }: { $ratio } a 1.

## Marcas

# $marked: las capas ya llevan sus marcas.
gather-hold-layers = { $layers ->
    [2] { $marked ->
        [yes] Sujeta juntas las dos capas, con los bordes a ras, y trabaja a través de ambas. Las marcas de las capas son las de los frunces.
       *[no] Sujeta juntas las dos capas, con los bordes a ras, y trabaja a través de ambas.
    }
   *[other] { $marked ->
        [yes] Sujeta juntas las { $layers } capas, con los bordes a ras, y trabaja a través de todas. Las marcas de las capas son las de los frunces.
       *[no] Sujeta juntas las { $layers } capas, con los bordes a ras, y trabaja a través de todas.
    }
 }

# El borde es un aro: se empieza a doblar por su costura lateral.
gather-fold-ring = { $parts ->
    [8] Dobla { EDGE($edge) } por la mitad tres veces, desde { side-seam }. Marca los dobleces por las dos caras: cada { $cloth-part } de tela lisa.
   *[4] Dobla { EDGE($edge) } por la mitad dos veces, desde { side-seam }. Marca los dobleces por las dos caras: cada { $cloth-part } de tela lisa.
 }
gather-fold-flat = { $parts ->
    [8] Dobla { EDGE($edge) } por la mitad tres veces, extremo con extremo. Marca los dobleces por las dos caras: cada { $cloth-part } de tela lisa.
   *[4] Dobla { EDGE($edge) } por la mitad dos veces, extremo con extremo. Marca los dobleces por las dos caras: cada { $cloth-part } de tela lisa.
 }
# Detrás va más tela que delante, de modo que las marcas iguales de un paso anterior no sirven.
gather-old-marks = Borra las marcas que ya tenga { EDGE($edge) }.
# El tul se marca con lazadas de hilo; una parte de las capas es de tul, o todas.
gather-old-loops = { $seam ->
    [bright] Corta y quita las lazadas de hilo que marcan { EDGE($edge) }. El hilo de color vivo de la costura lateral se queda.
   *[plain] Corta y quita las lazadas de hilo que marcan { EDGE($edge) }.
 }
gather-old-both = { $seam ->
    [bright] Borra las marcas que ya tenga { EDGE($edge) } y corta las lazadas de hilo que marcan el tul. El hilo de color vivo de la costura lateral se queda.
   *[plain] Borra las marcas que ya tenga { EDGE($edge) } y corta las lazadas de hilo que marcan el tul.
 }
gather-mark-ring = Marca { EDGE($edge) } por las dos caras a { $marks } desde { side-seam }, medido en la tela lisa. Esa costura va al centro de la espalda.
    .check = { $behind } de la tela quedan en la mitad de atrás, con la costura en el centro de la espalda.
    .remedy = Si es la parte de delante la que tiene más vuelo, se midió desde el sitio equivocado: vuelve a medir desde la costura.
gather-mark-flat = Marca { EDGE($edge) } por las dos caras a { $marks } desde el extremo izquierdo, medido en la tela lisa.
    .check = { $behind } de la tela quedan en la mitad de atrás, con los extremos en el centro de la espalda.
    .remedy = Si es la parte de delante la que tiene más vuelo, se midió desde el sitio equivocado: vuelve a medir desde los extremos.

## Con el plisador

gather-set-by-swatch = Monta el plisador, con un pliegue en cada puntada, la profundidad en la marca { $mark } y el largo de puntada de tus muestras: según ellas, así la tela se reduce a 1/{ $ratio }.
gather-set-half = Monta el plisador. Ponlo con un pliegue en cada puntada y la profundidad en la marca 6: así la tela se reduce más o menos a la mitad.
gather-set-begin = Monta el plisador, con un pliegue en cada puntada, y empieza con la profundidad en la marca 6, que reduce la tela más o menos a la mitad; aquí debe reducirla a 1/{ $ratio }.
gather-try = Pruébalo en una tira sobrante de { $strip } de largo.
    .check = Sale de { $strip-short } de largo.
    .tolerance = { $strip-off }
    .remedy = Si sale más larga, aumenta un poco la profundidad; si sale más corta, redúcela un poco. Vuelve a probar.
gather-pleat = Frunce con el plisador { EDGE($edge) }, a { $first-row } del borde cortado, con el derecho encima, { $cloth } de un tirón.

## Con dos pasadas

gather-thread-needle = Enhebra una aguja de coser a mano con hilo doble para punto de bastilla de unos { $hand-stitch }.
gather-set-machine = { rows-set-machine }
gather-first-row = Haz una pasada a { $first-row } del borde cortado. { rows-runs }
gather-second-row = Haz una segunda pasada del mismo modo, a { $second-row } del borde cortado, a { $apart } de la primera.
    .check = Las pasadas no se cruzan.
gather-wind-tails = { $in-runs ->
    [yes] En un extremo de cada tramo, clava un alfiler atravesado y enrolla en él los cabos de hilo en forma de ocho.
   *[no] En un extremo de las pasadas, clava un alfiler atravesado y enrolla en él los cabos de hilo en forma de ocho.
 }
gather-knot-tails = { $in-runs ->
    [yes] En un extremo de cada tramo, anuda juntos los dos cabos superiores por su cara y los dos inferiores por la suya. Córtalos a { $knot }.
   *[no] En un extremo de las pasadas, anuda juntos los dos cabos superiores por su cara y los dos inferiores por la suya. Córtalos a { $knot }.
 }
    .check = Con un tirón suave desde el otro extremo no se meten.
    .remedy = Anúdalos otra vez.
gather-pull-machine = { $parts ->
    [8] En el otro extremo, tira a la vez de los dos hilos de la canilla hasta que cada octavo mida { $short-part } a lo largo de las pasadas. Enrolla estos cabos en un alfiler.
   *[4] En el otro extremo, tira a la vez de los dos hilos de la canilla hasta que cada cuarto mida { $short-part } a lo largo de las pasadas. Enrolla estos cabos en un alfiler.
 }
gather-pull-hand = { $parts ->
    [8] En el otro extremo, tira a la vez de los dos hilos hasta que cada octavo mida { $short-part } a lo largo de las pasadas. Enrolla estos cabos en un alfiler.
   *[4] En el otro extremo, tira a la vez de los dos hilos hasta que cada cuarto mida { $short-part } a lo largo de las pasadas. Enrolla estos cabos en un alfiler.
 }

## Medir y repartir

gather-measure-ring = Mide el borde fruncido todo alrededor: { $short }.
    .check = { gather-measure.check }
    .tolerance = { gather-measure.tolerance }
    .remedy = { gather-measure.remedy }
gather-measure-flat = Mide el borde fruncido: { $short }.
    .check = { gather-measure.check }
    .tolerance = { gather-measure.tolerance }
    .remedy = { gather-measure.remedy }
# Se dicen solo como partes de los dos de arriba.
gather-measure =
    .check = { $has-target ->
        [yes] { $at-cut ->
            [yes] Mide { $short }, la longitud { EDGE($target, case: "of") }.
           *[no] Mide { $short }, la longitud { EDGE($target, case: "of") } por la línea de costura.
        }
       *[no] Mide { $short }.
     }
    .tolerance = { $has-target ->
        [yes] hasta { $ease } de menos en total: el borde liso se embebe al prenderlo
       *[no] hasta { $ease } de menos en total
     }
    .remedy = Si es más de { $ease } más corto, afloja los frunces. Si es demasiado largo, frunce más.
gather-spread = { $parts ->
    [8] Reparte los frunces por igual con los dedos, octavo por octavo.
   *[4] Reparte los frunces por igual con los dedos, cuarto por cuarto.
 }
gather-knot-pulled = Quita los alfileres que sujetan los cabos de hilo y anuda estos cabos como en los otros extremos: los superiores entre sí por una cara y los inferiores por la otra. Córtalos a { $knot }.
    .check = El borde sigue midiendo { $short }.
    .remedy = Si se ha corrido un nudo, vuelve a apretar el fruncido y anuda más cerca de la tela.
gather-set-back = { rows-set-back }
