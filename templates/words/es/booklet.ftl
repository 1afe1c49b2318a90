# Un cuaderno: una sola guía para todas las tallas de un modelo.

booklet-whose = Tallas { $sizes }
booklet-range = { $first } a { $last }
# Delante de un texto que vale para algunas tallas.
# $count (number): cuántas tallas.
booklet-version = { $count ->
    [1] Talla { $sizes }:
   *[other] Tallas { $sizes }:
}
booklet-only = { $count ->
    [1] Solo para la talla { $sizes }.
   *[other] Solo para las tallas { $sizes }.
}

booklet-how = Elige tu talla por tus medidas y rodéala con un círculo en cada tabla. Donde una frase lleva una letra, tu número está detrás de esa letra en la tabla «Tus números» de la misma operación, en la columna de tu talla. Las letras vuelven a empezar en cada operación. Escribe tu número en la línea antes de empezar.
booklet-measure-told = Sobre ropa fina, con la cinta horizontal y sin apretar; que otra persona lea. Toma la talla a la que más se acercan tus medidas; si difieren en más de un dedo, pide que te hagan una guía.
booklet-ring = Rodea tu talla
booklet-numbers = Tus números
booklet-in-head = encabezado
booklet-in-drawing = dibujo, { $sentence }
# How far a number may be off. $what: which number.
booklet-off = { $what }: tolerancia
booklet-part-of-drawing = en el dibujo «{ $drawing }»

booklet-cut-for = { $count ->
    [1] Corte, talla { $sizes }
   *[other] Corte, tallas { $sizes }
}
booklet-cut-all = Corte, todas las tallas
booklet-cut-told = Cada talla se corta según su propio plan. Busca el tuyo y pasa por alto los demás.
booklet-plan-for = { $count ->
    [1] Plan de las sesiones, talla { $sizes }
   *[other] Plan de las sesiones, tallas { $sizes }
}
booklet-width = { $cloth }, de { $width } de ancho
booklet-widths = La misma tela según su ancho
booklet-widths-told = El corte está previsto para el ancho de la lista de arriba. Para otro ancho pide la guía de tu talla.

booklet-drawn-for = Dibujado para la talla { $size }.
booklet-drawn-of = { $count ->
    [1] Esto vale para la talla { $sizes }.
   *[other] Esto vale para las tallas { $sizes }.
}

booklet-drawn-each = El mismo para cada talla
booklet-drawings-for = Dibujos, talla { $size }

booklet-proved = Cada talla se ha probado antes de escribirse.

# En la pantalla, donde se elige una talla y sus números entran en las frases.
booklet-choose = Tu talla
booklet-every = Todas las tallas
booklet-chosen = Talla { $size }: sus números están en las frases, y lo que no es para ella queda oculto.
booklet-not-chosen = Elige tu talla y sus números entran en las frases. La elección queda solo en este dispositivo.
