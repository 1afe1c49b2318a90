### Cortar paños que se ensanchan hacia el bajo, dos de cada rectángulo por una línea inclinada.
### $gores: cuántos; $odd: el último rectángulo da solo uno.

gores-title = Corta { PIECE($piece) } en nesgas
gores-aim = { $gores } nesgas, cada una de { $top } arriba y { $hem } en el bajo una vez acabada.
gores-lay = Extiende liso el rectángulo para { PIECE($piece) }, de { $wide } de ancho y { $high } de alto, con el borde superior al fondo.
gores-mark-pair = En el borde superior marca { $narrow } desde la esquina izquierda; en el borde inferior, { $broad } desde la esquina izquierda. Traza una línea recta de marca a marca.
    .check = La línea mide { $slant }.
    .tolerance = { $off } de más o de menos
    .remedy = Vuelve a medir las dos marcas desde el lado izquierdo.
# Tela con dirección: ninguna nesga puede ir cabeza abajo.
gores-mark-one = En el borde superior marca { $narrow } desde la esquina izquierda. Traza desde ahí una línea recta hasta la esquina inferior derecha.
    .check = { gores-mark-pair.check }
    .tolerance = { gores-mark-pair.tolerance }
    .remedy = { gores-mark-pair.remedy }
gores-cut = Corta por la línea de una vez, con las tijeras planas sobre la mesa. No tires de los lados inclinados.
gores-name = { $odd ->
    [yes] Marca como parte de arriba el extremo estrecho de cada nesga. Del último rectángulo guarda una nesga; la otra sobra.
   *[no] Marca como parte de arriba el extremo estrecho de cada nesga. Más adelante cose cada lado recto con uno inclinado.
 }
