### Lo que todas las secciones de la labor dicen igual.

figure-right-side-up = Con el derecho encima
figure-inside-up = Con el interior encima
figure-finished-edge = borde rematado
# Termina un pie de figura. $sided: si alguna tela de la sección tiene derecho y revés.
figure-hatched = { $sided ->
    [yes] { " " }La mitad rayada de una tela es su revés.
   *[no] { "" }
 }
