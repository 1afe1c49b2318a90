### Fruncir una hilera por debajo de su borde y coserla sobre una línea que cruza una pieza, con una cabecilla por encima del pespunte.

figure-headed-row = Cosida, con el derecho encima
figure-headed-frill = cabecilla
figure-headed-row-alt = { PIECE($on, at: "start") }, con el derecho encima, y encima { PIECE($row) }: dos pespuntes, el de arriba sobre una línea a { line-place }, y una cabecilla de { $heading } por encima.
figure-headed-row-caption = La hilera con su cabecilla.
