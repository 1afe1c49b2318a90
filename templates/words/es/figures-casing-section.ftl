### Una cinturilla que se convierte en jareta, en sección en sus tres estados; el interior de la prenda está encima.

figure-casing-laid-on = 1. Colocada por dentro, cosida
figure-casing-folded-up = 2. Subida, apartada de la falda
figure-casing-folded-over = 3. Doblada hacia fuera, pespunteada
figure-casing-inside = interior
figure-casing-outside = exterior
# Dos líneas junto a la jareta.
figure-casing-held = { $holds ->
    [cord] cordón
   *[elastic] goma
 }
figure-casing-later = más tarde
figure-casing-deep = { $depth } de alto
figure-casing-gap = { $holds ->
    [cord] Deja sin coser la abertura de { $gap } en el centro del delantero: por ahí saldrá el cordón más tarde.
   *[elastic] Deja sin coser la abertura de { $gap } junto a la costura lateral: por ahí entrará la goma más tarde.
 }
figure-casing-skirt = falda: { $plies }
figure-casing-top = { PIECE($band, form: "bare") }, parte de arriba de la prenda
figure-casing-rows = Los dos pespuntes están dibujados más separados.
figure-casing-laid-on-alt = Sección { PIECE($band, case: "of") }, con el interior encima: colocada por dentro de la falda, con el derecho debajo y los bordes sin rematar a ras, cosida a { $seam-width } del borde.
figure-casing-folded-up-alt = Sección { PIECE($band, case: "of") }, con el interior encima: subida, apartada de la falda, con el margen de { $seam-width } debajo.
figure-casing-folded-over-alt = { $holds ->
    [cord] Sección { PIECE($band, case: "of") }, con el interior encima: doblada por arriba hacia fuera, { $depth } de alto, con su remetido de { $seam-width } cubriendo el primer pespunte, y pespunteada; el cordón se pasa más tarde, entre el margen y el exterior.
   *[elastic] Sección { PIECE($band, case: "of") }, con el interior encima: doblada por arriba hacia fuera, { $depth } de alto, con su remetido de { $seam-width } cubriendo el primer pespunte, y pespunteada; la goma se pasa más tarde, entre el margen y el exterior.
 }
figure-casing-caption = La cinturilla en sección: cosida, subida, doblada por encima.{ figure-hatched }
