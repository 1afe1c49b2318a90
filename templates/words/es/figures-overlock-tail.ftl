### La cadeneta que deja una remalladora y cómo se remata.

figure-tail-chain = La cadeneta al final de la costura
figure-tail-length = unos { $tail }
figure-tail-back = Pásala hacia atrás bajo las puntadas
figure-tail-needle = aguja de punta roma
figure-tail-alt = Un borde remallado con una cadeneta de unos { $tail } en su extremo, pasada hacia atrás bajo las puntadas con una aguja de punta roma.
figure-tail-caption = La cadeneta vuelve bajo sus propias puntadas; el resto se corta.
