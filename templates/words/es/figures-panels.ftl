### Nesgas una junto a otra, antes de coserlas en un aro.

figure-panels-head = { PIECE($piece, at: "start") }, derecho arriba
figure-panels-alt = { $opened ->
    [yes] Las nesgas una junto a otra, derecho arriba, de izquierda a derecha: { $order }. La costura entre la n.º { $after } y la n.º { $next } queda abierta { $open } desde arriba.
   *[no] Las nesgas una junto a otra, derecho arriba, de izquierda a derecha: { $order }. Se mide desde la costura entre la n.º { $after } y la n.º { $next }.
 }
figure-panels-caption = { $opened ->
    [yes] Las nesgas en el orden en que se cosen, y los bordes que quedan abiertos.
   *[no] Las nesgas en el orden en que se cosen.
 }
