### Coser dos tirantes y sujetarlos por dentro del borde superior.

figure-straps-inside = Con el interior encima
figure-straps-alt = Un extremo del tirante queda { $lap } por dentro del borde superior, doblado { $under }, y va cosido en rectángulo.
figure-straps-caption = Un extremo del tirante por dentro del borde.
