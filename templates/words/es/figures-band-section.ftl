### Bordes en sección que van dentro de una tira: tira de ribete, cinturilla lisa, cinta doblada.

## Una tira de ribete

figure-binding-shows = { $shows } a la vista
figure-binding-alt = Sección del borde ribeteado, con el derecho encima: { PIECE($strip) }, cosida a { $seam-width } del borde, doblada a su alrededor de modo que se ven { $shows }, con su remetido de { $turn } sujeto por detrás.
figure-binding-caption = El borde ribeteado, en sección.{ figure-hatched }

## Una cinturilla lisa

figure-fitted-depth = { $depth } de alto
# El nombre de la cinturilla, sin artículo.
figure-fitted-band = { $band-label }, doblez arriba
figure-fitted-alt = Sección { PIECE($band, case: "of") }, con el derecho encima: cosida a { $seam-width } del borde, doblada por encima, { $depth } de alto, con su borde remetido cosido por dentro.
figure-fitted-caption = La cinturilla en sección: todos los bordes sin rematar quedan dentro.{ figure-hatched }

## Una cinta doblada

figure-tape-alt = Sección del borde dentro de la cinta ({ $tape }) doblada, que cubre { $half } por los dos lados, con un pespunte a través de todo.
figure-tape-caption = El borde sin rematar está dentro del doblez de la cinta ({ $tape }).
figure-band-ends-top = El extremo de encima
figure-band-ends-beneath = El extremo de debajo
figure-band-ends-alt = La cinturilla doblada por la mitad, derecho con derecho, sobre la falda. En el extremo de encima un pespunte baja a { $seam-width } del borde, a ras de la abertura; en el de debajo, que sobresale, baja a { $seam-width } del borde, gira en la esquina y sigue la línea de costura hasta la falda.
figure-band-ends-caption = Los dos extremos de la cinturilla, con el revés hacia arriba, y sus pespuntes.
