### Bordes con vista o forrados y vueltos, en sección: dos telas, con sus márgenes metidos entre ellas.

# Nombres de dos piezas, sin artículos.
figure-faced-pieces = { $inner } por dentro, { $outer } por fuera
figure-faced-alt = Sección del borde con vista, con el interior encima: { PIECE($facing) } va por dentro, los dos márgenes de { $seam-width } van debajo y están cosidos a ella a { $understitch } del borde.
figure-faced-caption = El borde con vista, en sección.{ figure-hatched }
figure-bagged-alt = Sección de un borde forrado ({ $outer }), con el interior encima: { PIECE($lining) } va por dentro, los dos márgenes de { $seam-width } entre las dos telas.
figure-bagged-caption = El borde vuelto, en sección.{ figure-hatched }
