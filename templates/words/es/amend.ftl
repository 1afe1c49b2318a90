### Lo que se midió por el camino, qué hacer con ello, y la guía a partir de ahí.
### `.step` dice un mensaje al principio de un paso; el mensaje mismo está en una lista.

## Lo que se midió. $copy: cuál de varias piezas iguales, 0 si es la única.

amend-cloth = ancho de la tela «{ $cloth }»
    .step = El ancho de la tela «{ $cloth }»
amend-bolt = el largo de la tela ({ $cloth })
    .step = El largo de la tela ({ $cloth })
amend-shrinkage = el encogimiento de la tela ({ $cloth })
    .step = El encogimiento de la tela ({ $cloth })
amend-elastic = la goma elástica ({ $elastic }), el aro en reposo
    .step = La goma elástica ({ $elastic }), el aro en reposo
amend-edge = { $copy ->
    [0] { EDGE($edge) }
   *[other] { EDGE($edge) }, ejemplar { $letter }
 }
    .step = { $copy ->
        [0] { EDGE($edge, at: "start") }
       *[other] { EDGE($edge, at: "start") }, ejemplar { $letter },
     }
# $stack: el nombre que la autora dio a las capas que se trabajan como un solo borde.
amend-stack = { $copy ->
    [0] el borde de las capas «{ $stack }»
   *[other] el borde de las capas «{ $stack }», ejemplar { $letter }
 }
    .step = { $copy ->
        [0] El borde de las capas «{ $stack }»
       *[other] El borde de las capas «{ $stack }», ejemplar { $letter },
     }
amend-ring = { $copy ->
    [0] { PIECE($piece) }, todo alrededor
   *[other] { PIECE($piece) }, todo alrededor, ejemplar { $letter }
 }
    .step = { $copy ->
        [0] { PIECE($piece, at: "start") }, todo alrededor,
       *[other] { PIECE($piece, at: "start") }, todo alrededor, ejemplar { $letter },
     }
amend-ring-edge = { $along ->
    [cut] { $copy ->
        [0] { EDGE($edge) }, todo alrededor por el borde cortado
       *[other] { EDGE($edge) }, todo alrededor por el borde cortado, ejemplar { $letter }
    }
    [line] { $copy ->
        [0] { EDGE($edge) }, todo alrededor por la línea de costura
       *[other] { EDGE($edge) }, todo alrededor por la línea de costura, ejemplar { $letter }
    }
   *[no] { $copy ->
        [0] { EDGE($edge) }, todo alrededor
       *[other] { EDGE($edge) }, todo alrededor, ejemplar { $letter }
    }
 }
    .step = { $along ->
        [cut] { $copy ->
            [0] { EDGE($edge, at: "start") }, todo alrededor por el borde cortado,
           *[other] { EDGE($edge, at: "start") }, todo alrededor por el borde cortado, ejemplar { $letter },
        }
        [line] { $copy ->
            [0] { EDGE($edge, at: "start") }, todo alrededor por la línea de costura,
           *[other] { EDGE($edge, at: "start") }, todo alrededor por la línea de costura, ejemplar { $letter },
        }
       *[no] { $copy ->
            [0] { EDGE($edge, at: "start") }, todo alrededor,
           *[other] { EDGE($edge, at: "start") }, todo alrededor, ejemplar { $letter },
        }
     }
amend-cut-length = { $copy ->
    [0] { PIECE($piece) }, largo de corte
   *[other] { PIECE($piece) }, largo de corte, ejemplar { $letter }
 }
    .step = { $copy ->
        [0] { PIECE($piece, at: "start") }, largo de corte,
       *[other] { PIECE($piece, at: "start") }, largo de corte, ejemplar { $letter },
     }
amend-cut-depth = { $copy ->
    [0] { PIECE($piece) }, alto de corte
   *[other] { PIECE($piece) }, alto de corte, ejemplar { $letter }
 }
    .step = { $copy ->
        [0] { PIECE($piece, at: "start") }, alto de corte,
       *[other] { PIECE($piece, at: "start") }, alto de corte, ejemplar { $letter },
     }

## Cuánto mide

amend-length = { $length }
# Nadie lo midió: se frunció al largo de la primera guía.
amend-length-assumed = { $length } según la primera guía
amend-share = { $share }
amend-as-planned = como estaba previsto
amend-short = debía medir { $wanted }, le faltan { $gap } ({ $share }{ "\u00A0" }%)
amend-long = debía medir { $wanted }, le sobran { $gap } ({ $share }{ "\u00A0" }%)
amend-share-reckoned = { $share } previsto
amend-bolt-enough = { $wanted } necesarios, { $gap } de reserva

## Qué hacer. $gap: cuánto falta o sobra. $metre: cuánto de ello toca a cada metro.

# Solo dentro de los mensajes de abajo: cuánto de la diferencia toca a cada metro o yarda.
amend-each = { $per ->
    [yard] { $metre } en cada yarda
   *[metre] { $metre } en cada metro
 }
amend-none = dentro del redondeo: sigue
    .step = Está dentro del redondeo: sigue.
amend-ease = embebe { $gap } al coser, { amend-each }
    .step = Embebe { $gap } al coser, { amend-each }.
amend-trim = acorta { $gap } el borde al que se cose, hasta { $length }
    .step = Acorta { $gap } el borde al que se cose, hasta { $length }.
amend-choose = elige: embebe { $gap }, { amend-each }, o afloja otro tanto los frunces
    .step = Elige: embebe { $gap }, { amend-each }, o afloja otro tanto los frunces.
amend-let-out = afloja los frunces { $gap }, { amend-each }
    .step = Afloja los frunces { $gap }, { amend-each }.
amend-closer = aprieta los frunces { $gap }, { amend-each }
    .step = Aprieta los frunces { $gap }, { amend-each }.
amend-pleats-out = suelta { $gap } de los pliegues en total, lo mismo de cada uno
    .step = Suelta { $gap } de los pliegues en total, lo mismo de cada uno.
amend-pleats-in = mete { $gap } más en los pliegues en total, lo mismo en cada uno
    .step = Mete { $gap } más en los pliegues en total, lo mismo en cada uno.
amend-row-out = afloja el hilo de la pasada { $gap }, { amend-each }
    .step = Afloja el hilo de la pasada { $gap }, { amend-each }.
amend-row-in = tira más del hilo de la pasada, { $gap }, { amend-each }
    .step = Tira más del hilo de la pasada, { $gap }, { amend-each }.
amend-bolt-short = comprar { $gap } más antes de cortar, o elegir una forma de cortar con más uniones
    .step = Compra { $gap } más antes de cortar, o elige una forma de cortar con más uniones.
amend-bolt-buy = comprar { $gap } más antes de cortar
    .step = Compra { $gap } más antes de cortar.
amend-cut-anew = el corte se planea de nuevo
    .step = El corte se planea de nuevo.
amend-follows = se queda así, y las medidas siguientes se ajustan a ello
    .step = Se queda así, y las medidas siguientes se ajustan a ello.
amend-level-it = córtalo a { $length }, por su borde inferior, a ras de las otras copias a las que se cose
    .step = Córtalo a { $length }, por su borde inferior, a ras de las otras copias a las que se cose.
amend-level-others = corta por el borde inferior las otras copias a las que se cose, a ras de esta, a { $length }
    .step = Corta por el borde inferior las otras copias a las que se cose, a ras de esta, a { $length }.
amend-follows-at-hem = se cuenta como corto por el borde inferior, y las medidas que siguen se ajustan a ello
    .step = Se cuenta como corto por el borde inferior, y las medidas que siguen se ajustan a ello.
# Uno de dos iguales, como un bolsillo.
amend-follows-pair = se queda así, y sus medidas se ajustan; para que haga juego con el otro, corta también aquel a { $length }
    .step = Se queda así, y sus medidas se ajustan. Para que haga juego con el otro, corta también aquel a { $length }.
amend-cut-to = córtalo a { $wanted }
    .step = Córtalo a { $wanted }.
amend-sewn = ya está cosido: sigue
    .step = Ya está cosido: sigue.
amend-go-on = sigue
    .step = Sigue.

## La guía a partir de aquí

# Detrás del nombre de quien tiene la guía.
amend-wearer = { $whose }, a partir de aquí según lo medido
amend-part = Según lo medido
amend-title = Corregir lo que se midió
amend-aim = Todo mide aquello con lo que cuentan los pasos siguientes.
# $what, $measured, $off y $todo son mensajes de arriba.
amend-step = { $what } mide { $measured }: { $off }. { $todo }
amend-step-gathers = { $what } mide { $measured }: { $off }. { $todo }
    .check = Cada cuarto mide { $quarter }, los cuatro { $whole }.
    .remedy = Reparte de nuevo los frunces de marca a marca.
amend-step-choose = { $what } mide { $measured }: { $off }. { $todo }
    .check = Si sueltas el fruncido, cada cuarto mide { $quarter }, los cuatro { $whole }. Si lo embebes, déjalo; con la costura prendida, ninguna tela queda floja entre los alfileres.
    .remedy = Vuelve a repartir el fruncido de marca a marca.
amend-step-row = { $what } mide { $measured }: { $off }. { $todo }
    .check = { amend-step-gathers.check }
    .remedy = Alisa la tela a lo largo de la pasada de marca a marca.
# Dos bordes que se cosen uno a otro y ya no miden lo mismo; $copy como arriba. $metre: de ello, en cada metro.
amend-shared = { $alike ->
    [yes] { $copy ->
        [0] { EDGE($longer) }, { $long }, mide ahora { $gap } más que { EDGE($shorter) }, { $short }: marca cada uno en partes de su propia longitud y repártelo por igual al coserlos, { amend-each }
       *[other] ejemplar { $letter }: { EDGE($longer) }, { $long }, mide ahora { $gap } más que { EDGE($shorter) }, { $short }: marca cada uno en partes de su propia longitud y repártelo por igual al coserlos, { amend-each }
    }
   *[no] { $copy ->
        [0] { EDGE($longer) } mide ahora { $gap } de más para { EDGE($shorter) }: repártelo por igual al coserlos, { amend-each }
       *[other] ejemplar { $letter }: { EDGE($longer) } mide ahora { $gap } de más para { EDGE($shorter) }: repártelo por igual al coserlos, { amend-each }
    }
 }
amend-step-shared = { $alike ->
    [yes] { $copy ->
        [0] { EDGE($longer, at: "start") }, { $long }, mide ahora { $gap } más que { EDGE($shorter) }, { $short }. Marca cada uno en partes de su propia longitud y, al coser los dos, repártelo por igual de alfiler a alfiler, { amend-each }.
       *[other] En el ejemplar { $letter }: { EDGE($longer) }, { $long }, mide ahora { $gap } más que { EDGE($shorter) }, { $short }. Marca cada uno en partes de su propia longitud y, al coser los dos, repártelo por igual de alfiler a alfiler, { amend-each }.
    }
   *[no] { $copy ->
        [0] { EDGE($longer, at: "start") } mide ahora { $gap } de más para { EDGE($shorter) }. Al coser los dos, repártelo por igual de alfiler a alfiler, { amend-each }.
       *[other] En el ejemplar { $letter }: { EDGE($longer) } mide ahora { $gap } de más para { EDGE($shorter) }. Al coser los dos, repártelo por igual de alfiler a alfiler, { amend-each }.
    }
 }
    .check = Ningún pliegue queda cogido en la costura.
    .remedy = Descose el ancho de una mano, extiende la tela y vuelve a coser.
# Trabajo que unos ejemplares tienen para ellos solos: detrás de su título, y donde se hace en varios. $letters: de esos
# ejemplares; $count: cuántos. $own: si sus medidas no son las previstas.
amend-copies-title = { $own ->
    [yes] { $count ->
        [one] { $title }: ejemplar { $letters }, con sus propias medidas
       *[other] { $title }: ejemplares { $letters }, con sus propias medidas
    }
   *[no] { $count ->
        [one] { $title }: ejemplar { $letters }
       *[other] { $title }: ejemplares { $letters }
    }
 }
amend-some-of-it = { $runs ->
    [yes] Haz estos { $count }: { $letters }. Haz una frase en cada uno antes de pasar a la siguiente; donde lo diga, haz varias en uno y luego en el siguiente.
   *[no] Haz estos { $count }: { $letters }. Haz cada frase en una pieza tras otra, antes de pasar a la frase siguiente.
 }

## El informe

amend-report = { $title }, { $whose }, según lo medido
amend-report-line = { $what }: { $measured }; { $off }
amend-same = nada cambia en los pasos que siguen
amend-same-copy = nada cambia para el ejemplar { $letter }
amend-same-others = nada cambia para los demás ejemplares
amend-same-meet = nada cambia a partir de donde se juntan los ejemplares
amend-changes = lo que cambia en los pasos que siguen:
amend-changes-copy = lo que cambia para el ejemplar { $letter }:
amend-changes-others = lo que cambia para los demás ejemplares:
amend-changes-meet = lo que cambia a partir de donde se juntan los ejemplares:
