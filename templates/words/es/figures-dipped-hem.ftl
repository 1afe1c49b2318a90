### Un borde inferior que se corta más alto delante que detrás.

figure-dipped-hem-head = { PIECE($piece, at: "start") }, el borde inferior
figure-dipped-hem-front = delante
figure-dipped-hem-side = costado
figure-dipped-hem-back = detrás
figure-dipped-hem-alt = El borde inferior de { PIECE($piece) } extendido recto, con una línea de corte encima: { $front } más alto delante, { $side } en los costados, nada detrás.
figure-dipped-hem-caption = Dónde se corta más alto el borde; lo que cae va rayado en los dos sentidos y dibujado más alto de lo que es.
