### Corte de una cintura cuyo forro se vuelve hacia dentro sobre todos los márgenes.

figure-lining-band = Antes de darle la vuelta: la cinturilla sobre el forro
figure-lining-opening = abertura de la jareta
figure-lining-band-alt = Corte: { PIECE($lining) } del revés y { PIECE($band) } doblada encima, bordes cortados a ras, cosidos a { $inside } de ellos. La abertura de la jareta queda entre los dos.
figure-lining-band-caption = La cinturilla sobre el forro en corte, los dos bajos a la derecha. Con el forro vuelto del derecho, la cinturilla cuelga dentro.{ figure-hatched }
figure-lining-sewn = Al coser: el forro por fuera, el bajo a la derecha
figure-lining-turned = Vuelto: el interior encima, la cinturilla a la izquierda
figure-lining-alt = Dos cortes. Antes: { EDGE($to) }, { PIECE($band) } con su doblez y { PIECE($lining) }, uno sobre otro, con los bordes cortados a ras, cosidos a { $seam-width }. Después: la cinturilla queda arriba, el forro por dentro y los márgenes entre él y las capas.
figure-lining-caption = La cintura en corte, antes y después de volver el forro. Una capa las representa a todas.{ figure-hatched }
