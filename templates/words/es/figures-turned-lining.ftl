### Corte de una cintura cuyo forro se vuelve hacia dentro sobre todos los márgenes.

figure-lining-sewn = Al coser: el forro por fuera, el bajo a la derecha
figure-lining-turned = Vuelto: el interior encima, la cinturilla a la izquierda
figure-lining-alt = Dos cortes. Antes: { EDGE($to) }, { PIECE($band) } con su doblez y { PIECE($lining) }, uno sobre otro, con los bordes cortados a ras, cosidos a { $seam-width }. Después: la cinturilla queda arriba, el forro por dentro y los márgenes entre él y las capas.
figure-lining-caption = La cintura en corte, antes y después de volver el forro. Una capa las representa a todas.{ figure-hatched }
