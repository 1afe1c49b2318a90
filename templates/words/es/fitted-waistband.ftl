### Coser una cinturilla lisa con cierre a un borde superior abierto.
### $band es la cinturilla; $to el borde donde va.

fitted-waistband-title = Monta { PIECE($band) }
    .number = { $waist }
fitted-waistband-aim = La cintura se cierra a { $waist } y se abre para pasar la cadera.
# La cierran cintas de atar: se cosen en el paso siguiente.
fitted-waistband-aim-ties = { PIECE($band, at: "start") } mide { $length } y está lista para sus cintas de atar.

## Marcas

# Se dice solo dentro de los mensajes de aquí. $underlap: un extremo de la cinturilla sobresale por debajo del otro.
fitted-waistband-from-ends = { $underlap ->
    [yes] a { $seam-width } del extremo que queda encima y a { $beneath } del otro
   *[no] a { $seam-width } de los dos extremos
 }
# Qué extremo queda encima, según dónde está la abertura.
fitted-waistband-on-top = { $place ->
    [side] Encima queda el extremo del delantero.
    [back] Encima queda el extremo de la mitad izquierda.
   *[either] Encima queda el extremo del delantero en el costado izquierdo, el de la mitad izquierda en el centro de la espalda.
 }
fitted-waistband-stands-out = { $underlap ->
    [yes] Sobresale { $seam-width } en el extremo que queda encima y { $beneath } en el otro.
   *[no] Sobresale { $seam-width } en los dos extremos.
 }
# $stiffened: la entretela está en la mitad que se cose.
fitted-waistband-fold = { $stiffened ->
    [yes] Dobla el borde largo { PIECE($band, case: "of") } de la mitad sin entretela { $seam-width } hacia el revés y marca el doblez con la plancha.
   *[no] Dobla un borde largo { PIECE($band, case: "of") } { $seam-width } hacia el revés y marca el doblez con la plancha.
 }
fitted-waistband-hold = Sujeta { PIECE($band) } contra { EDGE($to) } como se va a coser, el borde sin doblar a ras, y prende una etiqueta en el extremo que quedará encima. { fitted-waistband-on-top }
fitted-waistband-mark = { $parts ->
    [8] Marca los octavos { EDGE($to, case: "of") } de un extremo al otro, cada { $part }.{ marks-on-line }
   *[4] Marca los cuartos { EDGE($to, case: "of") } de un extremo al otro, cada { $part }.{ marks-on-line }
 }
# Las marcas de los pliegues siguen ahí.
fitted-waistband-mark-pleats = { $parts ->
    [8] Marca los octavos { EDGE($to, case: "of") } de un extremo al otro, cada { $part }, de otro color que los pliegues.{ marks-on-line }
   *[4] Marca los cuartos { EDGE($to, case: "of") } de un extremo al otro, cada { $part }, de otro color que los pliegues.{ marks-on-line }
 }
fitted-waistband-mark-band = Marca el borde sin doblar { PIECE($band, case: "of") } { fitted-waistband-from-ends } y, entre ellos, cada { $part }.
# El borde superior lleva marcas de un paso anterior.
fitted-waistband-mark-band-alone = Marca el borde sin doblar { PIECE($band, case: "of") } { fitted-waistband-from-ends } y, entre ellos, cada { $part }. El borde superior ya tiene sus marcas.

## Coser

fitted-waistband-snip = El borde cortado { PIECE($skirt, case: "of") } es { $shorter } más corto que la línea de costura. Da piquetes en el margen cada { $snips }, con una profundidad de { $snip }, para que se abra.
    .check = Ningún piquete queda a menos de { $clear } de la línea de costura.
    .remedy = Donde uno llegue demasiado lejos, cose ahí otro tanto más adentro.
fitted-waistband-lay = { $face ->
    [right] Coloca el borde sin doblar { PIECE($band, case: "of") } sobre { EDGE($to) }, derecho con derecho, marca con marca. { fitted-waistband-stands-out } { pin-start } a lo largo.
   *[other] Coloca el borde sin doblar { PIECE($band, case: "of") }, con el derecho debajo, por fuera { EDGE($to, case: "of") }, marca con marca. { fitted-waistband-stands-out } { pin-start } a lo largo.
 }
    .check = En la línea de costura hay { $length } entre los extremos.
    .tolerance = { $edge-off } de más o de menos
    .remedy = { $folds ->
        [gathers] Si es demasiado largo, frunce más. Si es demasiado corto, afloja los frunces.
        [pleats] Si es demasiado largo, haz algunos pliegues un poco más profundos. Si es demasiado corto, un poco menos.
       *[flat] Reparte la diferencia entre las marcas.
     }
fitted-waistband-sew = Cose a { $seam-width } del borde, { $length }, { $stitch }, rematando en los dos extremos.
    .check = Todas las capas han quedado sujetas.
    .remedy = Vuelve a coser donde se haya escapado una capa, { $past } más allá por cada lado.
fitted-waistband-press = Sube { PIECE($band) } y plancha la costura, con todo el margen hacia la cinturilla.

## Cerrar los extremos y doblar por encima

fitted-waistband-half = Dobla { PIECE($band) } por la mitad a lo largo, derecho con derecho, con el doblez planchado a ras de la línea de costura.
fitted-waistband-ends = Baja la falda para apartarla. En cada extremo cose del doblez a la línea de costura, a { $seam-width } del borde, justo sin pillar la falda.
    .check = Los dos extremos están a ras de los bordes de la abertura.
    .remedy = Descose el extremo y vuelve a coserlo en su sitio.
fitted-waistband-end-on-top = Baja la falda para apartarla. En el extremo de encima cose del doblez a la línea de costura, a { $seam-width } del borde, justo sin pillar la falda.
    .check = El extremo está a ras de la abertura.
    .remedy = Descose el extremo y vuelve a coserlo en su sitio.
fitted-waistband-end-beneath = En el extremo de debajo despliega el margen planchado, con los dos bordes largos a ras. Cose del doblez hacia abajo, a { $seam-width } del borde, gira en la línea de costura con la aguja clavada y cose por ella hasta la falda.
    .check = El extremo sobresale { $overlap } de la abertura y su borde inferior queda cosido.
    .remedy = Descose el extremo y vuelve a coserlo en su sitio.
fitted-waistband-turn = Corta en sesgo el margen de las esquinas, a { $corner } del pespunte. Vuelve { PIECE($band) } del derecho, saca las esquinas y plánchala.
    .check = Tiene { $depth } de alto.
    .tolerance = { $fold-off } de más o de menos
    .remedy = Vuelve a planchar el doblez donde se desvíe.
fitted-waistband-label = Mete un extremo de la etiqueta { $seam-width } bajo el borde doblado, en el centro de la cinturilla, con el texto a la vista, y { pin } la etiqueta ahí.
fitted-waistband-inside = Coloca el borde doblado por dentro sobre la línea de costura y { pin } a lo largo. Con el interior encima, cose a { $edge-stitch } del doblez, { $length }, { $stitch }.
    .check = El doblez ha quedado sujeto a todo lo largo.
    .remedy = Coge a mano lo que se haya escapado.

## El cierre

# $half: la mitad del cruce.
fitted-waistband-buttonhole = Marca un ojal en el extremo que va encima: por el centro de la cinturilla, empezando a { $half } del extremo hacia dentro, tan largo como el ancho del botón más su grueso. Cóselo como hace los ojales tu máquina; prueba antes uno en un retal. Después vuelve a poner la máquina en puntada recta.
fitted-waistband-cut = Abre el ojal con un descosedor, con un alfiler atravesado en cada uno de sus extremos.
fitted-waistband-button = Cruza los extremos { $overlap }. Marca un punto a través del ojal, a { $half } del extremo de debajo, y cose ahí el botón.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = Vuelve a coser el botón en su sitio.
fitted-waistband-hook = Cose el gancho por dentro del extremo que va encima, a { $hook-in } de su borde. Cose la barra por fuera del extremo de debajo, a { $bar-in } de su borde.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = Vuelve a coser la barra en su sitio.
fitted-waistband-snaps = Cruza los extremos { $overlap }. Cose las mitades planas de dos automáticos por dentro del extremo que va encima, a { $snap-in } de su borde, y las otras mitades donde coincidan en el extremo de debajo.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = Vuelve a coser en su sitio las mitades de debajo.
fitted-waistband-ties = Deja los dos extremos como están: en ellos se cosen las cintas de atar.
# Se dicen solo como partes de los de arriba.
fitted-waistband-closed =
    .check = Cerrada con un cruce de { $overlap }, la cinturilla mide { $waist }.
    .tolerance = { $waist-off } de más o de menos
