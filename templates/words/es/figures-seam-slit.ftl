### Acabar la parte de una costura abierta en el bajo, como abertura o con solapa por debajo.

figure-slit-head = Con el derecho encima
figure-slit-head-vent = Con el interior encima
figure-slit-end = final de la abertura
figure-slit-alt = Una costura, con el derecho encima, abierta { $long } por encima del bajo; pespuntes a { $beside } de la abertura se juntan a lo ancho de su final.
figure-slit-alt-vent = Una abertura con solapa vista por dentro: el margen de un lado va doblado y cosido, el del otro sobresale { $margin } por debajo; un pespunte inclinado sujeta los dos en el final de la abertura.
figure-slit-caption = Cómo va cosida la abertura del bajo.
