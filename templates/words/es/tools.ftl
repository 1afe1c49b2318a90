### La lista de herramientas; `.why` dice para qué es cada una.

## Máquinas

tool-machine = máquina de coser con puntada recta
    .why = costuras, pasadas de fruncido, pespuntes
tool-zigzag = puntada zigzag
    .why = { $uses }
# Se dicen solo dentro del mensaje de arriba.
tool-zigzag-neatening = sobrehilar
tool-zigzag-elastic = unir la goma
tool-zigzag-bars = presillas cortas
tool-zigzag-buttonhole = el ojal
tool-zigzag-own = donde lo diga un paso
tool-overlocker = remalladora enhebrada
    .why = sobrehilar
tool-attachment = plisador
    .why = fruncir
tool-hand-needle = aguja de coser a mano y dedal
    .why = coser a mano
tool-iron = plancha y tabla de planchar
    .why = planchar costuras y dobleces
tool-press-cloth = dos paños de planchar: algodón fino y limpio
    .why = entre la plancha y la tela que el calor estropea; uno queda seco
tool-zip-foot = prensatelas para cremalleras
    .why = coser junto a los dientes
tool-hemming-foot = prensatelas dobladillador
    .why = enrollar el dobladillo
tool-fire-label = cinta de algodón, rotulador rojo que no se vaya al lavar
    .why = la etiqueta que advierte del fuego
tool-label = cinta de algodón, rotulador que no se vaya al lavar
    .why = la etiqueta
# $size: el número métrico y, entre paréntesis, el antiguo.
tool-needle = aguja de máquina { $size }, nueva
    .why = atravesar la tela más gruesa y la costura de más capas

## Herramientas de mano

tool-pinking-shears = tijeras de picos
    .why = rematar bordes
tool-pins = alfileres, unos { $number }
    .why = sujetar bordes; cuéntalos al sacarlos
tool-clips = pinzas, unas { $number }
    .why = sujetar bordes; cuéntalas al sacarlas
# Donde las pinzas sujetan los bordes, los cabos de hilo se enrollan igualmente en alfileres.
tool-tail-pins = alfileres, unos { $number }
    .why = sujetar cabos de hilo; cuéntalos al sacarlos
# Las pinzas sujetan bordes; un doblez en medio de la tela se prende con alfileres.
tool-flat-pins = alfileres, unos { $number }
    .why = sujetar dobleces adonde no llegan las pinzas; cuéntalos al sacarlos
tool-tape-measure = cinta métrica
    .why = medir
tool-markers = jaboncillo, rotulador para tela que se vaya al lavar
    .why = marcar dentro del margen de costura; en la malla, que el jaboncillo atraviesa, el rotulador o un lazo de hilo de color vivo; prueba los dos en un retal y lávalo
tool-shears = tijeras de sastre, tijeras pequeñas
    .why = cortar tela, cortar hilos
tool-ruler = regla larga, algo con una esquina a escuadra
    .why = líneas rectas y extremos a escuadra
tool-tape = cinta adhesiva de papel, etiquetas de papel, bolígrafo y papel
    .why = líneas en la mesa por las que cortar, etiquetas de las piezas, números que anotar
tool-weights = pesos, como latas llenas
    .why = que la tela no se mueva al cortarla
tool-seam-ripper = descosedor
    .why = descoser
tool-blunt-needle = aguja de punta roma, hilo de color vivo
    .why = rematar cabos de hilo, señalar costuras laterales
tool-blunt-stick = palito de punta roma, como una aguja de punto
    .why = sacar las esquinas
tool-safety-pins = dos imperdibles
    .why = pasar la goma, sujetar su solape
tool-safety-pin = imperdible o pasacintas
    .why = pasar el cordón
tool-small-safety-pins = imperdibles pequeños, uno por cinta del recogido
    .why = sujetar los cabos de los cordones
tool-bodkin = pasacintas
    .why = pasar por una jareta o por un encaje
tool-awl = punzón, corcho
    .why = perforar agujeros
tool-eyelet-tool = herramienta para poner los ojetes
    .why = cerrar ojete y arandela
tool-glue = cola textil
    .why = extremos cortados que no deben deshilacharse
tool-large-paper = hoja grande de papel
    .why = el centro de un arco, fuera de la tela

## Para la varilla

tool-eye-protection = gafas de protección
    .why = cortar varilla
tool-bone-cutters = alicates de corte fuertes, adecuados para la varilla
    .why = cortar varilla
tool-bone-caps = conteras o cinta resistente para los extremos de la varilla
    .why = extremos que no puedan atravesar la tela

## Para el almidón

tool-brush = brocha ancha y suave, cuenco
    .why = almidón
tool-spray = pulverizador o aerosol
    .why = almidón
tool-bowl = barreño o tina donde quepa la pieza
    .why = almidón
tool-pan = olla, cuchara larga
    .why = cocer el almidón
tool-measuring-jug = jarra medidora
    .why = medir líquidos
tool-scale = balanza que marque décimas de gramo
    .why = pesar el tinte
tool-dye-pan = olla, taza, cuchara y pinzas reservadas para el tinte, nunca para comida
    .why = teñir
tool-gloves = guantes y mascarilla para polvo
    .why = el tinte en polvo y el baño caliente
tool-sheet = sábana vieja, paño seco
    .why = recoger y secar lo que gotea
tool-hair-dryer = secador de pelo de mano
    .why = echar aire templado entre las capas
tool-form = maniquí, o cesta y soporte
    .why = dejar secar la prenda en su forma
tool-board = tabla rígida
    .why = secar el adorno sin arrugas
# Whatever is made is hung up and measured at the end.
tool-hanger = percha con pinzas
    .why = colgar la prenda
