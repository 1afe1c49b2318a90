### Lo que se pone sobre un borde para que su costura lo coja.

figure-caught-edges = bordes cortados
figure-caught-dotted = con puntos: la costura por venir
figure-caught-alt = Corte { EDGE($in, case: "of") }, el derecho encima: { EDGE($strip) } está sobre él, bordes cortados a ras, hilvanado a { $row } de ellos; la costura va a { $seam-width } de los bordes.
figure-caught-caption = La tira está hilvanada dentro del margen, justo por fuera de la costura por venir.{ figure-hatched }
figure-piping-alt = Corte { EDGE($in, case: "of") }, el derecho encima: { PIECE($strip) }, doblada alrededor de un cordón de { $thick } de grueso, con sus bordes cortados a ras del borde, está hilvanada muy cerca del cordón; la costura va a { $seam-width } de los bordes.
figure-piping-caption = El cordón queda justo por dentro de la costura por venir.{ figure-hatched }
