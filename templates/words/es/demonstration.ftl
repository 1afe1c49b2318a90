### El plan para quien muestra la labor, en una sala o ante una cámara.
### $piece: una pieza de la prenda. $letter: la de una operación de la guía.

demonstration-skip = Ir a lo que hay que preparar
# $whose: para quién o para qué talla es la guía.
demonstration-for = demostración, { $whose }

## Antes

demonstration-prepare = Para tener a punto
demonstration-prepare-are = Cada una es una pieza aparte, trabajada hasta donde se dice: así nadie espera mientras se cose lo que ya se ha mostrado.
# $time: de todas las partes. $parts (número)
demonstration-minutes = { $parts } partes, unos { $time } en total; cada una se muestra en una sola pieza.
demonstration-cut = { PIECE($piece, at: "start") }: solo el corte
demonstration-after = { PIECE($piece, at: "start") }: en el estado de después de { $letter }
demonstration-goes-on = { PIECE($piece, at: "start") }: en el estado recién mostrado en { $letter }

## Parte por parte

demonstration-parts = Parte por parte
demonstration-view = { $view ->
    [near] Se ve de cerca: las manos, la aguja y el borde.
   *[wide] Se ve entero: la mesa y toda la tela encima.
 }
demonstration-ready = A punto en la mesa:
demonstration-at-hand = A mano:
demonstration-say = Di antes de empezar:
demonstration-captions = Rótulos:
