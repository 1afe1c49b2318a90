### Un cordón en su jareta.

figure-cord-through = El cordón en su jareta
figure-cord-front = centro del delantero
figure-cord-lengths = Longitudes, a la misma escala
figure-cord-casing = jareta { $casing }
figure-cord-length = cordón { $cut }
figure-cord-behind = En el centro de la espalda, el cordón está cosido a la cinturilla.
figure-cord-alt = { $knotted ->
    [yes] Un cordón de { $cut } en una jareta de { $casing }, con los dos extremos fuera de una abertura de { $gap } en el centro del delantero, un nudo en cada extremo y una presilla en zigzag a los dos lados de la abertura.
   *[no] Un cordón de { $cut } en una jareta de { $casing }, con los dos extremos fuera de una abertura de { $gap } en el centro del delantero, cada extremo doblado y cosido, y una presilla en zigzag a los dos lados de la abertura.
 }
figure-cord-caption = Los dos extremos salen por la abertura y no pueden volver a meterse: el cordón está sujeto por detrás.
