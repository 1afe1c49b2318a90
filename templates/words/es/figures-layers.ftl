### Capas en sección de la cintura al bajo: cuál va por fuera, hasta dónde llega cada una, dónde quedan cubiertos los márgenes.

figure-layers-cut = Sección de la cintura al bajo
figure-layers-outside = exterior
figure-layers-legs = piernas
figure-layers-held = unidas
# Qué cara mira hacia dónde.
figure-layers-way = { $face ->
    [either] márgenes hacia las piernas
    [out] derecho hacia fuera
   *[in] derecho hacia las piernas
 }
# $chain: la pieza de arriba y las que cuelgan de ella.
figure-layers-one = { PIECE($chain, form: "bare") }, { figure-layers-way }, { $layer-deep } de alto
figure-layers-more = y { $more } capas más, del mismo modo
figure-layers-scale = Altos a la misma escala; espacios y márgenes, más anchos.
figure-layers-alt = Capas de fuera hacia las piernas: { $layers }. Todas están a ras por arriba y unidas { $from-edge } más abajo.
figure-layers-caption = { $count } capas, la más exterior a la izquierda.
