### Planchar una pieza con el calor que admite su fibra.
### $pieces: todas las piezas que plancha este paso; $piece: la que se plancha ahora.

press-title = Plancha { PIECE($pieces) }
press-aim-seams = Las costuras quedan planas.
press-aim-folds = Las costuras y los dobleces quedan planos.

press-seams = Plancha { PIECE($piece) } por el revés, primero las costuras. Tumba todos los márgenes de una costura hacia el mismo lado. Levanta la plancha y apóyala, sin arrastrarla.
    .check = Las costuras quedan planas y nada brilla ni encoge.
    .remedy = Si la tela brilla o se encoge, baja la temperatura.
# La pieza tiene además dobladillos o pliegues.
press-seams-then-folds = Plancha { PIECE($piece) } por el revés, primero las costuras y después los dobleces. Tumba todos los márgenes de una costura hacia el mismo lado. Levanta la plancha y apóyala, sin arrastrarla.
    .check = { press-seams.check }
    .remedy = { press-seams.remedy }
