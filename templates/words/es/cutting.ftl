### El corte: la lista de piezas y cada paso del rollo a la última pieza.
### $cloth: el nombre que la autora da a la tela. $mark: la etiqueta de una pieza, como 2b.

## La lista

cut-whole = entera
cut-joins = { $joins ->
    [one] { $joins } unión
   *[other] { $joins } uniones
 }
# De varios ejemplares juntos.
cut-joins-in-all = { $joins ->
    [one] { $joins } unión en total
   *[other] { $joins } uniones en total
 }
cut-finished = { $length } × { $depth }
cut-finished-folded = { $length } × { $depth }, doblada
cut-finished-gores = { $gores } nesgas, { $depth } de alto

## Antes del primer corte

cutting-title = Cortar: { $cloth }
    .number = { $length }
cutting-aim = { $sections ->
    [one] { $sections } corte de tela. Las medidas de corte incluyen todos los márgenes: no añadas nada.
   *[other] { $sections } cortes de tela. Las medidas de corte incluyen todos los márgenes: no añadas nada.
 }

# $trims: encajes, cintas y cordones que se cosen en los pasos.
cutting-wash-trims = Lava y seca lo siguiente tal como se lavará la prenda, antes de medir nada, porque un adorno que encoge después frunce su borde: { $trims }.
    .check = { COUNT($trims) ->
        [one] Está seco del todo y queda liso.
       *[other] Está todo bien seco y queda liso.
     }
    .remedy = Plancha con un punto y a través de un paño lo que se haya enroscado, y deja que se enfríe.
# Solo se dice dentro de los mensajes siguientes. Puntos de las etiquetas de cuidado: ISO 3758.
cutting-dots = { $dots ->
    [1] un punto, 110 °C, sin vapor
    [2] dos puntos, 150 °C
   *[3] tres puntos, 200 °C, con vapor
 }
cutting-wash = Lava y seca la tela ({ $cloth }) antes de cortar: encoge cerca de un { $shrinks }. Plánchala con { cutting-dots }.
    .check = Está seca del todo y queda lisa.
    .remedy = Sécala más tiempo y vuelve a plancharla a lo largo.
# No se indica cuánto encoge, y se sabe que su fibra encoge.
cutting-wash-unknown = Lava y seca la tela ({ $cloth }) antes de cortar, como se lavará la prenda: la tela nueva encoge, y no se indica cuánto. Plánchala con { cutting-dots }.
    .check = { cutting-wash.check }
    .remedy = { cutting-wash.remedy }
# Solo se dice dentro de los mensajes siguientes.
cutting-straighten = { $made ->
    [net] Endereza el extremo por el que empiezas: corta de lado a lado siguiendo una hilera de agujeros.
    [woven] Endereza el extremo por el que empiezas: saca un hilo que vaya de lado a lado y corta por el hueco que deja.
   *[close] Endereza el extremo por el que empiezas: traza una línea a escuadra con el borde largo y corta por ella.
 }
cutting-selvedges = Corta los orillos de la tela ({ $cloth }). { cutting-straighten }
    .check = Quedan al menos { $length } de largo.
    .remedy = Si es demasiado corta, compra lo que falte antes de cortar nada.
# El plano ocupa casi todo el ancho.
cutting-selvedges-wide = { cutting-selvedges }
    .check = Quedan al menos { $width } de ancho y { $length } de largo.
    .remedy = { $eked ->
        [yes] Si tiene hasta { $hair } menos de ancho, corta { $shorter } tan largos como ancha es la tela, y { $longer } más largo por todo lo que les falte. Si es aún más estrecha, cómprala más ancha. Si es demasiado corta, compra lo que falte antes de cortar nada.
       *[no] Si tiene menos de { $width } de ancho, cómprala más ancha o haz que se rehaga el plano para tu ancho. Si es demasiado corta, compra lo que falte antes de cortar nada.
     }
# Algunas piezas tienen un borde en el orillo.
cutting-selvedges-kept = No cortes los orillos de la tela ({ $cloth }): algunos son bordes de piezas. { cutting-straighten }
    .check = { cutting-selvedges.check }
    .remedy = { cutting-selvedges.remedy }
cutting-selvedges-kept-wide = { cutting-selvedges-kept }
    .check = { cutting-selvedges-wide.check }
    .remedy = { cutting-selvedges-wide.remedy }
# Donde terminó en esta tela una parte anterior del corte. $kept (yes o no): si los orillos se quedan.
cutting-goes-on = { $kept ->
    [yes] Sigue con la tela ({ $cloth }) donde terminó la parte anterior: ese extremo está recto. Los orillos se quedan.
   *[no] Sigue con la tela ({ $cloth }) donde terminó la parte anterior: ese extremo está recto. Corta los orillos donde aún los tenga.
 }
    .check = { cutting-selvedges-wide.check }
    .remedy = { cutting-selvedges-wide.remedy }
cutting-fold = Dobla la tela ({ $cloth }) a lo largo, derecho con derecho, de modo que se junten sus dos bordes largos.
    .check = Las dos capas están lisas y el doblez está recto.
    .remedy = Ábrela, vuelve a enderezar el extremo y dóblala de nuevo.
# Las dos caras de la tela son iguales.
cutting-fold-alike = Dobla la tela ({ $cloth }) a lo largo, de modo que se junten sus dos bordes largos.
    .check = { cutting-fold.check }
    .remedy = { cutting-fold.remedy }

## Un corte de tela

# Se dice solo dentro de los mensajes siguientes. $net: el jaboncillo se cuela por ella.
cutting-line-put = { $net ->
    [yes] pon una fila de alfileres
   *[no] traza una línea con jaboncillo
 }
cutting-chalk = { $made ->
    [net] Pon una fila recta de alfileres de lado a lado de la tela ({ $cloth }), siguiendo los agujeros, a { $length } de su extremo cortado: el jaboncillo pasa a través.
   *[close] Traza con jaboncillo una línea recta de lado a lado de la tela ({ $cloth }), a { $length } de su extremo cortado.
 }
    .check = Los dos extremos de la línea están a { $length } del extremo cortado.
    .tolerance = { $off }
    .remedy = { $made ->
        [net] Vuelve a poner los alfileres antes de cortar.
       *[close] Borra la línea y vuelve a trazarla antes de cortar.
     }
cutting-section = Corta por la línea: este es el corte de tela { $number } de { $sections }.
cutting-section-only = Corta por la línea: este es el único corte de tela.
# Otros cortes de esta tela conservan los suyos.
cutting-selvedges-here = Corta los orillos de este corte de tela: ninguna de sus piezas conserva uno.
# $taped: si hay cintas en la mesa, que tienen su propio dibujo.
cutting-tags = Escribe una etiqueta de papel para cada pieza, con lo que dice el dibujo del corte. Prende cada una en cuanto se corte su pieza: cerca del borde que está arriba en ese dibujo{ $taped ->
    [yes] { " " }(no en el de las cintas)
   *[no] { "" }
 }, su borde superior, por el revés: la cara más mate. Si las dos se parecen, elige ahora.
    .check = { $tags ->
        [one] { $tags } etiqueta. La etiqueta se quita cuando se cose su pieza.
       *[other] { $tags } etiquetas. Cada etiqueta se quita cuando se cose su pieza.
     }
# Las dos caras de la tela son iguales.
cutting-tags-alike = Escribe una etiqueta de papel para cada pieza, con lo que dice el dibujo del corte. Prende cada una en cuanto se corte su pieza: cerca del borde que está arriba en ese dibujo{ $taped ->
    [yes] { " " }(no en el de las cintas)
   *[no] { "" }
 }, su borde superior. Esta tela no tiene derecho: la cara de la etiqueta es el revés de ahora en adelante.
    .check = { cutting-tags.check }
# Cómo, se dice en el primer corte de la tela.
cutting-tags-again = Escribe también las etiquetas de este corte de tela y prende cada una como antes, en cuanto se corte su pieza.
    .check = { cutting-tags.check }
# Rectángulos de los que se cortan piezas más tarde.
cutting-tags-cut-again = Se corta otra vez más tarde: { PIECE($pieces) }. Ahí la etiqueta dice solo qué pieza es; el paso que la corta dice qué borde queda arriba.

## Franjas, sobre cintas adhesivas en la mesa

# $tapes: las distancias de las cintas.
cutting-tapes-along = { COUNT($tapes) ->
    [one] Pega una cinta adhesiva de papel a lo largo de la mesa. Su lado más alejado queda a { $tapes } del borde cercano de la mesa.
   *[other] Pega cintas adhesivas de papel a lo largo de la mesa. Sus lados más alejados quedan a { $tapes } del borde cercano de la mesa.
 }
    .check = { $beyond ->
        [yes] Cada cinta va de un extremo a otro de la mesa y baja por los dos, donde se ve cuando la tela tapa el resto. La última está allí a su distancia.
       *[no] Cada cinta sobresale el ancho de una mano del corte de tela por los dos extremos, y la última está allí a su distancia.
     }
    .tolerance = { $tape-off }
    .remedy = Vuelve a medir desde el mismo borde, nunca de cinta a cinta. Si la mesa es demasiado pequeña, trabaja en el suelo: allí otra cinta hace de borde de delante.
# En la mesa hay cintas de un corte de tela anterior.
cutting-tapes-along-anew = { cutting-tapes-along } Despega las cintas que estén en otro sitio.
    .check = { cutting-tapes-along.check }
    .tolerance = { cutting-tapes-along.tolerance }
    .remedy = { cutting-tapes-along.remedy }
cutting-tapes-across = { COUNT($tapes) ->
    [one] Pega una cinta adhesiva de papel a lo ancho de la mesa. Su lado más alejado queda a { $tapes } del extremo izquierdo de la mesa.
   *[other] Pega cintas adhesivas de papel a lo ancho de la mesa. Sus lados más alejados quedan a { $tapes } del extremo izquierdo de la mesa.
 }
    .check = { cutting-tapes-along.check }
    .tolerance = { cutting-tapes-along.tolerance }
    .remedy = Vuelve a medir desde el mismo extremo, nunca de cinta a cinta. Si la mesa es demasiado pequeña, trabaja en el suelo: allí otra cinta hace de extremo izquierdo.
cutting-tapes-across-anew = { cutting-tapes-across } Despega las cintas que estén en otro sitio.
    .check = { cutting-tapes-along.check }
    .tolerance = { cutting-tapes-along.tolerance }
    .remedy = { cutting-tapes-across.remedy }
# Un corte anterior tiene las mismas cintas.
cutting-tapes-stay = Deja las cintas donde están, a { $tapes } del { $from ->
    [end] extremo izquierdo
   *[edge] borde cercano
 } de la mesa.
    .check = Ninguna se ha despegado.
cutting-draw-along = Extiende la tela ({ $cloth }) sobre las cintas, recta y sin tirar, con un lado que tenía orillo a ras del borde cercano. Ponle pesos encima.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# La franja más cercana conserva su orillo.
cutting-draw-along-kept = Extiende la tela ({ $cloth }) sobre las cintas, recta y sin tirar, con un orillo a ras del borde cercano. Ponle pesos encima.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
cutting-draw-along-folded = Extiende la tela ({ $cloth }) sobre las cintas, recta y sin tirar, con el doblez a ras del borde cercano. Ponle pesos encima.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# De la tela doblada solo se corta lo que está en los orillos.
cutting-draw-no-tapes = Extiende la tela ({ $cloth }) sobre la mesa, recta y sin tirar, con el doblez a ras del borde cercano. Ponle pesos encima.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Franjas a lo ancho de la tela.
cutting-draw-turned = Gira la tela ({ $cloth }) un cuarto de vuelta y extiéndela sobre las cintas, recta y sin tirar, con su extremo cortado a ras del borde cercano. Ponle pesos encima.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
cutting-draw-across = Extiende la tela ({ $cloth }) a lo largo de la mesa sobre las cintas, recta y sin tirar, con su extremo cortado a ras del extremo izquierdo. Ponle pesos encima.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Los demás cortes de esta tela se cortan doblados.
cutting-draw-across-open = Abre el doblez: este corte de tela se corta en una sola capa. { cutting-draw-across }
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
cutting-draw-turned-open = Abre el doblez: este corte de tela se corta en una sola capa. { cutting-draw-turned }
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Se dicen solo como partes de los cuatro de arriba.
cutting-draw =
    .check = Está lisa y no resbala al empujarla.
    .remedy = Levanta los pesos, vuelve a extenderla recta y pon más.
# Se dice solo dentro de los mensajes de abajo.
cutting-lane-count = { $lanes ->
    [one] { $lanes } franja
   *[other] { $lanes } franjas
 }
cutting-slit = { COUNT($tapes) ->
    [one] Corta siguiendo el lado más alejado de la cinta: { cutting-lane-count }. Donde la tela tape una cinta, { cutting-line-put } de un extremo al otro.
   *[other] Corta siguiendo el lado más alejado de cada cinta: { cutting-lane-count }. Donde la tela tape una cinta, { cutting-line-put } de un extremo al otro.
 }
# El corte de tela es más largo que la mesa.
cutting-slit-beyond = { cutting-slit } Al llegar al final de la mesa, corre la tela y sigue por las mismas cintas.
# Franjas en el orillo lejano o, con la tela doblada, en los dos, que allí quedan juntos.
cutting-slit-selvedge = { $folded ->
    [yes] Prende con alfileres los dos orillos juntos. A { $depth } de ellos, { cutting-line-put } de un extremo al otro, y corta por ella las dos capas: franjas { $lanes }.
   *[no] A { $depth } del orillo lejano, { cutting-line-put } de un extremo al otro, y corta por ella: franja { $lanes }.
 }
    .check = Está a { $depth } del orillo en los dos extremos y en el centro.
    .tolerance = { $off }
    .remedy = Mide otra vez desde el orillo antes de cortar.
# $pieces: las marcas de las piezas.
cutting-selvedge-stays = Deja el orillo en { $pieces }: es el borde { $edge ->
    [top] superior
   *[bottom] inferior
 }, acabado tal como está.
# Franjas que van una sobre otra, junto al doblez.
cutting-slit-fold = Corta también por el doblez: ahí están unidas las franjas { $lanes }.
# $layer: en tela doblada, dónde está la franja; fold: contiene el doblez, y su alto es el que tiene una vez abierta.
cutting-lane-whole = { $layer ->
    [flat] La franja { $lane }, de { $depth } de alto, es { $piece }, sin cortar.
    [fold] Abre la franja { $lane }, que contiene el doblez. Tiene { $depth } de alto: es { $piece }, sin cortar.
    [upper] La franja { $lane }, capa de encima, de { $depth } de alto, es { $piece }, sin cortar.
   *[under] La franja { $lane }, capa de debajo, de { $depth } de alto, es { $piece }, sin cortar.
 }
# Several lanes of one layer, each a piece as it comes off the table.
cutting-lanes-whole = Pon la etiqueta a estas franjas, que no se cortan más: { $lanes }.
# Said only inside the message above.
cutting-lane-named = la franja { $lane } es { $piece }
cutting-lane = { $layer ->
    [flat] De la franja { $lane }, de { $depth } de alto, corta a escuadra, desde un extremo: { $cuts }.
    [fold] Abre la franja { $lane }, que contiene el doblez. Tiene { $depth } de alto: corta de ella { $cuts }.
    [upper] De la franja { $lane }, capa de encima, de { $depth } de alto, corta { $cuts }.
   *[under] De la franja { $lane }, capa de debajo, de { $depth } de alto, corta { $cuts }.
 }
# Un corte corto que es una sola tira: basta una regla, sin cintas en la mesa.
cutting-strip-off = Mide { $length } a lo largo del extremo cortado del corte { $number }, { cutting-line-put } a escuadra y corta por ella: es { $piece }.
    .check = Mide { $length } por sus dos bordes largos.
    .tolerance = { $off }
    .remedy = Recorta el extremo a escuadra.
cutting-lane-over = { $layer ->
    [flat] La franja { $lane }, de { $depth } de alto, sobra.
    [fold] La franja { $lane }, que contiene el doblez, sobra.
    [upper] La franja { $lane }, capa de encima, de { $depth } de alto, sobra.
   *[under] La franja { $lane }, capa de debajo, de { $depth } de alto, sobra.
 }
# Se dicen solo dentro de los tres de arriba.
cutting-length-for = { $length } para { $piece }

## Paños colocados libremente

cutting-lay = Extiende la tela ({ $cloth }) lisa sobre la mesa, con el revés encima, un extremo cortado a tu izquierda y un lado que tenía orillo hacia ti: el lado cercano. Ponle pesos encima.
    .check = Está sin arrugas y sin tirantez.
cutting-lay-alike = Extiende la tela ({ $cloth }) lisa sobre la mesa, con cualquiera de sus caras encima, un extremo cortado a tu izquierda y un lado que tenía orillo hacia ti: el lado cercano. Ponle pesos encima.
    .check = { cutting-lay.check }
# Se dice solo dentro de los dos de abajo.
cutting-measure-on = Donde acabe la mesa, { cutting-line-put } de lado a lado y anota a qué distancia está del extremo cortado; después corre la tela y sigue midiendo desde esa línea.
cutting-lay-beyond = { cutting-lay } { cutting-measure-on }
    .check = { cutting-lay.check }
cutting-lay-alike-beyond = { cutting-lay-alike } { cutting-measure-on }
    .check = { cutting-lay.check }
cutting-panel = { $net ->
    [yes] Marca { $mark } con filas de alfileres a lo largo de una regla:
   *[no] Traza { $mark } con jaboncillo y regla:
 } de { $near-end } a { $far-end } del extremo cortado, de { $near-side } a { $far-side } del lado cercano.
    .check = Mide { $length } de largo por los dos lados y { $width } de ancho en los dos extremos.
    .tolerance = { $off }
    .remedy = Vuelve a medir desde el extremo y desde el borde, nunca de paño a paño.
cutting-round = Corta con tijeras cada paño siguiendo sus líneas, primero el más exterior.
    .check = { $panels ->
        [one] { $panels } paño cortado. Ningún corte recto de lado a lado los separa todos.
       *[other] { $panels } paños cortados. Ningún corte recto de lado a lado los separa todos.
     }
cutting-part-end = { COUNT($marks) ->
    [one] Corta en línea recta de lado a lado por la línea a { $at } del extremo cortado: así se separa { $marks }.
   *[other] Corta en línea recta de lado a lado por la línea a { $at } del extremo cortado: así se separan { $marks }.
 }
cutting-part-side = { COUNT($marks) ->
    [one] Corta en línea recta de punta a punta por la línea a { $at } del lado cercano: así se separa { $marks }.
   *[other] Corta en línea recta de punta a punta por la línea a { $at } del lado cercano: así se separan { $marks }.
 }
cutting-over-end = Corta en línea recta de lado a lado por la línea a { $at } del extremo cortado: lo que queda junto a { $marks } sobra.
cutting-over-side = Corta en línea recta de punta a punta por la línea a { $at } del lado cercano: lo que queda junto a { $marks } sobra.
cutting-over-end-all = Corta en línea recta de lado a lado por la línea a { $at } del extremo cortado: lo que queda junto a los paños sobra.
cutting-over-side-all = Corta en línea recta de punta a punta por la línea a { $at } del lado cercano: lo que queda junto a los paños sobra.
cutting-trim = Corta lo que sobra junto a { $marks }, siguiendo las líneas.

## Después del último corte

# Nothing that is left is large enough for other work.
cutting-keep-small = Guarda lo que sobra de la tela ({ $cloth }) hasta terminar la prenda: ahí se prueban las puntadas y la plancha, y de ahí salen los remiendos.
cutting-keep = Guarda para más adelante los retales grandes de la tela ({ $cloth }), cada uno con una etiqueta que diga sus medidas.
    .check = Son { $sizes }. Guarda los más pequeños hasta terminar la prenda, para probar puntadas y para remiendos.
# Se dicen solo dentro del mensaje de arriba.
cutting-size = { $length } × { $width }
cutting-sizes = { $number } de { $length } × { $width }
