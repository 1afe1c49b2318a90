### Un borde superior antes de nivelarlo: la línea por la que se corta, y cuánto queda por debajo del borde en cada marca.

figure-levelled-edge = { PIECE($edge, at: "start") }, el borde superior
figure-levelled-side = lado
figure-levelled-front = delante
figure-levelled-back = detrás
figure-levelled-drawn = { $edges ->
    [one] Lo que se rebaja está dibujado más profundo de lo que es.
   *[other] Lo que se rebaja está dibujado más profundo de lo que es. Haz lo mismo en cada uno de los { $edges } bordes superiores.
 }
figure-levelled-alt = El borde superior { PIECE($edge, case: "of") } con una línea por debajo por la que cortar: { $front } delante, { $side } a los lados, { $back } detrás. La línea es suave y corre horizontal delante y detrás.
figure-levelled-caption = Dónde se corta más bajo el borde.
