### Una cremallera en la abertura de una costura, en corte.

figure-zip-tape = cremallera, dientes en negro
figure-zip-alt = { $way ->
    [centred] Los dos márgenes están doblados y se juntan sobre los dientes; un pespunte a { $beside } a cada lado atraviesa tela, margen y cinta.
    [lapped] Un doblez queda a { $near } de los dientes y va cosido a su cinta; el otro los cubre y va cosido a { $beside } de su doblez.
   *[invisible] En una abertura de { $opening } los dos márgenes están doblados; cada mitad va cosida solo a su margen, pegada a los dientes, y ningún pespunte atraviesa la tela exterior.
 }
figure-zip-caption = { $way ->
    [centred] La cremallera en el centro de su abertura de { $opening }.{ figure-hatched }
    [lapped] La cremallera bajo su tapeta, abertura de { $opening }, vista desde su extremo superior.{ figure-hatched }
   *[invisible] La cremallera invisible en los márgenes de su abertura de { $opening }.{ figure-hatched }
 }
figure-zip-folded-head = Con el revés hacia arriba, antes de la cremallera
figure-zip-folded-alt = La abertura está hilvanada. Un margen está planchado hacia su propio lado; el otro pasa por encima del hilván y está doblado sobre sí mismo, y su doblez sobresale { $near } del hilván.
figure-zip-folded-caption = El doblez bajo el que irá la cremallera, visto desde su extremo superior.{ figure-hatched }
figure-zip-beneath-head = En la máquina, la cremallera con el derecho hacia arriba
figure-zip-over = encima
figure-zip-under = debajo
figure-zip-beneath-alt = El doblez que sobresale queda con el derecho hacia arriba sobre la cinta, junto a los dientes, y va cosido a { $from-fold } de su borde a través de doblez, margen y cinta. El lado que monta encima queda sobre el otro, lejos de la aguja, con su margen vuelto.
figure-zip-beneath-caption = Bajo la aguja solo están el doblez y la cinta.{ figure-hatched }
