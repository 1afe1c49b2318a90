### Poner una cremallera en la abertura de una costura.
### $way: centred, lapped o invisible. $from-edge: lo que mide la abertura desde el borde como está ahora; $opening: una vez acabada.

zip-title = Pon una cremallera en { PIECE($pieces) }
    .number = { $opening }
zip-aim = { $way ->
    [centred] La abertura de { $opening } se cierra con la cremallera ({ $zip }) en el centro.
    [lapped] La abertura de { $opening } se cierra con la cremallera ({ $zip }) bajo una tapeta de { $lap }.
   *[invisible] La abertura de { $opening } se cierra con la cremallera ({ $zip }) y parece la costura.
 }
zip-shorten = Cierra la cremallera. A { $opening } de su extremo superior haz a mano una presilla, diez puntadas apretadas sobre las dos filas de dientes, y corta la cremallera { $below } más abajo.

## Preparar

zip-baste = Hilvana la abertura, es decir, ciérrala de momento por la línea de la costura, a { $margin } de los bordes, { $from-edge } desde arriba, con puntadas de { $basting } mm y sin rematar.
zip-press-open = Abre los dos márgenes con la plancha, a lo largo de la abertura y un ancho de mano más abajo.
# La abertura puede estar en el costado o detrás.
zip-choose = Decide qué lado queda debajo: en el costado izquierdo, la espalda; en el centro de la espalda, la mitad derecha.
# Se dice solo dentro de otra frase: qué nesga es, donde llevan número.
zip-number = { $numbered ->
    [yes] { " " }(n.º { $next })
   *[no] { "" }
 }
zip-fold-out = { $place ->
    [side] Con el revés hacia arriba, pasa el margen del lado de la espalda{ zip-number } por encima del hilván, hacia el delantero. Dóblalo sobre sí mismo de modo que su doblez sobresalga { $near } del hilván, y plánchalo.
    [back] Con el revés hacia arriba, pasa el margen de la mitad derecha por encima del hilván, hacia la mitad izquierda. Dóblalo sobre sí mismo de modo que su doblez sobresalga { $near } del hilván, y plánchalo.
   *[either] Con el revés hacia arriba, pasa el margen del lado de debajo por encima del hilván, hacia el otro. Dóblalo sobre sí mismo de modo que su doblez sobresalga { $near } del hilván, y plánchalo.
 }
    .check = El doblez sobresale { $near } del hilván a lo largo de toda la abertura, con el derecho hacia arriba, y se pierde por debajo.
    .remedy = Despliega el margen y vuelve a plancharlo.
zip-press-coils = Abre la cremallera. Con la punta de la plancha, plancha las dos cintas por dentro para que los dientes queden de pie.
    .check = La aguja baja justo al lado de los dientes.
    .remedy = Vuelve a planchar sin detenerte sobre los dientes.

## Coser

zip-lay-centred = { $bare ->
    [yes] Pon la labor con el interior hacia arriba. Coloca la cremallera cerrada boca abajo sobre los márgenes, los dientes sobre el hilván y el tope superior a { $stop } del borde cortado. Prende las dos cintas con alfileres.
   *[no] Pon la labor con el interior hacia arriba. Coloca la cremallera cerrada boca abajo sobre los márgenes, los dientes sobre el hilván y el tope superior a ras del borde. Prende las dos cintas con alfileres.
 }
# Se dice solo dentro de otras frases.
zip-below-stop = { $cut-off ->
    [yes] { $below } por debajo de la presilla
   *[no] { $below } por debajo del tope inferior, que se nota a través de la tela
 }
zip-turn-corner = Deja la aguja clavada en la tela, levanta el prensatelas, gira la labor y bájalo.
zip-foot-on = Pon el prensatelas para cremalleras al lado de la aguja.
    .check = Gira el volante a mano una vuelta entera: la aguja pasa sin tocar el prensatelas.
zip-foot-off = Quita el prensatelas para cremalleras y vuelve a poner el normal.
    .check = { zip-foot-on.check }
zip-sew-centred = Dale la vuelta, con el derecho hacia arriba. Con el prensatelas para cremalleras empieza en el borde superior y cose a { $beside } de la costura, hacia abajo, hasta { zip-below-stop }. { zip-turn-corner }
zip-sew-round = Cose a lo ancho, gira otra vez igual y sube por el otro lado hasta el borde superior, { $stitch }.
    .check = Los dos pespuntes van a { $beside } de la costura y por dentro sujetan la cinta a todo lo largo.
    .tolerance = { $hair-off } de más o de menos
    .remedy = Descose ese pespunte y vuelve a coserlo por una línea de jaboncillo.
zip-stop-at = { $bare ->
    [yes] a { $stop } del borde cortado
   *[no] a ras del borde
 }
zip-fold-work = { $place ->
    [side] Vuelve la labor del revés. Dóblala por la costura, el delantero sobre la espalda, derecho con derecho.
    [back] Vuelve la labor del revés. Dóblala por la costura, la mitad izquierda sobre la mitad derecha, derecho con derecho.
   *[either] Vuelve la labor del revés. Dóblala por la costura, el lado que monta encima sobre el de debajo, derecho con derecho.
 }
    .check = El doblez del margen sobresale de la costura, con el derecho hacia arriba.
    .remedy = Si queda tapado, da la vuelta a la labor.
zip-lay-beneath = Desliza la cremallera cerrada, con el derecho hacia arriba, bajo el doblez que sobresale: los dientes pegados al doblez y el tope superior { zip-stop-at }. Préndela con alfileres.
zip-sew-beneath = Con el prensatelas para cremalleras empieza en el borde superior y cose a { $near-fold } del doblez hasta su final, { $from-edge }, { $stitch }. Bajo la aguja solo están el doblez y esta cinta; el resto de la labor queda más allá de la costura.
    .check = El cursor pasa libre junto al doblez.
    .remedy = Descose y separa un poco el doblez de los dientes.
zip-lay-lap = Extiende la labor con el derecho hacia arriba y la cremallera cerrada. Prende la otra cinta debajo de la tapeta.
zip-sew-lap = En la tapeta empieza en el borde superior y cose a { $lap } de la costura, hacia abajo, hasta { zip-below-stop }. { zip-turn-corner } Cose a lo ancho hasta la costura, { $stitch }.
    .check = La tapeta cubre los dientes a todo lo largo y su pespunte va recto.
    .tolerance = { $hair-off } de más o de menos
    .remedy = Descose ese pespunte y vuelve a coserlo por una línea de jaboncillo.
zip-unpick = Quita el hilván de la abertura por el derecho y saca los hilos.
zip-lay-invisible = { $bare ->
    [yes] Coloca una mitad de la cremallera abierta boca abajo sobre el derecho de su margen, los dientes en la línea de la costura, el tope superior a { $stop } del borde cortado. Prende la cinta al margen.
   *[no] Coloca una mitad de la cremallera abierta boca abajo sobre el derecho de su margen, los dientes en la línea de la costura, el tope superior a ras del borde. Prende la cinta al margen.
 }
zip-lay-other = Coloca igual la otra mitad en el otro margen y préndela con alfileres.
    .check = La cremallera no está torcida: cerrada, queda plana por dentro.
    .remedy = Quita una mitad y dale la vuelta.
zip-sew-invisible = Con el prensatelas para cremalleras pegado a los dientes cose cada mitad a su margen, desde arriba hasta el final de la abertura, { $from-edge }, { $stitch }, rematando en los dos extremos.
    .check = Cerrada, por el derecho no se ve la cinta; unos { $tail } de cremallera quedan sueltos abajo.
    .remedy = Vuelve a coser un hilo más cerca de los dientes.
zip-close-foot = Cierra la cremallera, aparta su extremo suelto y cose la costura hasta los dos pespuntes con el prensatelas para cremalleras.
    .check = No queda ningún agujero al final de la abertura.
    .remedy = Da tres puntadas a mano por encima.
zip-try = Abre y cierra la cremallera tres veces.
    .check = Corre sin trabas y queda plana.
    .remedy = Donde se engancha, un pespunte está demasiado cerca de los dientes: descóselo ahí y cóselo más lejos.
