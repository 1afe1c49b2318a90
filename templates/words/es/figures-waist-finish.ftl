### Entretela, y cinturas rematadas con cinta o goma.

figure-interfacing-name = entretela, la cola hacia abajo
figure-ribbon-name = cinta
figure-elastic-name = goma
figure-interfacing-head = Revés de la pieza
figure-interfacing-alt = { PIECE($piece, at: "start") }, con el revés encima y entretela de { $long } por { $deep }; los márgenes están libres.
figure-interfacing-caption = La entretela acaba antes de las costuras.
figure-petersham-alt = Corte de la cintura, con el interior encima: la cinta queda dentro, cosida a { $close } de su borde sobre un margen de { $lap }.
figure-petersham-caption = La cinta vuelta hacia dentro.{ figure-hatched }
figure-sewn-elastic-alt = Corte del borde, con el interior encima: goma de { $turn-width }, vuelta hacia dentro con la tela, un zigzag en sus dos bordes.
figure-sewn-elastic-caption = La goma vuelta hacia dentro.{ figure-hatched }
