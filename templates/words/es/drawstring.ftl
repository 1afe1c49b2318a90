### Pasar un cordón por una jareta; sus extremos salen por la abertura y se atan.
### $band es la cinturilla, o la pieza cuyo borde se dobló; $cord el cordón.

drawstring-title = Pasa el cordón
    .number = { $cut }
drawstring-aim = Un cordón recoge { $casing } de jareta; se ata por delante.
# La jareta es plana: el cordón entra por un extremo y sale por el otro.
drawstring-aim-flat = Un cordón pasa por { $casing } de jareta y se ata a la cintura.

## La abertura y el cordón

drawstring-bars = Cose una presilla corta en zigzag en los dos extremos de la abertura de { $gap }.
    .check = La abertura no puede desgarrarse más.
    .remedy = Vuelve a coser sobre la presilla.
# $finish: lo que un nudo o un doblez se lleva de cada extremo.
drawstring-cut = Corta el cordón ({ $cord }) a { $cut }: { $casing } para la jareta, y dos veces { $ends } para un extremo más { $finish } para rematarlo.
    .check = Mide { $cut } cuando está flojo junto a la cinta métrica.
drawstring-wrap = Enrolla un poco de cinta adhesiva de papel en sus dos extremos para que no se deshilachen por el camino.

## Por la jareta

drawstring-thread = Sujeta un imperdible o un pasacintas en un extremo y llévalo por la jareta, toda la vuelta hasta la abertura.
    .check = El cordón no está retorcido.
    .remedy = Si lo está, retrocede el último tramo, el ancho de una mano, desenróscalo y sigue.
drawstring-thread-flat = Sujeta un imperdible o un pasacintas en un extremo y llévalo por la jareta: entra por un extremo y sale por el otro.
    .check = { drawstring-thread.check }
    .remedy = { drawstring-thread.remedy }
# Las puntas salen de agujeros trabajados delante.
drawstring-thread-holes = Prende un imperdible o un pasacintas en una punta, métela por un { cord-hole }, pásala por toda la jareta y sácala por el otro.
    .check = { drawstring-thread.check }
    .remedy = { drawstring-thread.remedy }
drawstring-even = Extiende { PIECE($band) } y deja los extremos iguales.
    .check = Cuelgan { $out } por cada extremo.
    .tolerance = { $ends-off } de más o de menos
    .remedy = Corre el cordón hacia el lado más corto.
drawstring-bar-behind = Cose el cordón ({ $cord }) { PIECE($band, case: "to") } en el centro de la espalda, a media vuelta de la abertura, con una presilla corta que atraviese todas las capas.
    .check = No puede salirse de un tirón.
    .remedy = Vuelve a coser sobre la presilla.

drawstring-bar-flat = Cose el cordón ({ $cord }) { PIECE($band, case: "to") } en el centro de la jareta, con una presilla corta en zigzag que atraviese todas las capas.
    .check = { drawstring-bar-behind.check }
    .remedy = { drawstring-bar-behind.remedy }
drawstring-bar-behind-holes = Cose el cordón ({ $cord }) { PIECE($band, case: "to") } en el centro de la espalda, en el lado opuesto a los { cord-holes }, con una presilla corta a través de todas las capas.
    .check = { drawstring-bar-behind.check }
    .remedy = { drawstring-bar-behind.remedy }

## Los extremos

# La lleva una persona adulta.
drawstring-knot = Quita la cinta adhesiva y haz un nudo apretado en cada extremo. Corta lo que sobresalga del nudo más de { $beyond } y pon un poco de cola textil en el corte.
    .check = { drawstring-hang.check }
    .tolerance = { drawstring-hang.tolerance }
    .remedy = Deshaz el nudo y vuelve a hacerlo más cerca o más lejos de la punta.
# La lleva un niño: un nudo o una cuenta en el extremo se engancha.
drawstring-fold = Quita la cinta adhesiva, pon un poco de cola textil en los dos cortes y déjala secar. Dobla cada extremo dos veces, { $half-finish } cada vez, y cóselo plano a mano. No hagas ningún nudo: se engancha.
    .check = { drawstring-hang.check }
    .tolerance = { drawstring-hang.tolerance }
    .remedy = Descose el doblez. Corta lo que sobre y vuelve a doblarlo.
# Se dice solo como parte de los dos de arriba. $waist-known: se sabe cuánto cuelgan los extremos con la cintura recogida.
drawstring-hang =
    .check = { $waist-known ->
        [yes] Cuelgan { $ends } por cada extremo. Recogida a la cintura, cuelgan { $drawn } por cada extremo.
       *[no] Cuelgan { $ends } por cada extremo.
     }
    .tolerance = { $ends-off } de más o de menos
