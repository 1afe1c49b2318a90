### Una abertura con tapeta: su corte, y el corte abierto en línea recta sobre la tira que lo ribetea.

figure-placket-slit = Pespunteado junto a la línea, después cortado
figure-placket-foot = final: sin cortar
figure-placket-spread = Abierto en línea recta, sobre la tira
figure-placket-at-foot = { $foot } al final
figure-placket-strip = { PIECE($strip, form: "bare") }, con el derecho encima; el corte va sobre ella, con el revés encima
figure-placket-alt = Un corte de { $slit } con puntadas a los dos lados, a { $stay } de él por arriba, que se juntan en su final. Abierto en línea recta, su borde va sobre { PIECE($strip) }: a { $seam-width } del borde de la tira en el pespunte; al final del corte, { $foot }.
figure-placket-caption = El corte, y cómo va sobre su tira.
