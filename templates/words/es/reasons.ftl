### De dónde salen los números, para quien no ha visto el archivo de la autora.

## Cómo se llama un número

reason-of-piece = { $measure } { PIECE($piece, case: "of") }
reason-of-material = { $measure } del material ({ $material })
# Un número que pide una operación, por el título de la operación.
reason-for = { $label } para «{ $title }»
# Las medidas de una pieza o de un material; también se dicen solas.
reason-length = largo final
reason-depth = alto final
reason-start-takes = margen al principio
reason-end-takes = margen al final
reason-top-takes = margen arriba
reason-bottom-takes = margen abajo
reason-count = número
reason-hem-round = contorno del bajo
reason-top-to-hem = largo desde arriba
reason-top-round = contorno de arriba
reason-used = longitud usada
reason-used-weight = peso usado

## De dónde sale

reason-same = lo mismo que { $same }
reason-same-of = lo mismo que { $same }, para «{ $title }»
reason-body = una medida del cuerpo
reason-choice = una elección, { $place }
reason-choice-made = una elección hecha para esta guía
# Una línea del archivo de la autora.
reason-place = línea { $line } de { $file }
reason-written = { $asked ->
    [yes] { $shown ->
        [yes] { $placed ->
            [yes] escrito para «{ $title }» como { $formula }, { $place }
           *[no] escrito para «{ $title }» como { $formula }
        }
       *[no] { $placed ->
            [yes] escrito para «{ $title }», { $place }
           *[no] escrito para «{ $title }»
        }
    }
   *[no] { $shown ->
        [yes] { $placed ->
            [yes] escrito como { $formula }, { $place }
           *[no] escrito como { $formula }
        }
       *[no] { $placed ->
            [yes] escrito, { $place }
           *[no] escrito
        }
    }
 }
reason-workroom = lo fija el taller
reason-usual-step = como suelen cortar las tiendas, donde el archivo no lo dice
reason-one = una, pues no se indica cuántas
reason-none = ninguna, pues la repetición no llega hasta ahí
reason-as-worked = tal como se corta y se trabaja
reason-before-drawn = contorno de arriba, antes de recogerlo

# Lo que se compra: el plano de una tela, el hilo y todo lo demás.
reason-plan-proven = el plano de corte: { reason-plan-joins }, demostrado como el más barato de su clase
reason-plan = el plano de corte: { reason-plan-joins }, como mucho un { $share } más caro que el mejor
reason-plan-joins = { $joins ->
    [one] { $joins } unión en { reason-plan-sections }
   *[other] { $joins } uniones en { reason-plan-sections }
 }
reason-plan-sections = { $sections ->
    [one] { $sections } corte
   *[other] { $sections } cortes
 }
reason-needle = lo que cose la aguja en todas las costuras, con un { $share } de pérdida
reason-bobbin = lo que da la canilla en todas las costuras, con un { $share } de pérdida
reason-looper = lo que cose el áncora en todas las costuras, con un { $share } de pérdida
reason-steps-use = lo que gastan los pasos, y la reserva que pide el modelo
reason-square-end = para el extremo que primero se corta recto

# Cuánto dura el trabajo.
reason-time-sewing = { $seams ->
    [one] { $seams } costura de unos { $metres } m al ritmo del taller
   *[other] { $seams } costuras, unos { $metres } m en total, al ritmo del taller
 }
reason-time-handling = { $ends ->
    [0] empezar y rematar { $seams } costuras
   *[other] empezar y rematar { $seams } costuras, y { $ends } grupos de cabos de hilo
 }
reason-time-set-ups = { $changes ->
    [one] { $changes } cambio de máquina, prensatelas, puntada o hilo
   *[other] { $changes } cambios de máquina, prensatelas, puntada o hilo
 }
reason-time-pinning = { $pins } alfileres puestos y quitados
reason-time-gathering = fruncir y repartir unos { $metres } m
reason-time-cutting = { $sections ->
    [0] marcar y cortar unos { $metres } m
   *[other] marcar y cortar unos { $metres } m, con la tela extendida { $sections } veces
 }
reason-time-pressing = planchar unos { $metres } m
reason-time-tended = estar al lado
reason-time-look = el último vistazo a la prenda acabada

# La unidad de los cálculos, cuando la guía emplea otra.
reason-units-cm = cm
reason-units-inches = pulgadas

## Redondeo

reason-rounded = redondeado hacia arriba a { $step }: { $before } pasa a { $after }
# La medida final resulta distinta de la de corte.
reason-rounded-cut = medida de corte redondeada hacia arriba a { $step }: { $before } pasa a { $after }; la final, de { $finished-before }, pasa a { $finished-after }

## Funciones de una fórmula; detrás va un paréntesis con sus números.

reason-max = el mayor de
reason-min = el menor de
reason-round-up = redondeado hacia arriba
reason-round-down = redondeado hacia abajo
reason-round-near = redondeado
