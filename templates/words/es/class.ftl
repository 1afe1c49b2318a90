### La página de una clase o de una gama de tallas, y las páginas que cortan para todas.

## Contenido

class-skip-to-guides = Ir a las guías
class-contents = En esta página
class-guides = Las guías
class-missing = Sin hacer
class-chart = La tabla de tallas
class-order = Un pedido para todos
class-cutting = Corte para todos

## Las guías

class-guides-are = El número va primero en la etiqueta de cada pieza que se corta para todos.
class-number = N.º
class-for = Para
class-cloth = Tela
class-time = Tiempo
# Lo que no se ve se lee en voz alta detrás. $whose: un nombre, un número o una talla.
class-guide = Guía
    .unseen = para { $whose }
class-pdf = PDF
    .unseen = para { $whose }
# $number: del archivo, cuando uno no puede con todas las guías.
class-print-file = Todas las guías en un archivo, para imprimir a doble cara ({ $number })
class-print-guides-alone = Estos archivos contienen solo las guías. El corte para todos se imprime aparte: los enlaces están en «{ class-cutting }».
class-missing-are = De estas no se ha podido hacer ninguna guía. El mensaje que se mostró nombra la línea que hay que corregir.

# De quién es la página, donde su archivo no lo dice.
class-every-size = todas las tallas
class-orders = Pedidos
class-of = una clase de { $number }
# En el lugar de un nombre que no se ha podido leer.
class-line = línea { $line } del archivo

## La tabla de tallas

class-chart-are = { $rounding ->
    [none] Las medidas de corte no están redondeadas e incluyen todos los márgenes.
   *[other] Las medidas de corte están redondeadas hacia arriba a { $rounding } e incluyen todos los márgenes.
 }
class-chart-sizes = Tabla de tallas, { $sizes }
class-size = Talla

## El pedido

class-apart = Lo mismo comprado por cada cual.
class-material = Material
class-together = Juntos
class-alone = Por separado
class-cost = Juntos: { $cost }, es decir, { $head } por persona si se reparte a partes iguales.
class-cost-alone = Por separado: { $cost }, es decir, { $head } por persona.
class-saved = Juntos se ahorran { $saved }, el { $share } %.
# $materials (una lista)
class-unpriced = Sin precio y fuera de estas sumas: { $materials }.
# $reels (número): cuántos lleva una máquina a la vez.
class-reels = { $reels ->
    [one] Los carretes están contados para todo el hilo junto. Las máquinas que cosan al mismo tiempo necesitan un carrete cada una.
   *[other] Los carretes están contados para todo el hilo junto. Los puestos en los que se cosa al mismo tiempo necesitan hasta { $reels } carretes cada uno.
 }
class-shopping-file = La lista para la tienda
class-materials-file = Los materiales en una tabla
# En la tabla de materiales para programas.
class-garments = prendas que lo llevan
class-to-order = para pedir
class-order-cost = coste del pedido
class-mean = { $garments ->
    [one] media de { $garments } prenda
   *[other] media de { $garments } prendas
 }

## Corte para todos

class-cutting-are = Todas las piezas van en un solo rollo de cada tela, cada etiqueta con el número de la persona primero.
class-cutting-file = El plano de corte para todos, con sus pasos
class-cutting-print = El plano de corte para imprimir
# $part, $parts (números): de lo que se corta una cosa tras otra.
class-cutting-file-part = El plano de corte para todos, parte { $part }, con sus pasos
class-cutting-print-part = El plano de corte para imprimir, parte { $part }
# Encabeza las páginas que cortan para todos, donde una guía dice para quién es.
class-cutting-for = corte para { $whose }
class-cutting-for-part = corte para { $whose }, parte { $part } de { $parts }
class-cutting-about = Todas las piezas, de un solo rollo de cada tela. La etiqueta de cada pieza empieza por el número de la persona a la que va destinada: { $example } es el ejemplar a de la pieza { $piece } para el número { $number }. La página con las guías dice de quién es cada número. Al cortarlas, pon en un montón aparte las piezas de cada número.
# Donde se corta por partes.
class-cutting-parts-are = Corta las partes en su orden: cada una sigue en el rollo donde terminó la anterior. La tela que se lavó entera no se lava otra vez.
# De quienes tienen piezas en una parte. $numbers (una lista), $count (número): cuántos.
class-cutting-piles-whole = { $count ->
    [one] Con esta parte está completo el montón del número { $numbers }.
   *[other] Con esta parte están completos los montones de los números { $numbers }.
 }
class-cutting-piles-go-on = { $count ->
    [one] El montón del número { $numbers } sigue en una parte posterior: déjalo donde se pueda poner más encima.
   *[other] Los montones de los números { $numbers } siguen en una parte posterior: déjalos donde se pueda poner más encima.
 }
# $example: una etiqueta con su estrella. Prevista para quien se fue después, o se midió de nuevo.
class-cutting-spare = Una estrella en una etiqueta, como en { $example }, señala una pieza que ya nadie necesita: alguien se fue o se midió de nuevo. Si su corte de tela aún no se ha cortado, córtala con las demás y apártala como retal.
class-cutting-parts = Partes del corte
class-cutting-part = Parte { $part }
# $joins (número)
class-joins = { $joins ->
    [one] { $joins } unión entre todos los ejemplares
   *[other] { $joins } uniones entre todos los ejemplares
 }
class-whole = entera

## Pie

class-end = Las normas locales y el ejercicio profesional habilitado van por delante. Página de la clase { $key }.
