### Lo que la guía dice en torno al trabajo: en la máquina antes de un paso, dónde parar, y el repaso final.

# El encabezamiento de pasos a los que la autora no da ninguno.
part = El trabajo
# Sobre el primer trabajo detrás de una letra que falta.
letters-skip = { $many ->
    [one] ¿Falta la { $letters }? Las letras son las mismas para todas las tallas. La que falta es de un trabajo que esta guía no necesita.
   *[other] ¿Faltan { $letters }? Las letras son las mismas para todas las tallas. Las que faltan son de trabajos que esta guía no necesita.
 }
letters-skip-run = { $first } a { $last }

## Antes de un paso

# $bobbins: cuántas llenas hacen falta para todas las pasadas; 0 si no se sabe cuánto cabe en una. $bobbin-thread: el hilo de todas juntas.
machine-wind = { $bobbins ->
    [0] Llena dos canillas: todas las pasadas llevan unos { $bobbin-thread } de hilo de canilla, así que vuelve a llenar la que se vacíe.
    [one] Llena { $bobbins } canilla: todas las pasadas llevan unos { $bobbin-thread } de hilo de canilla.
   *[other] Llena { $bobbins } canillas: todas las pasadas llevan unos { $bobbin-thread } de hilo de canilla.
 }
machine-trial = Pon la aguja nueva. { machine-wind } De prueba cose { $trial } en un retal doble, { $stitch }.
    .check = Las puntadas se ven iguales por las dos caras y la tela queda plana.
    .remedy = Vuelve a enhebrar el hilo superior y el de la canilla. Bucles por debajo: sube un número la tensión superior; bucles por encima: bájala un número.
overlocker-trial = De prueba pasa por la remalladora { $trial } del borde de un retal doble.
    .check = Los bucles de las dos caras se encuentran en el borde cortado, y el borde queda plano.
    .remedy = Borde ondulado: sube un número el transporte diferencial; borde encogido: bájalo un número. Bucles que sobresalen del borde: aprieta un número los dos ganchos.
machine-straight = Vuelve a poner la máquina de zigzag a puntada recta: { $stitch }.
machine-zip-open = Abre la cremallera el ancho de una mano, de modo que el cursor quede por debajo de los pespuntes que siguen.
marks-on-net = El jaboncillo se cuela por { $net }. Donde se marque un borde, anuda dos veces un hilo vivo a una malla a { $clear } del borde cortado, fuera del alcance de costura y remalladora. Córtalo antes de que lo tape un doblez, o al final.
lines-on-net = En { $net } no se ve ninguna línea. Donde haya que trazar una, pon cinta de papel a lo largo de una regla, o un hilo sujeto con alfileres, y quítalos cuando la línea haya servido.
# $flat: de un retal; se encoge tanto como luego la labor.
practise-gathering = Practica en un retal de la misma tela: apunta el número de la tensión superior para las costuras, pon la puntada más larga y la tensión un número más baja. En { $flat } cose dos pasadas, a { $first-row } y { $second-row } del borde. Tira de los dos hilos de la canilla hasta que mida { $short }.
    .check = Los hilos corren sin romperse, y los pliegues quedan regulares.
    .remedy = Si se rompe un hilo, afloja un poco la tensión superior o cose tramos más cortos.
# $left: hilo que queda en la canilla usada, de la longitud de una llena.
bobbin-fresh = Empieza con una canilla llena.
    .check = En la usada quedan unos { $left } de { $full }: demasiado poco para la próxima pasada.
bobbin-fresh-within = { $sewn ->
    [one] Ten lista una canilla llena: se pone en cuanto esté cosida la primera de las { $rows } pasadas que vienen.
   *[other] Ten lista una canilla llena: se pone en cuanto estén cosidas { $sewn } de las { $rows } pasadas que vienen.
 }
    .check = En la usada quedarán entonces unos { $left } de { $full }: demasiado poco para la próxima pasada.
bobbin-spare = { $spare ->
    [one] Llena { $spare } canilla de repuesto: cada una de estas pasadas largas gasta más hilo del que cabe en una.
   *[other] Llena { $spare } canillas de repuesto: cada una de estas pasadas largas gasta más hilo del que cabe en una.
 }

## Detrás de un paso

stop = Buen momento para parar y guardar la labor.
stop-sitting = Fin de la sesión { $sitting }. Guarda aquí la labor, con los alfileres contados.

## El repaso final

last-look = Repaso final
last-look-title = Repasa la prenda
last-look-aim = Se puede poner sin peligro.
# Donde ni cinturilla ni jareta ha recogido la etiqueta que advierte del fuego.
last-look-label = Coloca la etiqueta por dentro, cerca del borde superior y junto a una costura, con el texto a la vista. Remete sus dos extremos y cóselos a mano, a un margen de costura o solo a la capa interior.
    .check = Queda sujeta por los dos extremos y por el derecho no se ve ninguna de sus puntadas.
last-look-pins = Cuenta los alfileres y las agujas.
    .check = En la caja hay tantos como al empezar.
    .remedy = Palpa todas las costuras y la cintura hasta encontrar el último. Nadie se pone la prenda antes.
last-look-threads = Corta todos los hilos sueltos y quita de la tela los de color vivo.
# Los de color vivo se quitaron antes de almidonar.
last-look-loose-threads = Corta todos los hilos sueltos.
last-look-marks = Quita todas las marcas: cepilla el jaboncillo y haz desaparecer el rotulador con agua, como indique su fabricante.
    .check = No se ve ninguna marca por el derecho.
    .remedy = Lávala antes de planchar ahí: el calor fija algunos rotuladores para siempre.
last-look-length = Cuélgala y mide del borde superior al bajo: { $to-hem }.
    .check = Mide lo mismo por delante, por detrás y a los lados.
    .tolerance = { $off } de más o de menos
    .remedy = Si un lado cae más bajo, busca ahí una costura cosida con menos margen y vuelve a coserla.
# El bajo está cortado más alto delante que detrás.
last-look-dips = { $train ->
    [yes] Suelta la cola. Cuelga la prenda y mide del borde superior al bajo: { $front } por delante, { $side } a lo largo de las dos costuras laterales, { $back } por detrás.
   *[no] Cuélgala y mide del borde superior al bajo: { $front } por delante, { $side } a lo largo de las dos costuras laterales, { $back } por detrás.
 }
    .check = Mide lo mismo a izquierda y a derecha, y el bajo cae de forma regular hacia atrás.
    .tolerance = { $off } de más o de menos
    .remedy = Donde izquierda y derecha se diferencien, busca ahí una costura cosida con menos margen y vuelve a coserla.
# La cintura se niveló: la prenda es más larga por unos sitios que por otros.
last-look-lengths = Cuélgala y mide del borde superior al bajo: { $front } por delante, { $side } a los lados, { $back } por detrás.
    .check = Las tres medidas son correctas.
    .tolerance = { $off } de más o de menos
    .remedy = Donde sea más larga, descose ahí la cintura y rebaja el borde superior.
last-look-height = Pide a quien la llevará que se ponga de pie, sin zapatos. Mide del suelo al bajo: { $above }.
    .check = Mide lo mismo por delante, por detrás y a los lados.
    .tolerance = { $off } de más o de menos
    .remedy = Donde el bajo caiga más, rebaja ahí el borde superior y no recortes nunca el bajo.
last-look-edges = Ponla del revés y repasa todos los bordes.
    .check = Ningún borde se deshilacha y ninguna capa está pillada donde no debe.
    .remedy = Sobrehíla o vuelve a coser lo que encuentres.
# Unas cintas recogen una cola.
last-look-drawn-up = Recoge otra vez la cola, con cada cordón anudado en su marca. Póntela con los zapatos que lleva. Da unos pasos.
    .check = El bajo no toca el suelo en ningún sitio.
    .remedy = Quítatela, tira un poco más de todos los cordones, lo mismo de cada uno, y marca el sitio en cada cordón.
