### La goma: de camino por la jareta, sus extremos marcados y solapados, su longitud; y la abertura cerrada.
### $band es la cinturilla, o la pieza cuyo borde se dobló.

figure-elastic-through = Por la jareta
figure-elastic-bodkin = pasacintas
figure-elastic-mark = Marca los extremos
figure-elastic-lap = Solapa los extremos y cose
figure-elastic-cut-end = extremo cortado en la raya
figure-elastic-shorten = Traza la línea y corta el cabo de abajo
figure-elastic-cut-here = corta aquí el cabo de abajo
figure-elastic-lengths = Longitudes sin estirar, a la misma escala
figure-elastic-casing = jareta { $casing }
figure-elastic-loop = aro de goma { $loop }
figure-elastic-marked-alt = En la goma hay una raya a { $lap } de un extremo y una cruz en el otro.
figure-elastic-through-alt = Una goma de { $width } de ancho pasa por una abertura de { $gap }, con un extremo colgando fuera y prendido { PIECE($band, case: "to") }; en el otro extremo hay sujeto un pasacintas.
figure-elastic-alt = El extremo de la cruz está en la raya, { $lap } sobre el otro, cosido en zigzag; el aro cerrado mide { $loop } en una jareta de { $casing }.
figure-elastic-shorten-alt = El cabo de arriba queda sobre el de abajo como en la prueba, sujeto con un imperdible. Donde acaba el de arriba hay una línea a través del de abajo, y el de abajo se corta { $lap } más allá, donde el de arriba lo cubre.
figure-elastic-alt-long = El cabo de arriba queda sobre el de abajo hasta la línea, { $lap }, y va cosido en zigzag; el aro cerrado mide { $loop } en una jareta de { $casing }.
figure-elastic-caption = Sujeta el extremo para que no se meta dentro, y solapa los extremos de modo que uno quede en la raya del otro.
figure-elastic-caption-lap = Superpón los cabos de modo que uno quede en la línea del otro.

## La abertura cerrada

figure-gap-seen = Vista por el lado por el que se cose el pespunte, a escala.
figure-gap-alt = La abertura de { $gap } cerrada por un pespunte que monta { $past } sobre el primero en los dos extremos.
figure-gap-caption = El pespunte de cierre empieza y acaba sobre el primero.
