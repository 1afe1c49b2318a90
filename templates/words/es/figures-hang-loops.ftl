### Trabillas para colgar en el interior de un borde.

figure-loops-inside = Con el interior encima
figure-loops-note = { $loops ->
    [one] { $loops } trabilla: extremos a ras del borde cortado, cosidos dos veces. Sin escala.
   *[other] { $loops } trabillas: extremos a ras del borde cortado, cosidos dos veces. Sin escala.
 }
figure-loops-alt = Una trabilla de cinta por dentro, con los dos extremos a ras del borde cortado, que cuelga { $hangs }, cosida dos veces a { $row } del borde.
figure-loops-caption = { $loops ->
    [one] Cómo va la trabilla.
   *[other] Cómo va cada una de las { $loops } trabillas.
 }
