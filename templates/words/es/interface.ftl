### Poner entretela en una pieza antes de coserla.
### $cover: toda la pieza, o la mitad exterior de una cinturilla doblada.

interface-title = Pon entretela en { PIECE($piece) }
interface-aim = La entretela ({ $interfacing }) da cuerpo { PIECE($piece, case: "to") } y acaba antes de las costuras.
interface-cut = { $pieced ->
    [yes] Corta la entretela ({ $interfacing }) en tiras de { $deep } de ancho que queden a tope en { $long }.
   *[no] Corta la entretela ({ $interfacing }) de { $long } de largo y { $deep } de ancho.
 }
# $dots: lo que la tela aguanta, sin pasar de lo que pide la cola.
interface-iron = { $dots ->
    [1] Pon la plancha a un punto, 110 °C, sin vapor: { PIECE($piece) } no aguanta más. Pega primero un trozo de entretela en un retal. Lo que dice su hoja va antes que todo esto.
   *[2] Pon la plancha a dos puntos, 150 °C, con su vapor apagado: el paño húmedo da el que hace falta. Pega primero un trozo de entretela en un retal. Lo que dice su hoja va antes que todo esto.
 }
    .check = El trozo no se despega y la tela no ha cambiado.
    .remedy = Presiona más tiempo; si no ayuda, pide una entretela que vaya con esta tela.
interface-crease = Dobla { PIECE($piece) } por la mitad a lo largo, revés con revés, { $half } de alto. Plancha un poco el doblez y ábrelo: la marca es el doblez que vendrá.
interface-lay = { $cover ->
    [half] Pon { PIECE($piece) } con el revés hacia arriba. Coloca la entretela en una mitad, su borde largo junto a la marca del doblez, la cola, que es áspera, hacia abajo; los márgenes quedan libres.
   *[whole] Pon { PIECE($piece) } con el revés hacia arriba. Coloca la entretela en el centro, la cola, que es áspera, hacia abajo; los márgenes quedan libres.
 }
    .check = Los márgenes están libres todo alrededor.
    .remedy = Recorta la entretela hasta que acabe antes de las líneas de costura.
interface-fuse = { $dots ->
    [1] Pon encima un paño de planchar seco. Presiona cada sitio { $seconds } segundos sin deslizar, montando un poco sobre el anterior. Déjala plana hasta que se enfríe.
   *[2] Pon encima un paño de planchar húmedo. Presiona cada sitio { $seconds } segundos sin deslizar, montando un poco sobre el anterior. Déjala plana hasta que se enfríe.
 }
    .check = Al doblarla no se levanta ninguna esquina.
    .remedy = Presiona ese sitio otra vez, un poco más.
