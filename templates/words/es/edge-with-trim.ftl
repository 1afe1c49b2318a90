### Doblar un borde hacia el derecho y coser un adorno sobre el borde sin rematar.
### $edge: el borde que se remata; $trim: el nombre del adorno.

edge-with-trim-title = Cose el adorno ({ $trim }) al borde { PIECE($edge, case: "of") }
    .number = { $turn }
edge-with-trim-aim = { COUNT($edge) ->
    [one] { EDGE($edge, at: "start") } queda rematado y no puede deshilacharse.
   *[other] { EDGE($edge, at: "start") } quedan rematados y no pueden deshilacharse.
 }

## Antes de coser

# El borde está sin rematar y su tela se deshilacha.
edge-with-trim-hide = Coloca el adorno ({ $trim }) sobre el borde sin rematar de un retal.
    .check = El borde sin rematar no se transparenta.
    .remedy = Si se ve, como bajo un encaje calado, antes sobrehíla { EDGE($edge) } en zigzag, de 3 mm de ancho y 2 mm de largo, y vuelve a poner la puntada recta: los hilos sueltos salen por los agujeros.

## Colocar y doblar

edge-with-trim-begin = Pon la labor con el derecho encima. Dobla los primeros { $stretch }: { EDGE($edge) }, { $turn } hacia el derecho.
edge-with-trim-begin-ring = Empieza en { side-seam }: coloca el extremo sin rematar del adorno ({ $trim }) a lo largo de este doblez, también con el derecho encima y su borde exterior a ras.
    .check = Si el adorno ({ $trim }) tiene un borde ondulado, este queda hacia fuera y el borde recto hacia dentro.
edge-with-trim-begin-flat = Empieza en un extremo: coloca el adorno ({ $trim }) a lo largo de este doblez, también con el derecho encima, con su borde exterior a ras del doblez y su extremo sin rematar a ras del extremo de la tela.
    .check = { edge-with-trim-begin-ring.check }
# Los extremos de la tela ya están rematados: los del adorno se remeten.
edge-with-trim-begin-folded = Remete { $under } del extremo del adorno ({ $trim }). Empieza en un extremo: coloca el adorno a lo largo de este doblez, también con el derecho encima, con su borde exterior a ras y su extremo remetido a ras del extremo de la tela.
    .check = { edge-with-trim-begin-ring.check }
edge-with-trim-fold = Sigue doblando { EDGE($edge) } { $turn } hacia el derecho por debajo del adorno ({ $trim }), en tramos de { $stretch } a medida que coses.
    .check = El borde exterior del adorno ({ $trim }) está a ras del doblez.

## Coser el borde exterior del adorno

edge-with-trim-sew-ring = Cose a { $row } del doblez, { $stitch }, rematando al principio. Para { $stretch } antes de volver al principio, con la aguja clavada.
    .check = El borde sin rematar queda tapado por el adorno en todas partes.
    .remedy = Donde asome, descose ese tramo, dobla un poco más y vuelve a coserlo.
edge-with-trim-sew-flat = Cose a { $row } del doblez, { $stitch }, { $length } en total, rematando en los dos extremos. Corta el adorno ({ $trim }) a ras del extremo de la tela.
    .check = { edge-with-trim-sew-ring.check }
    .remedy = { edge-with-trim-sew-ring.remedy }
edge-with-trim-sew-folded = Cose a { $row } del doblez, { $stitch }, rematando al principio. Para { $stretch } antes del final, con la aguja clavada.
    .check = { edge-with-trim-sew-ring.check }
    .remedy = { edge-with-trim-sew-ring.remedy }

## Rematar los extremos del adorno

edge-with-trim-cut = Corta el adorno ({ $trim }) { $overlap } más allá de su principio.
edge-with-trim-lap = Remete { $half } del extremo cortado y monta el doblez { $half } sobre el principio.
    .check = El doblez está recto de lado a lado y no se ve ningún extremo sin rematar.
    .remedy = Si no alcanza, descose el ancho de una mano y vuelve a colocar el adorno tirando menos.
edge-with-trim-close = Sigue cosiendo hasta el doblez y remata: { $length } en total.
    .check = La unión del adorno está en { side-seam }.
edge-with-trim-end-folded = Corta el adorno ({ $trim }) { $under } más allá del extremo de la tela y remete ese sobrante. Sigue cosiendo hasta el doblez y remata: { $length } en total.
    .check = El doblez está a ras del extremo de la tela y no se ve ningún extremo sin rematar.
    .remedy = Si no alcanza, descose el ancho de una mano y vuelve a colocar el adorno tirando menos.

## Coser el borde interior de un adorno ancho

edge-with-trim-second-row-ring = Haz un segundo pespunte a { $below } del borde interior del adorno ({ $trim }), { $stitch }, { $length }. Al terminar, monta tres puntadas sobre el principio.
edge-with-trim-second-row-flat = Haz un segundo pespunte a { $below } del borde interior del adorno ({ $trim }), { $stitch }, { $length }, rematando en los dos extremos.
edge-with-trim-sew-lap = Cose el extremo remetido de lado a lado del adorno ({ $trim }), a { $below } de su doblez, rematando en los dos extremos.
edge-with-trim-sew-ends = Cose los dos extremos remetidos de lado a lado del adorno ({ $trim }), a { $below } de sus dobleces, rematando en los dos extremos.

## Coser el adorno a lo largo del borde sin rematar y después doblar los dos juntos

# El revés está encima y el derecho del adorno también: al doblar, el adorno se ve.
edge-with-trim-along-ring = Pon la labor con el revés encima. Empieza en { side-seam }: coloca el adorno ({ $trim }) a lo largo { EDGE($edge, case: "of") }, con el derecho encima. Su borde exterior queda a ras del borde sin rematar.
    .check = Si el adorno ({ $trim }) tiene un borde ondulado, este queda en el lado opuesto al borde sin rematar.
edge-with-trim-along-flat = Pon la labor con el revés encima. Empieza en un extremo: coloca el adorno ({ $trim }) a lo largo { EDGE($edge, case: "of") }, con el derecho encima. Su borde exterior queda a ras del borde sin rematar, y su extremo, a ras del extremo de la tela.
    .check = { edge-with-trim-along-ring.check }
edge-with-trim-along-folded = Pon la labor con el revés encima. Remete { $under } del extremo del adorno ({ $trim }). Empieza en un extremo: coloca el adorno a lo largo { EDGE($edge, case: "of") }, con el derecho encima. Su borde exterior queda a ras del borde sin rematar, y su doblez, a ras del extremo de la tela.
    .check = { edge-with-trim-along-ring.check }
edge-with-trim-along-sew-ring = Cose a { $row } del borde sin rematar, { $stitch }, rematando al principio. Para { $stretch } antes del final, con la aguja clavada.
    .check = { edge-with-trim-along-sew-flat.check }
    .remedy = { edge-with-trim-along-sew-flat.remedy }
edge-with-trim-along-sew-flat = Cose a { $row } del borde sin rematar, { $stitch }, { $length } en total, rematando en los dos extremos. Corta el adorno ({ $trim }) a ras del extremo de la tela.
    .check = El borde del adorno ({ $trim }) está a ras del borde sin rematar en toda su longitud, y ninguno de los dos está estirado.
    .remedy = Donde se hayan corrido, descose ese tramo y vuelve a coserlo.
# Varios iguales: el adorno pasa de uno al siguiente.
edge-with-trim-along-sew-chain = Cose a { $row } del borde sin rematar, { $stitch }, { $length } en cada uno. Al final no cortes ni el adorno ({ $trim }) ni los hilos: coloca el siguiente justo detrás y sigue cosiendo.
    .check = { edge-with-trim-along-sew-flat.check }
    .remedy = { edge-with-trim-along-sew-flat.remedy }
edge-with-trim-apart = Separa los { $copies } de la cadena cortando el adorno ({ $trim }) a ras de los extremos de la tela.
edge-with-trim-turn-both = Dobla juntos el adorno ({ $trim }) y la tela { $turn } hacia el derecho, en tramos de { $stretch } a medida que coses.
    .check = El borde sin rematar queda dentro, entre la tela y el adorno ({ $trim }). El primer pespunte no se ve por el revés.
    .remedy = Donde el pespunte asome en el doblez, dobla un poco más.
edge-with-trim-topstitch-ring = Con el derecho encima, pespuntea a { $below } del borde superior del adorno ({ $trim }), { $stitch }, { $length }. Al terminar, monta tres puntadas sobre el principio.
    .check = Cada puntada sujeta el adorno ({ $trim }) y la tela.
    .remedy = Donde no haya cogido el adorno ({ $trim }), vuelve a coser ese tramo.
edge-with-trim-topstitch-flat = Con el derecho encima, pespuntea a { $below } del borde superior del adorno ({ $trim }), { $stitch }, { $length }, rematando en los dos extremos.
    .check = { edge-with-trim-topstitch-ring.check }
    .remedy = { edge-with-trim-topstitch-ring.remedy }
