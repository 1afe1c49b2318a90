### Pasar por una jareta una goma con ojales; su punta se abotona por dentro y se puede soltar.
### $piece: la cinturilla, o la pieza cuyo borde se dobló.

adjustable-elastic-title = Pasa la goma que se abotona
    .number = { $first }
adjustable-elastic-aim = La goma mide al principio { $first } de contorno y se puede soltar hasta { $out }.

adjustable-elastic-bars = Cose una presilla corta en zigzag en los dos extremos de la abertura de { $gap }: se queda abierta.
    .check = Al tirar no se abre más.
adjustable-elastic-try = Antes de cortar, prende la goma en un aro de { $first } con un imperdible. Póntela alrededor de la cintura, siéntate e inspira.
    .check = Se sostiene y no aprieta. Pasan dos dedos por debajo.
    .remedy = Préndela más larga o más corta hasta que sea así, usa ese largo en lugar de { $first } y corta tanto más o menos.
adjustable-elastic-cut = Corta la goma ({ $elastic }) de { $cut } de largo: { $out } de contorno, { $reach } para llegar al botón, { $fast } para la punta fija y { $hem } para la otra. Corta entre dos ojales.
    .check = Mide { $cut }, puesta sin tensión junto a la cinta métrica.
adjustable-elastic-lay-end = Dobla { $half-fast } de una punta. Mirando por dentro, ponla en la jareta a la izquierda de la abertura, con su doblez a ras del extremo izquierdo y la goma alejándose de ella.
adjustable-elastic-fast = Cósela con un cuadrado de zigzag a través de la goma y de la capa interior solamente.
    .check = Tira fuerte: nada cede. Por fuera no se ve ninguna puntada.
    .remedy = Vuelve a coser el cuadrado.
adjustable-elastic-thread = Prende un imperdible o un pasacintas en la otra punta y pásala por toda la jareta hasta sacarla por la abertura. Ve empujando la tela hacia atrás sobre la goma.
    .check = La goma queda lisa todo alrededor.
    .remedy = Si está retorcida, saca el último tramo, el ancho de una mano, gírala y sigue.
adjustable-elastic-hem = Dobla esta punta dos veces, { $half-hem } cada vez, y cose a través del doblez.
adjustable-elastic-button = Cose un botón plano de { $button } de ancho por dentro de la jareta, a { $reach } a la izquierda de la abertura: la punta suelta pasa por encima de la fija. Coge solo la capa interior.
    .check = Un tirón fuerte no lo mueve, y por fuera no se ve ninguna puntada.
    .remedy = Vuelve a coserlo.
adjustable-elastic-close = Recoge la goma hasta { $first } y abotónala ahí. Los ojales siguientes, cada { $slots }, la sueltan hasta { $more }.
    .check = La punta queda lisa por dentro, y el vuelo es igual todo alrededor.
    .remedy = Reparte el vuelo con los dedos a lo largo de la goma.
