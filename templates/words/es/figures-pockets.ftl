### Poner un bolsillo de parche en una pieza. Poner un bolsillo en el hueco de una costura.

figure-pocket-head = Con el derecho encima
figure-pocket-head-inside = Con el interior encima
figure-pocket-front = Los dos fondos planchados hacia delante
figure-patch-pocket-alt = { PIECE($pocket, at: "start") } sobre { PIECE($on) }, con el derecho encima: { $wide } de ancho y { $high } de alto, su borde superior { $from-edge } por debajo del borde superior de la pieza; cosido por los dos lados y por abajo, con un triángulo en las dos esquinas de arriba.
figure-patch-pocket-caption = Cómo queda y cómo va cosido el bolsillo.
figure-side-pocket-alt = Un fondo de { $wide } de ancho y { $high } de alto junto a una costura, cosido a los dos márgenes de un hueco de { $gap } y cerrado por arriba, por el lado y por abajo; una presilla en los dos extremos del hueco.
figure-side-pocket-caption = El fondo en su costura.
