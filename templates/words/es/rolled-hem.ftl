### Enrollar un borde de tela fina en un dobladillo de pocos milímetros.
### $edge: el borde del dobladillo.

rolled-hem-title = Haz un dobladillo enrollado en { PIECE($edge) }
    .number = { $roll }
rolled-hem-aim = Un dobladillo muy estrecho sujeta el borde.

## Con un prensatelas dobladillador

rolled-hem-fit-foot = Pon un prensatelas dobladillador para { $roll }. Pruébalo en un retal de la misma tela.
rolled-hem-thin-seams = Donde una costura llegue { EDGE($edge, case: "to") }, corta en diagonal las esquinas de sus márgenes para que pasen por el prensatelas.
rolled-hem-begin-ring = Con el revés encima, dobla dos veces { $roll } los primeros { $first } { EDGE($edge, case: "of") } junto a { side-seam }. Pon el doblez bajo el prensatelas y clava la aguja en él.
rolled-hem-begin-flat = Con el revés encima, dobla dos veces { $roll } los primeros { $first } { EDGE($edge, case: "of") } en un extremo. Pon el doblez bajo el prensatelas y clava la aguja en él.
rolled-hem-sew-foot-ring = Cose a lo largo del doblez. Después mete el borde sin rematar en el caracol del prensatelas y sigue cosiendo, { $stitch }, con el borde sostenido de pie delante del prensatelas. Para { $first } antes del principio y saca el borde del caracol. Dobla el resto a mano y monta tres puntadas sobre el principio: { $length } en total.
rolled-hem-sew-foot-flat = Cose a lo largo del doblez. Después mete el borde sin rematar en el caracol del prensatelas y sigue cosiendo, { $length } en total, { $stitch }, con el borde sostenido de pie delante del prensatelas.
rolled-hem-foot-off = Vuelve a poner el prensatelas de siempre.

## A mano

rolled-hem-crease = Cose o marca con la uña una línea a { $twice } { EDGE($edge, case: "of") } y recorta los hilos sueltos.
rolled-hem-roll = Con el revés encima, enrolla el borde entre el índice y el pulgar hasta { $roll }, el ancho de una mano cada vez.
rolled-hem-sew-hand = Fija el rollo con puntada invisible, una puntada cada { $every }, { $length }: toma un hilo de la tela y pasa después por dentro del rollo. Remata el hilo en el rollo en los dos extremos.

## Con la remalladora

rolled-hem-set-overlocker = Prepara la remalladora para dobladillo enrollado: sin uña de puntada, { $stitch }, áncora inferior tensa. Pruébala en un retal.
rolled-hem-sew-overlocker-ring = Con el derecho encima, cose { EDGE($edge) }, { $length }; deja que la cuchilla corte solo hilos sueltos. Monta { $past } sobre el principio y sal por el borde.
rolled-hem-sew-overlocker-flat = Con el derecho encima, cose { EDGE($edge) }, { $length }; deja que la cuchilla corte solo hilos sueltos. Sal del borde en los dos extremos.
rolled-hem-chain = Deja una cadeneta de { $tail } al principio y al final. Enhebra cada una en una aguja de punta roma, pásala bajo las puntadas y corta el resto.
    .check = No cuelga ninguna cadeneta suelta.
rolled-hem-set-back = Vuelve a preparar la remalladora para sobrehilar.

## Repasar

rolled-hem-look = Repasa con la vista { EDGE($edge) } de punta a punta.
    .check = El rollo tiene { $roll } de ancho y no asoma ningún borde sin rematar.
    .tolerance = { $off } de más o de menos
    .remedy = Descose el ancho de una mano a cada lado del sitio, vuelve a enrollarlo y cóselo.
rolled-hem-look-overlocker = { rolled-hem-look }
    .check = { rolled-hem-look.check }
    .tolerance = { rolled-hem-look.tolerance }
    .remedy = Recorta lo que asome y vuelve a coser ese tramo con la cuchilla retirada.
