### Trabajar dos agujeros en una jareta por venir, por donde saldrán las puntas del cordón.
### $piece: la cinturilla, o la pieza cuyo borde se dobla; $folded: cuál de las dos.

eyelets-title = Trabaja los agujeros del cordón en { PIECE($piece) }
    .number = { $hole }
eyelets-aim = Dos { cord-holes } quedan en el centro del delantero, a { $apart } de distancia.

## Marca

# Se dicen solo dentro de los mensajes de aquí.
eyelets-along = { $folded ->
    [band] a lo largo de un borde largo, que después se dobla hacia fuera
   *[edge] a lo largo del borde que después se dobla
 }
eyelets-cross = Desde ahí traza una línea recta hacia dentro: es el centro del delantero. Haz una cruz a { $half } a cada lado, a { $from-edge } del borde.
    .check = Las cruces están a { $apart } una de otra y las dos a { $from-edge } del borde.
    .tolerance = { $off } de más o de menos
    .remedy = Borra la cruz mal puesta y vuelve a hacerla.
eyelets-mark-ring = Por el derecho { PIECE($piece, case: "of") }, mide { $middle } desde { side-seam } { eyelets-along }. { eyelets-cross }
    .check = { eyelets-cross.check }
    .tolerance = { eyelets-cross.tolerance }
    .remedy = { eyelets-cross.remedy }
eyelets-mark-flat = Por el derecho { PIECE($piece, case: "of") }, mide { $middle } desde un extremo corto { eyelets-along }. { eyelets-cross }
    .check = { eyelets-cross.check }
    .tolerance = { eyelets-cross.tolerance }
    .remedy = { eyelets-cross.remedy }
# Dos paños dan la vuelta: uno de ellos es el delantero.
eyelets-mark-panel = Toma el trozo { PIECE($piece, case: "of") } que será el delantero. Por su derecho, mide { $middle } desde un borde vertical { eyelets-along }. { eyelets-cross }
    .check = { eyelets-cross.check }
    .tolerance = { eyelets-cross.tolerance }
    .remedy = { eyelets-cross.remedy }

## Refuerza

eyelets-patch-iron = Corta dos cuadrados de entretela ({ $backing }) de { $patch } de lado. Coloca uno por el revés detrás de cada cruz, la cola, que es áspera, hacia abajo. Presiona { $seconds } segundos a través de un paño húmedo sin deslizar, y déjalo plano hasta que se enfríe.
    .check = Al doblarla no se levanta ninguna esquina.
    .remedy = Presiona ese sitio otra vez, un poco más.
eyelets-patch-cloth = Corta dos cuadrados de la misma tela, de { $patch } de lado, y prende uno por el revés detrás de cada cruz.

## Ojales

eyelets-buttonholes = Pon la máquina en ojales y prueba uno de { $hole } en un retal con un cuadrado detrás. Después cose uno sobre cada cruz, en ángulo recto con el borde, { $half-hole } a cada lado de la cruz.
    .check = Los dos tienen { $hole } de largo y quedan uno junto a otro.
    .remedy = Descóselo y vuelve a coserlo. No lo cortes antes.
eyelets-cut = Abre los dos con un abrecosturas, con un alfiler atravesado en cada uno de sus extremos. Recorta los cuadrados por el revés junto a las puntadas, sin cortarlas.
    .check = La punta del cordón pasa por los dos.

## Ojetes hechos a mano

eyelets-ring = Dibuja un círculo de { $hole } de ancho alrededor de cada cruz y cose sobre él puntadas de bastilla pequeñas a través de las dos capas.
eyelets-pierce = Perfora cada cruz con un punzón, sobre corcho o una toalla doblada, hasta que el agujero llene su círculo.
eyelets-work = Cose el borde de cada agujero con { $stitches } puntadas muy juntas, cada una por encima de la bastilla, y remata el hilo por detrás.
    .check = El agujero tiene { $hole } de ancho y no se ve ningún borde cortado.
    .remedy = Haz una segunda vuelta entre las puntadas de la primera.

## Ojetes de metal

eyelets-pierce-metal = Perfora cada cruz con un punzón, sobre corcho o una toalla doblada, solo lo justo para que el cuello de un ojete ({ $eyelet }) pase apretado.
eyelets-set = Pon primero uno en un retal con un cuadrado detrás. Después mete un ojete en cada agujero por el derecho, coloca su arandela por detrás y cierra los dos con la herramienta, como dice su hoja.
    .check = No gira, y un tirón fuerte no lo mueve.
    .remedy = Ciérralo otra vez. Si se sale, el agujero es demasiado ancho: toma un ojete más grande.
