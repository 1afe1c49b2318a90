### Costuras que encierran sus propios bordes, en sección: francesa, sobrecargada y superpuesta.
### $upper y $lower: las piezas de la capa de encima y de la de debajo.

## Francesa

figure-french-second = La segunda costura, en la máquina
figure-french-trimmed = recortado a { $trim }
figure-french-first = primera costura
# $upper-label, $lower-label (texto): los nombres que la autora da a las piezas.
figure-french-plies = { $upper-label } encima, { $lower-label } debajo
figure-french-alt = Sección de una costura francesa, derecho con derecho: la primera costura de { $first } está en el doblez, con su margen recortado a { $trim } entre las capas; el segundo pespunte va a { $second } del doblez.
figure-french-caption = Los bordes sin rematar quedan dentro de la segunda costura.{ figure-hatched }

## Sobrecargada

figure-felled-seen = Con el revés encima
figure-felled-alt = Sección de una costura sobrecargada, con el revés encima: un margen de { $seam-width } doblado alrededor de otro recortado a { $trim }, tumbado con { $fell } de ancho y pespunteado a lo largo de su doblez.
figure-felled-caption = El margen ancho se cierra sobre el estrecho.{ figure-hatched }

## Superpuesta

figure-lapped-upper = { $upper-label }, encima
figure-lapped-lower = { $lower-label }, debajo
figure-lapped-alt = { $turned ->
    [yes] Sección de una costura superpuesta, con el derecho encima: { PIECE($upper) } monta { $lap } sobre { PIECE($lower) }, con el pespunte a { $from-fold } del doblez.
   *[no] Sección de una costura superpuesta, con el derecho encima: { PIECE($upper) }, sin remeter, monta { $lap } sobre { PIECE($lower) }, con el pespunte a { $from-fold } de su borde.
 }
figure-lapped-caption = El borde de encima va sobre el de debajo.{ figure-hatched }
