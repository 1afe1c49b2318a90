### Lo que hay que comprar: cantidades, descripciones y dónde va cada material.

## Cantidades

buy-volume = { $amount } ml
# Un polvo, que se pesa.
buy-mass = { $amount } g
# $length: del hilo de un carrete.
buy-reels = { $reels ->
    [one] { $reels } carrete de { $length }
   *[other] { $reels } carretes de { $length }
 }
# Lo que se pone suelto: cremalleras, ojetes, botones.
buy-pieces = { $pieces ->
    [one] { $pieces } unidad
   *[other] { $pieces } unidades
 }

## Descripciones: lo que se dice de un material detrás de su nombre

buy-long = { $length } de largo
buy-wide = { $width } de ancho
# Of thread whose colour the spec does not say.
buy-colour-as = del color de la tela ({ $cloth })
buy-stretches = se estira un { $stretch } o más
# $class: el que toman las fibras; any donde ninguna clase de tinte vale para todas. $fibres (una lista)
buy-dye = { $class ->
    [acid] tinte ácido, para { $fibres }
    [disperse] tinte disperso, para { $fibres }
    [reactive] tinte reactivo, para { $fibres }
    [direct] tinte directo, para { $fibres }
   *[any] tinte para { $fibres }
 }

# Un cierre que la ficha no nombra. $kind
fastener = { $kind ->
    [hook-and-bar] corchete de gancho y barra
    [hook-and-eye] corchete de gancho y ojal
    [snap] automático
    [flat-button] botón plano
   *[button] botón
 }

## Dónde va

# El hilo.
use-seams = todas las costuras
# Se dice detrás del uso del hilo.
use-reels-at-once = { $sewing ->
    [0] la remalladora lleva { $reels } carretes a la vez
   *[other] la remalladora lleva { $reels } carretes a la vez, y la máquina de coser otro al lado
 }
use-bobbins = { $bobbins ->
    [one] llena antes { $bobbins } canilla
   *[other] llena antes { $bobbins } canillas
 }
use-trim = adorno { PIECE($piece, case: "of") }
use-binding = ribete { PIECE($piece, case: "of") }
use-ribbon = cinta pasada por { PIECE($piece) }
use-zip = la abertura
use-fastening = la cintura
use-opening = la abertura bajo la cintura
use-elastic-end = la punta de la goma
use-interfacing = entretela { PIECE($piece, case: "of") }
use-petersham = la cintura
use-sewn-elastic = el borde que recoge
use-hang-loops = trabillas para colgar
use-bustle-tape = cintas del polisón
use-bustle-rings = anillas del polisón
use-bustle-cord = cordones del polisón
use-channel = jareta en { PIECE($piece) }
use-hoop = aro en { PIECE($piece) }
use-shirring = fruncido elástico { PIECE($piece, case: "of") }
use-elastic = goma en { PIECE($piece) }
use-cord = cordón en { PIECE($piece) }
use-piping = vivo { PIECE($piece, case: "of") }
use-holes = agujeros del cordón en { PIECE($piece) }
use-dye = teñido { PIECE($piece, case: "of") }
use-dye-trim = teñido del adorno ({ $trim })
use-starch = almidonado { PIECE($piece, case: "of") }
use-agent = tratar contra el fuego { PIECE($piece) }
# Una forma de trabajar que la autora describe por su cuenta, por su nombre.
use-own = { $name }

## La tabla de materiales para programas

bom-width = ancho { $amount }
bom-length = largo { $amount }
bom-weight = peso { $amount }
bom-stretch = elasticidad { $amount }
bom-reel = carrete { $amount }
# El número inglés (algodón) de un hilo.
bom-count = Ne { $amount }
# Los títulos de las columnas.
bom-name = nombre
bom-code = referencia
bom-consumption = consumo por prenda
bom-supplier = proveedor
bom-cost = coste
bom-specification = descripción
bom-colour = color
bom-size = talla
bom-placement = uso
# Las cremalleras y los cierres se cuentan.
bom-pieces = unidades
