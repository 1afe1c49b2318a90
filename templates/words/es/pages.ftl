### Las palabras fijas de una guía: su página, su PDF, su Markdown y su JSON.
### Los valores son textos acabados, salvo que una nota diga otra cosa.

## Cabecera y ayudas de la página

page-skip-to-steps = Ir a los pasos
# De quién es la guía, donde es una talla y no una persona.
page-size = talla { $size }
page-aids = Ayudas de lectura
# Links to the guides of the other sizes, where several are made together.
page-sizes = Tallas
page-every-size = Todas las tallas
page-languages = Idiomas
page-large-print = Letra grande
page-dark = Oscuro
page-progress = Avance
page-steps-done = Pasos hechos
# $done, $steps (números)
page-done = { $done } de { $steps } hechos
page-next = Lo siguiente
page-go-to-step = Ir al paso
# Está en la casilla vacía para el número de un paso.
page-step-number = F3
# One sentence with its drawing at a time, for the sewing table.
page-one-step = Paso a paso
page-step-back = Atrás
page-step-on = Paso siguiente
page-all-steps = Todos los pasos
page-larger = Ampliar el dibujo
page-close = Cerrar
page-go = Ir
# Pie de una hoja de papel. $sheet, $sheets: su número y cuántas hay.
page-sheet = { $sheet } de { $sheets }

## Encabezamientos de las partes

# Lo que un lector de libros dice del archivo a quien lo necesita leído en voz alta o en grande.
page-book-read = Cada dibujo está descrito también con palabras, con los números que muestra. El índice, los títulos y las tablas llevan por la guía, y nada en ella se mueve, parpadea ni suena.
page-contents = En esta guía
page-garment = La prenda
page-measurements = Medidas
page-cautions = Precauciones
page-tools = Herramientas
page-materials = Materiales
page-cutting = Corte
page-proved = Lo que se demostró antes de cortar
# Lo mismo en el índice.
page-proved-short = Lo que se demostró
page-notes = Notas de quien la diseñó
page-reasons = De dónde salen los números

## The first pages

page-glance = De un vistazo
# $sittings (number)
page-plan = { $sittings ->
    [1] El trabajo: el corte y una sesión
   *[other] El trabajo: el corte y { $sittings } sesiones
 }
page-plan-left = { $sittings ->
    [1] El trabajo que queda: una sesión
   *[other] El trabajo que queda: { $sittings } sesiones
 }
page-begin = Antes de empezar
page-measure = Toma tus medidas
# $whose: a size or a wearer.
page-measure-told = Sobre ropa fina, con la cinta horizontal y sin apretar; que otra persona lea. Los números de esta guía son para { $whose }: si los tuyos difieren en más de un dedo, pide que te la hagan.
# Over the empty lines of the form.
page-yours = tuya
page-choose-size = Elige tu talla
page-whole = Todo el trabajo en una tabla
page-whole-told = Para quien ya la ha cosido. La letra lleva a las frases y a sus dibujos.
page-what = qué
page-the-number = el número
page-time = tiempo
page-on-sheet = página
page-pieces = Las piezas
page-words = Vocabulario
page-kept = Cuidado
page-hint-new = ¿Es la primera vez? Ve de la primera letra a la última. Cada frase está junto a su dibujo; márcala cuando esté hecha. Al final se explican el vocabulario y los signos de los dibujos.
page-hint-done = ¿Ya la has cosido? Una tabla tiene todo el trabajo: una letra, un número, un tiempo.
page-hint-lost = ¿Te has perdido? Las letras al pie de cada página muestran dónde estás. G3 es la frase 3 de G.
# $claims (number)
page-proved-line = { $claims ->
    [one] Demostrado antes de cortar, para estas medidas: { $claims } afirmación. Está en la guía en pantalla, con sus números.
   *[other] Demostrado antes de cortar, para estas medidas: { $claims } afirmaciones. Están en la guía en pantalla, con sus números.
 }

## Medidas

page-rounded = { $rounding ->
    [none] Las medidas de corte no están redondeadas.
   *[other] Las medidas de corte están redondeadas hacia arriba a { $rounding }.
 }
# $units: las del archivo, donde la guía habla en otras.
page-reasons-units = { $units ->
    [inches] Las razones están calculadas en pulgadas.
   *[cm] Las razones están calculadas en cm.
 }
page-numbers-units = { $units ->
    [inches] Los números están calculados en pulgadas.
   *[cm] Los números están calculados en cm.
 }
# $reasons: el encabezamiento de esa parte, como enlace.
page-reasons-told = { $reasons }: se cuenta cerca del final.
page-measurement = Medida
page-length = Longitud
page-comes-from = De dónde sale

## Por qué un número es el que es

# $numbers: un número o una lista de ellos. Lo que no se ve se lee en voz alta detrás.
page-why = Por qué { $numbers }
    .unseen = para la pieza «{ $piece }»
# $told: de dónde sale el número, como una suma.
page-then-rounded = { $told }, después redondeado hacia arriba
page-told-above = véase más arriba
page-told-by-name = pregunta por él por su nombre

## Precauciones

# Las palabras que encabezan una precaución.
page-kind = { $kind ->
    [needle] Agujas y alfileres
    [blade] Cuchillas
    [heat] Plancha caliente
    [flame] Llama
    [steam] Vapor
    [aerosol] Aerosol
    [dye] Tinte
    [chemical] Productos químicos
    [trip] Bajos largos
    [child] Niños
   *[other] Precaución
 }
page-kind-head = { page-kind }.

## Materiales

page-materials-are = Qué comprar y cuánto hace falta de verdad.
page-material = Material
page-buy = Comprar
# En la guía de una clase, que compra junta.
page-given = Toma
page-given-are = Lo que se te entrega y lo que hay en tu montón.
page-cost = Coste
page-need = Necesario
page-need-amount = hacen falta { $amount }
page-for = Para
page-for-use = Para: { $use }

## Corte

page-cut-sizes-are = Las medidas de corte incluyen todos los márgenes: no añadas nada. Las medidas finales son lo que se ve. En su etiqueta, una pieza lleva su número de aquí y una letra para cada ejemplar: 1a, 1b. Si un ejemplar se corta en trozos, 1a·2 es el segundo trozo de 1a.
page-letter = Letra
page-piece-number = N.º
page-piece = Pieza
page-cloth = Tela
page-cut = Corte
page-depth = Alto
page-finished = Final
page-note = Nota
page-cut-size = { $length } de largo, { $depth } de alto

## Pasos

page-check = Comprobación
page-tolerance = Tolerancia
# $place: the letter and number of a sentence that a drawing of the same stands beside, such as C2.
page-drawn-at = Como el dibujo de { $place }.
page-remedy = Si no
# Entre un encabezamiento y lo que sigue en la misma línea.
page-colon = :

## Pie

page-end = Las normas locales y el ejercicio profesional habilitado van por delante. Guía { $key }.
