### Bordes rematados en sección: doblados dos veces y cosidos, o doblados hacia el derecho bajo un adorno.

## Doblados dos veces

figure-turned-before = Antes: liso, con el revés encima
figure-turned-after = Después: doblado y cosido
figure-turned-alt-machine = Sección del borde { PIECE($piece, case: "of") }: doblado { $first } y después { $second } hacia el revés, y pespunteado a lo largo del doblez interior.
figure-turned-alt-hand = Sección del borde { PIECE($piece, case: "of") }: doblado { $first } y después { $second } hacia el revés, y cosido a mano.
# Sin primer doblez: el borde se sobrehiló.
figure-turned-alt-once = Sección del borde { PIECE($piece, case: "of") }: doblado { $second } hacia el revés y cosido.
figure-turned-caption = El borde en sección, antes y después de doblarlo.{ figure-hatched }

## Bajo un adorno

figure-trimmed-width = { $trim }, { $width }
figure-trimmed-fold = doblez, a ras del adorno
figure-trimmed-alt-one-row = Sección del borde, con el derecho encima: { PIECE($piece) }, doblada { $turn } hacia el derecho, con el adorno ({ $trim }) de { $width } de ancho encima, a ras del doblez, cosida a { $row } del doblez.
figure-trimmed-alt-two-rows = Sección del borde, con el derecho encima: { PIECE($piece) }, doblada { $turn } hacia el derecho, con el adorno ({ $trim }) de { $width } de ancho encima, a ras del doblez, cosida a { $row } del doblez y otra vez a { $below } del borde interior del adorno.
figure-trimmed-caption = El borde en sección: el adorno tapa el borde doblado.{ figure-hatched }
figure-trimmed-alt-together = Sección del borde, con el derecho encima: el adorno ({ $trim }) de { $width } de ancho se cosió a lo largo del borde sin rematar { PIECE($piece, case: "of") }, a { $row }; después los dos se doblaron { $turn } y se pespuntearon a { $below } del borde superior del adorno.
figure-trimmed-caption-together = El borde en sección: el borde sin rematar queda dentro y el adorno rodea el doblez.{ figure-hatched }
