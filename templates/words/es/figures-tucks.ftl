### Lorzas: las líneas de doblez en la tela lisa y una sección de las lorzas cosidas.

figure-tucks-lines = Líneas de doblez en la tela lisa
figure-tucks-sewn = Cosidas, { $depth } de profundidad, planchadas hacia el borde
figure-tucks-edge = borde inferior
figure-tucks-alt = { $tucks } lorzas de { $depth }, líneas de doblez a { $lines } por encima del borde inferior; cosidas, el doblez más bajo queda a { $from-edge } por encima de él y entre ellas se ven { $space }.
figure-tucks-caption = Las lorzas en sección, con el derecho encima.{ figure-hatched }
