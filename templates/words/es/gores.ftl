### Cortar paños que se ensanchan hacia el bajo, contrapeados en rectángulos.
### $gores: cuántos; $odd: el último rectángulo da menos que los otros.

gores-title = Corta { PIECE($piece) } en nesgas
gores-aim = { $gores } nesgas, cada una de { $top } arriba y { $hem } en el bajo una vez acabada.
gores-lay = { $turns ->
    [yes] Extiende plano el rectángulo para { PIECE($piece) }, con el revés hacia arriba, { $wide } de ancho y { $high } de alto. Cualquiera de sus lados de { $wide } puede ser el de arriba.
   *[no] Extiende plano el rectángulo para { PIECE($piece) }, con el revés hacia arriba, { $wide } de ancho y { $high } de alto, el borde superior lejos de ti.
 }
gores-mark-pair = En el borde superior marca { $narrow } desde la esquina izquierda; en el borde inferior, { $broad } desde la esquina izquierda. Traza una línea recta de marca a marca.
    .check = La línea mide { $slant }.
    .tolerance = { $off } de más o de menos
    .remedy = Vuelve a medir las dos marcas desde el lado izquierdo.
# Tela con dirección: ninguna nesga puede ir cabeza abajo.
gores-mark-one = En el borde superior marca { $narrow } desde la esquina izquierda. Traza desde ahí una línea recta hasta la esquina inferior derecha.
    .check = { gores-mark-pair.check }
    .tolerance = { gores-mark-pair.tolerance }
    .remedy = { gores-mark-pair.remedy }

## Los dos lados inclinados, varios en fila

# Una clase de nesgas en el objetivo del paso.
gores-width = { $place ->
    [front] { $many } delante, { $top } arriba y { $hem } en el bajo
    [back] { $many } detrás, { $top } arriba y { $hem } en el bajo
   *[side] { $many } en los costados, { $top } arriba y { $hem } en el bajo
 }
gores-aim-differ = { $gores } nesgas, una vez acabadas: { $widths }.
gores-square = { $turns ->
    [yes] Extiende plano el rectángulo para { PIECE($piece) }, con el revés hacia arriba, { $wide } de ancho y { $high } de alto. Cualquiera de sus lados de { $wide } puede ser el de arriba.
   *[no] Extiende plano el rectángulo para { PIECE($piece) }, con el revés hacia arriba, { $wide } de ancho y { $high } de alto, el borde superior lejos de ti.
 }
    .check = Sus dos diagonales miden { $diagonal }.
    .tolerance = { $off } de más o de menos
    .remedy = Endereza los bordes superior e inferior a escuadra con el lado antes de marcar.
# Donde una línea toca un borde: ninguna distancia.
gores-corner = 0
gores-line = { $line } { $upper } arriba, { $lower } abajo
gores-mark = { $line } { $at }
gores-mark-row = { $which ->
    [first] { $times ->
        [one] En un rectángulo marca a lo largo del borde superior, desde su esquina izquierda: { $upper-marks }.
       *[other] En { $times } rectángulos marca a lo largo del borde superior, desde su esquina izquierda: { $upper-marks }.
    }
    [next] { $times ->
        [one] En otro rectángulo marca a lo largo del borde superior, desde su esquina izquierda: { $upper-marks }.
       *[other] En otros { $times } rectángulos marca a lo largo del borde superior, desde su esquina izquierda: { $upper-marks }.
    }
    [last] { $times ->
        [one] En el otro rectángulo marca a lo largo del borde superior, desde su esquina izquierda: { $upper-marks }.
       *[other] En los otros { $times } rectángulos marca a lo largo del borde superior, desde su esquina izquierda: { $upper-marks }.
    }
   *[all] Marca a lo largo del borde superior, desde su esquina izquierda: { $upper-marks }.
 }
gores-mark-lower = Marca ahí a lo largo del borde inferior, desde su esquina izquierda: { $lower-marks }.
gores-draw-row = Traza cada línea recta desde su marca de arriba hasta la de abajo.
    .check = { $alike ->
        [yes] Cada línea mide { $longest }.
       *[no] La línea más corta mide { $shortest }; la más larga, { $longest }.
     }
    .tolerance = { $off } de más o de menos
    .remedy = Vuelve a medir sus dos marcas desde las esquinas izquierdas.
gores-name-row = { $which ->
    [first] { $times ->
        [one] En un rectángulo escribe el lugar de cada nesga en su extremo estrecho, de izquierda a derecha: { $places }.
       *[other] En { $times } rectángulos escribe el lugar de cada nesga en su extremo estrecho, de izquierda a derecha: { $places }.
    }
    [next] { $times ->
        [one] En otro rectángulo escribe el lugar de cada nesga en su extremo estrecho, de izquierda a derecha: { $places }.
       *[other] En otros { $times } rectángulos escribe el lugar de cada nesga en su extremo estrecho, de izquierda a derecha: { $places }.
    }
    [last] { $times ->
        [one] En el otro rectángulo escribe el lugar de cada nesga en su extremo estrecho, de izquierda a derecha: { $places }.
       *[other] En los otros { $times } rectángulos escribe el lugar de cada nesga en su extremo estrecho, de izquierda a derecha: { $places }.
    }
   *[all] Escribe el lugar de cada nesga en su extremo estrecho, de izquierda a derecha: { $places }.
 }

## Cortar y marcar

gores-cut = Corta por cada línea de una vez, con las tijeras planas sobre la mesa. No tires de los lados inclinados.
gores-name = { $odd ->
    [yes] Marca como parte de arriba el extremo estrecho de cada nesga. Del último rectángulo guarda una nesga; la otra sobra.
   *[no] Marca como parte de arriba el extremo estrecho de cada nesga. Más adelante cose cada lado recto con uno inclinado.
 }
gores-name-both = Marca como parte de arriba el extremo estrecho de cada nesga. Lo que queda al lado de las nesgas sobra. Los dos lados de una nesga se inclinan igual, así que dos cualesquiera casan. La etiqueta se quita ahora: lo escrito en las nesgas ocupa su lugar.
gores-order = Lo que queda al lado de las nesgas sobra. Apila las nesgas en el orden en que se cosen lado con lado: { $order }. La etiqueta se quita ahora: lo escrito en las nesgas ocupa su lugar.
