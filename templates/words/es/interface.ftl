### Poner entretela en una pieza antes de coserla.
### $cover: toda la pieza, o la mitad exterior de una cinturilla doblada.

interface-title = Pon entretela en { PIECE($piece) }
interface-aim = La entretela ({ $interfacing }) da cuerpo { PIECE($piece, case: "to") } y acaba antes de las costuras.
interface-cut = { $pieced ->
    [yes] Corta la entretela ({ $interfacing }) en tiras de { $deep } de ancho que queden a tope en { $long }.
   *[no] Corta la entretela ({ $interfacing }) de { $long } de largo y { $deep } de ancho.
 }
interface-lay = { $cover ->
    [half] Pon { PIECE($piece) } con el revés hacia arriba. Coloca la entretela en una mitad, su borde largo junto al doblez que vendrá, la cola, que es áspera, hacia abajo; los márgenes quedan libres.
   *[whole] Pon { PIECE($piece) } con el revés hacia arriba. Coloca la entretela en el centro, la cola, que es áspera, hacia abajo; los márgenes quedan libres.
 }
    .check = Los márgenes están libres todo alrededor.
    .remedy = Recorta la entretela hasta que acabe antes de las líneas de costura.
interface-fuse = Pon encima un paño húmedo. Presiona cada sitio { $seconds } segundos sin deslizar, montando un poco sobre el anterior, como dice la hoja de la entretela. Déjala plana hasta que se enfríe.
    .check = Al doblarla no se levanta ninguna esquina.
    .remedy = Presiona ese sitio otra vez, un poco más.
