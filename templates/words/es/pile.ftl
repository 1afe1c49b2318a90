### Una guía de una clase que corta en común: el montón de piezas cortadas en lugar del corte, y lo que se entrega.
### $number: el número de la persona en la clase, en cada una de sus etiquetas.

pile-title = El montón de piezas cortadas, número { $number }
pile-aim = Están todas las piezas y cada una tiene su medida.
# $pieces (número): cuántos hay en el montón.
pile-take = Toma el montón { $number } del corte de la clase. La etiqueta de cada trozo empieza por { $number }.
    .check = { $pieces ->
        [one] Hay { $pieces } trozo.
       *[other] Hay { $pieces } trozos.
     }
    .remedy = Si falta un trozo o lleva otro número, pregunta a quien da la clase antes de seguir.
# $cuts (una lista): cada etiqueta con su largo. $count: cuántos son.
pile-piece = Mide { PIECE($piece) } a lo largo de su borde largo: { $cuts }.
    .check = { $count ->
        [one] Tiene ese largo, y { $depth } de alto en los dos extremos.
       *[other] Cada trozo tiene ese largo, y { $depth } de alto en los dos extremos.
     }
    .tolerance = { $off }
    .remedy = Recorta sobre la mesa un trozo demasiado largo. Por uno demasiado corto pide otro; nunca lo estires.
# Se dice solo dentro del mensaje de arriba. $mark: una etiqueta de su montón, como 5-2a.
pile-tag = { $mark } { $length }
# En lugar de cuánta tela hay que comprar.
pile-cloth = en el montón { $number }
