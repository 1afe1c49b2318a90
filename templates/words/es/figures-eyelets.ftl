### Dos agujeros en una jareta por venir, vistos por el derecho.

figure-eyelets-head = Por el derecho, antes de doblar la jareta
figure-eyelets-front = centro del delantero
figure-eyelets-note = A escala. Con puntos: los cuadrados de detrás.
figure-eyelets-alt = { PIECE($piece, at: "start") } por el derecho: dos { cord-holes } de { $hole }, a { $apart } de distancia, la mitad a cada lado del centro del delantero, a { $from-edge } del borde.
figure-eyelets-caption = Los dos están a { $from-edge } del borde, a la mitad de { $apart } del centro del delantero.
