### Cintas con anillas por dentro de la espalda de una falda, sueltas y recogidas.

figure-bustle-tapes-down = Suelta, vista por dentro
figure-bustle-tapes-up = Recogida
figure-bustle-tapes-alt = { $tapes ->
    [one] Una cinta de { $long } por dentro de la espalda, { $below } bajo el borde superior, con { $rings } anillas a { $every } una de otra y un cordón atado a la de abajo. Recogida mide { $left }, y el bajo queda { $up } más alto.
   *[other] { $tapes } cintas de { $long } por dentro de la espalda, a { $apart } una de otra por abajo y { $below } bajo el borde superior, cada una con { $rings } anillas a { $every } una de otra y un cordón atado a la de abajo. Recogidas miden { $alike ->
        [yes] { $left }
       *[no] { $lefts }, del centro de la espalda hacia fuera
     }, y el bajo queda { $up } más alto.
 }
figure-bustle-tapes-caption = Las cintas sueltas, y una de las del centro recogida, con el nudo en la anilla de arriba.
figure-bustle-tapes-loop = bucle
figure-bustle-tapes-end = punta
