### Lo que todas las técnicas dicen igual. EDGE, PIECE y las longitudes piden aquí sus palabras.
### Los pasos van en imperativo (tú), las comprobaciones son constataciones. El nombre que su autora da a una pieza nunca
### se declina ni concuerda: va detrás de la palabra «la pieza».

## Piezas y bordes

# $label (texto): el nombre que la autora da a la pieza, como «volante». $mark: su número en el plano de corte.
# $form: bare donde no la rodea ninguna frase, short la segunda vez en una frase.
# $case: of para «de la pieza 2», to para «a la pieza 2».
piece = { $form ->
    [bare] { $label }
    [short] { piece-short }
   *[full] { $numbered ->
        [yes] { piece-short } ({ $label })
       *[no] { piece-short }
    }
 }
# Se dicen solo dentro del mensaje de arriba. Sin plano de corte, la pieza no tiene número.
piece-short = { $case ->
    [of] de la { piece-name }
    [to] a la { piece-name }
   *[nominative] la { piece-name }
 }
piece-name = { $numbered ->
    [yes] pieza { $mark }
   *[no] pieza «{ $label }»
 }
piece-alone = { PIECE($piece, form: "bare") }
# $pieces (texto): «de la pieza 2», o varias. $count: cuántas. $case como en `piece`.
edge = { $count ->
    [one] { $case ->
        [of] del { edge-side } { $pieces }
        [to] al { edge-side } { $pieces }
       *[nominative] el { edge-side } { $pieces }
    }
   *[other] { $case ->
        [of] de los { edge-side } { $pieces }
        [to] a los { edge-side } { $pieces }
       *[nominative] los { edge-side } { $pieces }
    }
 }
# Se dice solo dentro del mensaje de arriba.
edge-side = { $count ->
    [one] { $side ->
        [top] borde superior
        [bottom] borde inferior
        [start] borde inicial
       *[end] borde final
    }
   *[other] { $side ->
        [top] bordes superiores
        [bottom] bordes inferiores
        [start] bordes iniciales
       *[end] bordes finales
    }
 }
# Capas que se trabajan como un solo borde, por el nombre que les dio la autora, como «skirt top»; en una guía en otra
# lengua que la de la autora ($named es no), por sus piezas: $pieces (texto) es «de la pieza A y de la pieza 2».
stack = { $named ->
    [yes] { $form ->
        [bare] { $name }
       *[full] { stack-edge } «{ $name }»
    }
   *[no] { $form ->
        [bare] borde unido ({ $pieces })
       *[full] { stack-edge } { $pieces }
    }
 }
stack-layers-of = { $named ->
    [yes] { $form ->
        [bare] capas del borde unido «{ $name }»
       *[full] { stack-plies } del borde unido «{ $name }»
    }
   *[no] { $form ->
        [bare] capas ({ $pieces })
       *[full] { stack-plies } { $pieces }
    }
 }
# Se dicen solo dentro de los mensajes de arriba.
stack-edge = { $case ->
    [of] del borde unido
    [to] al borde unido
   *[nominative] el borde unido
 }
stack-plies = { $case ->
    [of] de las capas
    [to] a las capas
   *[nominative] las capas
 }
side-seam = { $seam ->
    [bright] la costura lateral del hilo de color vivo
   *[plain] la costura lateral
 }
# Una costura en una frase de la autora, en el lugar de {seam}.
own-seam = la costura { PIECE($pieces, case: "of") }

# Números que se siguen: 5–8.
number-range = { $from }–{ $to }

## Números y unidades

unit = { $unit ->
    [mm] { $number } mm
    [cm] { $number } cm
    [m] { $number } m
    [yd] { $number } yd
    [ml] { $number } ml
    [l] { $number } l
   *[in] { $number } in
 }
stitch-inches = puntada de { $number } mm ({ $per-inch } por pulgada)
stitch = puntada de { $number } mm
share = { $number } %
money = { $amount }{ "\u00A0" }{ $currency }
# Varias cosas una tras otra, como en una tabla, y varias constataciones.
row = { $before }, { $after }
clauses = { $before }; { $after }
then = { $before }, luego { $after }

# Cuánto tiempo lleva algo.
duration = { $hours ->
    [0] { $minutes } min
   *[other] { $minutes ->
        [0] { $hours } h
       *[other] { $hours } h { $minutes } min
    }
 }

## Trabajo en piezas iguales

# Detrás del título de un trabajo con varias piezas: $copies.
all-of-it = { $copies ->
    [2] { $runs ->
        [yes] Haz las dos: una frase en las dos y luego la siguiente; donde lo diga, varias en una y luego en la otra.
       *[no] Haz las dos: cada frase con casillas a y b en una y luego en la otra, antes de pasar a la siguiente.
    }
   *[other] { $runs ->
        [yes] Haz las { $copies }: una frase marcada de la a a la { $last } en todas y luego la siguiente; donde lo diga, varias en una y luego en la siguiente.
       *[no] Haz las { $copies }: cada frase marcada de la a a la { $last } en una tras otra, antes de pasar a la siguiente.
    }
 }
# El remedio de una frase, palabra por palabra el de una anterior de la misma operación.
remedy-again = Como en { $sentence }.
# Detrás de la primera de varias frases que se hacen todas en una pieza antes de la siguiente.
run-of-sentences = { $copies ->
    [2] frases { $first } a { $last } en una, luego en la otra
   *[other] frases { $first } a { $last } en una, luego en la siguiente
 }
# Detrás de un paso que se hace en cada unión entre los trozos de una tira.
chain-joins = { $joins ->
    [one] { $joins } unión
   *[other] { $joins } uniones
 }

## Lo que sujeta los bordes

pin = { $hold ->
    [clips] sujeta con pinzas
   *[pins] prende con alfileres
 }
pin-start = { $hold ->
    [clips] Sujeta con pinzas
   *[pins] Prende con alfileres
 }

## Dos bordes que se cosen uno a otro

# Solo dentro de otros mensajes: una pieza que se ensancha es más estrecha o más ancha en el borde cortado que en la línea de costura.
marks-on-line = { $flared ->
    [yes] { " " }En la línea de costura son { $on-line }.
   *[no] { "" }
 }
# $marked: uno de los dos bordes.
mark-parts-ring = { $parts ->
    [8] Marca los octavos { EDGE($marked, case: "of") } por las dos caras, cada { $part }, la primera marca en { side-seam }.{ marks-on-line }
   *[4] Marca los cuartos { EDGE($marked, case: "of") } por las dos caras, cada { $part }, la primera marca en { side-seam }.{ marks-on-line }
 }
mark-parts-flat = { $parts ->
    [8] Marca los octavos { EDGE($marked, case: "of") } por las dos caras, cada { $part }.{ marks-on-line }
   *[4] Marca los cuartos { EDGE($marked, case: "of") } por las dos caras, cada { $part }.{ marks-on-line }
 }
# Se dice solo dentro de otros mensajes: dónde se juntan primero los dos bordes.
match-places = { $places ->
    [bright] las costuras laterales, las del hilo de color vivo, y las marcas
    [some] las costuras laterales, la del hilo de color vivo si lo hay, y las marcas
    [ends] los dos extremos y las marcas
   *[plain] las costuras laterales y las marcas
 }
# «12 alfileres», los que pide un borde.
pins-needed = { $hold ->
    [clips] { $pins ->
        [one] { $pins } pinza
       *[other] { $pins } pinzas
    }
   *[pins] { $pins ->
        [one] { $pins } alfiler
       *[other] { $pins } alfileres
    }
 }
# $on-top: el borde que va encima en la máquina; por ahí se sacan los alfileres.
match-and-pin = { $copies ->
    [one] Haz coincidir { match-places } y { pin } primero en esos puntos, por el lado { PIECE($on-top, case: "of") }. Después { pin } cada { $spacing } entre ellos: alrededor de { pins-needed } en total.
   *[other] Haz coincidir { match-places } y { pin } primero en esos puntos, por el lado { PIECE($on-top, case: "of") }. Después { pin } cada { $spacing } entre ellos: alrededor de { pins-needed } en cada borde.
 }

## Extremos que una costura cierra en aro

# $pieces: los pisos que atraviesa la costura; $tiers: si son varios.
close-fold = { $tiers ->
    [yes] Dobla { PIECE($pieces) } { faces-together } de modo que los extremos se junten, lo de arriba con lo de arriba, y { pin } los extremos a lo largo de { $length }. { tiers-meet }
   *[no] Dobla { PIECE($pieces) } { faces-together } de modo que los dos extremos se junten, lo de arriba con lo de arriba, y { pin } los extremos a lo largo de { $length }.
 }
    .check = No hay nada retorcido: queda plano como una banda.
    .remedy = Si está retorcido, suelta un extremo y dale la vuelta.
# Dónde cuelga una nesga.
gore-place = { $place ->
    [front] delantero
    [back] espalda
   *[side] costado
 }
# Se dice solo dentro del mensaje siguiente: una nesga con su número en la fila.
close-row-gore = n.º { $number } { gore-place }
# Nesgas con un lugar propio. $at-side: si la costura queda en el costado a cualquier altura.
close-row = Pon las { $copies } piezas { PIECE($pieces, case: "of") } una junto a otra, derecho arriba, extremos estrechos lejos de ti, de izquierda a derecha: { $order }.
    .check = La última se cose a la primera.
close-row-seam = { $at-side ->
    [yes] Escribe con jaboncillo en cada una su número junto a su nombre. La costura entre la n.º { $after } y la n.º { $next } es la costura lateral, a la izquierda de quien lleva la prenda.
   *[no] Escribe con jaboncillo en cada una su número junto a su nombre. La costura entre la n.º { $after } y la n.º { $next } es la más cercana al costado izquierdo de quien lleva la prenda: todo se mide desde ella.
 }
# Nesgas cuyos lados se encuentran con largos desiguales.
close-unlike-by = la nesga { $longer ->
    [front] delantera
    [back] de la espalda
   *[side] del costado
 }, { $by } más que la { $shorter ->
    [front] delantera
    [back] de la espalda
   *[side] del costado
 }
close-unlike-trim = En el borde inferior sobresalen, porque sus lados son más sesgados: { $unlike }. Recórtalas a ras de la vecina, hasta perderse a { $run } del lado.
    .check = Todos los bordes superiores están a la misma altura, y abajo ya no sobresale nada.
close-unlike-ease = Cuanto más sesgado es un lado, más largo es: { $unlike }. Prende primero a la misma altura los bordes superiores y los bajos, y embebe el resto entre ellos.
    .check = Bordes superiores y bajos están a la misma altura, y no hay ningún pliegue prendido.
# $copies paños forman un solo aro.
close-panels = { $copies ->
    [2] { $tiers ->
        [yes] Coloca los dos paños { PIECE($pieces, case: "of") } { faces-together }, lo de arriba con lo de arriba, y { pin } los dos bordes laterales, { $length } cada uno. { tiers-meet }
       *[no] Coloca los dos ejemplares { PIECE($pieces, case: "of") } { faces-together }, lo de arriba con lo de arriba, y { pin } los dos bordes laterales, { $length } cada uno.
    }
   *[other] { $tiers ->
        [yes] Coloca cada paño { PIECE($pieces, case: "of") } sobre el siguiente, { faces-together } y lo de arriba con lo de arriba, y el último sobre el primero. { pin-start } los { $copies } pares de lados, { $length } cada uno. { tiers-meet }
       *[no] Coloca cada ejemplar { PIECE($pieces, case: "of") } sobre el siguiente, { faces-together } y lo de arriba con lo de arriba, y el último sobre el primero. { pin-start } los { $copies } pares de lados, { $length } cada uno.
    }
 }
    .check = Todos los bordes superiores quedan del mismo lado y el aro no está retorcido.
    .remedy = Suelta el que está al revés y dale la vuelta.
# Se dicen solo dentro de otros mensajes.
faces-together = { $faces ->
    [wrong] revés con revés
   *[right] derecho con derecho
 }
tiers-meet = Haz coincidir exactamente las costuras entre los pisos, con los márgenes hacia arriba, y { pin } primero ahí.

## La máquina

# En mm en todos los talleres, como vienen graduadas las máquinas.
zigzag-set = Pon la máquina en zigzag, { $zigzag-wide } mm de ancho y { $zigzag-long } mm de largo.

## La etiqueta que advierte del fuego

# Las palabras son las de la ley, en la lengua del país donde se lleva la prenda.
fire-label-write = Escribe MANTENER ALEJADO DEL FUEGO en dos líneas en { $label-tape } de cinta de algodón, en mayúsculas rojas de { $letters } de alto como mínimo, con un rotulador que no se vaya al lavar. Deja libre, de un dedo de ancho, el extremo que va cosido.

## Pasadas de puntada larga de las que se tira

rows-set-machine = Prepara la máquina para fruncir: la puntada más larga, { $long-stitch } mm o cerca, y la tensión superior un número por debajo del de las costuras. Conserva apuntado el número de las costuras.
# Se dice solo dentro de otros mensajes. $per-run: cuántas de las partes marcadas abarca un tramo.
rows-runs = { $in-runs ->
    [yes] { $per-run ->
        [one] Cósela en { $runs } tramos, uno de cada marca a la siguiente. No remates y deja colgando { $tail } de hilo en los dos extremos de cada tramo.
       *[other] { $parts ->
            [8] Cósela en { $runs } tramos de { $per-run } octavos cada uno, de marca a marca. No remates y deja colgando { $tail } de hilo en los dos extremos de cada tramo.
           *[4] Cósela en { $runs } tramos de { $per-run } cuartos cada uno, de marca a marca. No remates y deja colgando { $tail } de hilo en los dos extremos de cada tramo.
        }
    }
   *[no] Cósela de un tirón. No remates y deja colgando { $tail } de hilo en los dos extremos.
 }
rows-wind-tails = { $in-runs ->
    [yes] En un extremo de cada tramo, clava un alfiler atravesado y enrolla en él los cabos de hilo en forma de ocho.
   *[no] En un extremo de la pasada, clava un alfiler atravesado y enrolla en él los cabos de hilo en forma de ocho.
 }
rows-set-back = Vuelve a poner la puntada en { $seam-stitch } mm y la tensión superior en el número que apuntaste.
# Las pasadas se ven: sus cabos van al revés.
rows-tails-under = { $in-runs ->
    [yes] Quita los alfileres que sujetan los cabos de hilo. En los dos extremos de cada tramo, lleva al revés los hilos superiores, anuda cada uno con su hilo de la canilla y corta los cabos a { $knot }.
   *[no] Quita los alfileres que sujetan los cabos de hilo. En los dos extremos, lleva al revés los hilos superiores, anuda cada uno con su hilo de la canilla y corta los cabos a { $knot }.
 }

## Cabos de hilo, cuando los alfileres ya sujetan el borde

tails-off-machine = { $in-runs ->
    [yes] Quita los alfileres que sujetan los cabos de hilo. En los dos extremos de cada tramo, anuda cada hilo superior con su hilo de la canilla y corta los cabos a { $knot }.
   *[no] Quita los alfileres que sujetan los cabos de hilo. En los dos extremos de cada pasada, anuda cada hilo superior con su hilo de la canilla y corta los cabos a { $knot }.
 }
tails-off-hand = { $in-runs ->
    [yes] Quita los alfileres que sujetan los cabos de hilo. En los dos extremos de cada tramo, anuda los cabos entre sí y córtalos a { $knot }.
   *[no] Quita los alfileres que sujetan los cabos de hilo. En los dos extremos de las pasadas, anuda los cabos entre sí y córtalos a { $knot }.
 }

## Tela cortada en redondo

# $fall: desde el borde superior del aro, tal como cuelga, hasta su borde inferior sin rematar.
ring-drop-worn = Cuelga la prenda por la cintura toda una noche: la tela cortada en redondo se descuelga. Mide { $fall } hacia abajo desde la costura superior { PIECE($ring-piece, case: "of") }, todo alrededor, y corta lo que cuelgue más abajo.
    .check = { EDGE($ring-edge, at: "start") } cae a nivel.
# Todavía no está cosida a nada.
ring-drop-alone = Cuelga { PIECE($ring-piece) } por su borde superior toda una noche: la tela cortada en redondo se descuelga. Mide { $fall } hacia abajo desde ese borde, todo alrededor, y corta lo que cuelgue más abajo.
    .check = { ring-drop-worn.check }

## La plancha

# $own (texto): el nombre que la autora da a una fibra que aquí no tiene ninguno.
fibre = { $fibre ->
    [cotton] algodón
    [linen] lino
    [wool] lana
    [silk] seda
    [polyester] poliéster
    [viscose] viscosa
    [nylon] nailon
    [acetate] acetato
    [own] { $own }
   *[unknown] una fibra desconocida
 }
# Se dice solo en los mensajes de abajo. $supply: aquello cuya fibra nadie ha dicho.
iron-unknown = { $supply }, de fibra desconocida
# El calor es el de un adorno, una cremallera u otra tela, no el de la tela que se plancha.
iron-fibre-of = { $fibre } ({ $supply } es lo que menos calor aguanta aquí)
# Puntos de las etiquetas de cuidado: ISO 3758.
iron-set-three-dots = Pon la plancha para { $fibre }: tres puntos, 200 °C, con vapor. Pruébala antes en un retal.
iron-set-two-dots = Pon la plancha para { $fibre }: dos puntos, 150 °C, con un paño de planchar. Pruébala antes en un retal.
iron-set-one-dot = Pon la plancha para { $fibre }: un punto, 110 °C, sin vapor, con un paño de planchar seco. Pruébala antes en un retal.

## El hilo de color vivo, que distingue una costura vertical de las demás

# Se dice solo dentro de otras frases: la costura que lleva una abertura o el hilo vivo.
seam-named = { $which ->
    [numbered] la costura entre la n.º { $after } y la n.º { $next }
    [any] una de las costuras
   *[only] la costura
 }
tag-seam = { $opened ->
    [yes] Por el derecho, anuda un hilo de color vivo en la costura que lleva la abertura, debajo de ella, a { $down } del borde superior: es la costura lateral desde la que se miden todas las marcas.
   *[no] { $which ->
        [numbered] Por el derecho, anuda un hilo de color vivo en la costura entre la n.º { $after } y la n.º { $next }, { $down } por debajo de su extremo superior: es la costura lateral desde la que se miden todas las marcas.
        [any] Por el derecho, anuda un hilo de color vivo en una de estas costuras, { $down } por debajo de su extremo superior: es la costura lateral desde la que se miden todas las marcas.
       *[only] Por el derecho, anuda un hilo de color vivo en esta costura, { $down } por debajo de su extremo superior: es la costura lateral desde la que se miden todas las marcas.
    }
 }
    .check = { $low ->
        [yes] Queda donde la costura está cosida, con su nudo por el derecho.
       *[no] Queda más cerca del borde superior que del inferior, con su nudo por el derecho: de ahí se podrá sacar después.
     }

## Una abertura descosida en una costura vertical

open-seam-press = Abre con la plancha la costura vertical que cerró el aro { PIECE($band, case: "of") }.
# $opened: entre los dos pespuntes de una jareta, o entre el doblez y el pespunte.
open-seam = { $opened ->
    [rows] Elige la mitad que quedará por dentro y préndele una etiqueta. En esa mitad, abre con el abrecosturas la costura vertical que cerró el aro { PIECE($band, case: "of") }, entre los dos pespuntes y en ningún otro sitio.
   *[row] En la mitad de la jareta que queda por dentro, abre con el abrecosturas la costura vertical { PIECE($band, case: "of") } entre el doblez y el pespunte, { $channel }, y en ningún otro sitio.
 }
    .check = Un imperdible entra y encuentra su camino por la jareta. La costura de la mitad exterior está entera.
    .remedy = Si se ha abierto más, ciérrala a mano hasta los pespuntes.
open-seam-bars = Da a mano tres puntadas atravesando la costura en cada extremo de la abertura, muy cerca de los pespuntes.
    .check = Al tirar no se abre más.

## Los agujeros para las puntas de un cordón

# Se dicen solo dentro de otros mensajes.
cord-holes = { $kind ->
    [buttonholes] ojales
    [worked-eyelets] ojetes
   *[metal-eyelets] ojetes
 }
cord-hole = { $kind ->
    [buttonholes] ojal
    [worked-eyelets] ojete
   *[metal-eyelets] ojete
 }

## Una línea a través de una pieza, medida desde un borde tal como está ahora

# Solo dentro de otros mensajes.
line-place = { $line-from ->
    [top-seam] { $from-edge } por debajo de la costura de arriba
    [top-cut] { $from-edge } por debajo del borde superior cortado
    [bottom-seam] { $from-edge } por encima de la costura de abajo
    [bottom-cut] { $from-edge } por encima del borde inferior cortado
   *[bottom] { $from-edge } por encima de su borde inferior
 }
line-across = Traza una línea por el derecho { PIECE($on, case: "of") }, { line-place }.
    .check = Medida cada ancho de mano, la distancia es de { $from-edge }.
    .tolerance = { $level-off } de más o de menos
    .remedy = Borra lo que se desvíe y vuelve a trazarlo.
