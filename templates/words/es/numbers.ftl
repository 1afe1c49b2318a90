### Qué es un número de un cuaderno, en la tabla que lo tiene para cada talla, por el nombre que su mensaje tiene para el valor.
### $name (texto): ese nombre. $kind (texto): qué clase de número es.

number-is = { $name ->
    [above] distancia por encima
    [across] en línea recta
    [after] desde la anterior
    [air-far] distancia del aire caliente
    [all-loops] número de trabillas
    [along] a lo largo del arco
    [apart] separación
    [around] todo alrededor
    [at] de la esquina a una marca
    [back] detrás
    [bar] largo de la presilla
    [bar-in] la barra, desde su borde
    [basting] puntada de hilván
    [before] desde el delantero
    [begins] comienzo
    [behind] parte de detrás
    [below] distancia por debajo
    [beneath] extremo de debajo
    [beside] distancia al lado
    [beyond] distancia más allá
    [bobbin-thread] hilo de las canillas
    [bobbins] cuántas canillas
    [bone-length] largo de la varilla
    [both-sides] los dos lados juntos
    [broad] extremo ancho
    [button] ancho del botón
    [button-in] el botón, desde el borde
    [buttonhole] largo del ojal
    [by] cuánto más largo
    [casing] la jareta, todo alrededor
    [catch] largo que se sujeta
    [channel] ancho del canal
    [channels] número de canales
    [clear] distancia que se deja
    [clip-short] hasta la costura
    [clips] de un piquete a otro
    [close] junto al borde
    [cloth] { $kind ->
    [shorter] cuánto más corto
    [snip] profundidad de un piquete
    [snips] de un piquete a otro
        [weight] peso de la tela
       *[other] tela en plano
     }
    [cloth-part] tela en plano de marca a marca
    [copies] cuántas iguales
    [cord-long] largo del cordón
    [corner] desde la costura, en la esquina
    [count] cuántos
    [cover] más allá de la costura
    [cross] la cruz, desde el extremo
    [cut] largo para cortar
    [cut-depth] alto para cortar
    [deep] alto
    [deepest] punto más bajo
    [degrees] ángulo en grados
    [depth] alto
    [diagonal] las dos diagonales
    [dots] puntos por fila
    [down] distancia hacia abajo
    [drawn] { $kind ->
        [length] recogido
       *[other] cuántos están dibujados
     }
    [drawn-in] recogido
    [ease] de menos en total
    [edge] desde el borde
    [edge-off] tolerancia del borde
    [edge-stitch] desde el doblez
    [end] remetido en cada extremo
    [ends] en los extremos
    [every] de uno a otro
    [fall] largo desde la costura
    [far] hasta la esquina lejana
    [farthest] último centro, más allá del borde
    [fast] para la punta fija
    [fell] ancho del doblez
    [finish] para rematar un extremo
    [first] el primero
    [first-row] primera pasada desde el borde
    [first-turn] primera vuelta
    [flat] en plano
    [fold] para remeter
    [foot] al final
    [from-edge] desde el borde
    [from-fold] desde el doblez
    [from-seam] desde la costura
    [front] delante
    [gap] la abertura
    [gap-end] final de la abertura
    [gap-from] comienzo de la abertura
    [gap-to] final de la abertura
    [gives] largo de la tira
    [gores] número de nesgas
    [grams] peso en gramos
    [half] la mitad
    [half-apart] del extremo al primero
    [half-back] a cada lado, detrás
    [half-fast] doblado en la punta
    [half-finish] cada doblez del extremo
    [half-front] a cada lado, delante
    [half-hem] cada doblez de la punta
    [half-over] estirada, en plano
    [half-shown] la mitad de lo que se ve
    [hangs] lo que cuelga por debajo
    [heading] la cabecilla
    [hem] en el bajo
    [high] alto
    [hole] el agujero
    [hook-in] el gancho, desde su borde
    [in-at-foot] hacia dentro al final
    [inner] arco interior
    [inside] desde el borde, por dentro de la línea
    [intake] lo que recoge cada una
    [joins] número de uniones
    [knot] el nudo, desde el borde
    [label-tape] cinta de la etiqueta
    [lap] el solape
    [layer-deep] alto de una capa
    [layers-over] las capas, de más
    [left] lo que queda
    [lefts] cada cinta, recogida
    [leg] cada lado hasta el vértice
    [length] largo a lo largo del borde
    [letters] alto de las letras
    [lies] el borde tal como está cortado
    [line] la línea, sobre el borde
    [lines] número de tiras
    [lining-over] el forro, de más
    [liquid] cantidad de líquido
    [long] largo
    [long-stitch] puntada larga
    [longest] la línea más larga
    [loop] lazo de goma
    [loops] número de trabillas
    [lower] en el borde inferior
    [many] cuántas de ellas
    [margin] desde los bordes
    [mark] hasta la marca { $which }
    [marks] del comienzo a cada marca
    [middle] del extremo al centro
    [more] { $kind ->
        [length] de más
       *[other] cuántos más
     }
    [narrow] extremo estrecho
    [near] hasta la esquina cercana
    [near-fold] junto al doblez
    [needed] largo que se cose
    [next] la siguiente
    [now] la abertura tal como está
    [number] cuál
    [on-line] de marca a marca en la línea de costura
    [open] lo que queda abierto
    [open-at-hem] abierto sobre el bajo
    [opening] la abertura
    [others] cuántas otras
    [out] suelta hasta
    [outer] arco exterior
    [over] estirada hasta
    [overlap] el solape
    [panels] número de paños
    [part] de marca a marca
    [patch-left] lo que queda del cuadrado
    [parts] número de partes
    [past] más allá
    [patch] lado del refuerzo
    [per-run] partes por tramo
    [pins] alfileres, más o menos
    [places] número de lugares
    [pleats] número de pliegues
    [plies] número de capas
    [quarter] un cuarto
    [radius] radio
    [ratio] tela por borde
    [reach] hasta el botón
    [rest] distancia de la costura que sigue
    [ribbon-length] largo de la cinta
    [rings] número de anillas
    [roll] grueso del rollo
    [round] todo alrededor
    [round-top] contorno de arriba
    [row] la pasada, desde el borde
    [rows] número de filas
    [run] desde el lado
    [run-out] donde acaba
    [runs] número de tramos
    [seam-stitch] puntada de costura
    [seam-width] ancho de costura
    [second] segunda vuelta
    [second-row] segunda pasada desde el borde
    [second-turn] segunda vuelta
    [seconds] segundos
    [segment] trozo { $which }
    [sewn] largo cosido
    [shift] desplazamiento del centro
    [short] { $kind ->
        [length] borde fruncido
       *[other] puntada corta
     }
    [short-part] cada parte, fruncida
    [shortest] la línea más corta
    [shown] lo que se ve de cada uno
    [shows] lo que se ve
    [side] a los lados
    [slant] a lo largo del sesgo
    [slit] el corte
    [slots] de ojal a ojal
    [space] espacio
    [spacing] de alfiler a alfiler
    [spare] para probarla
    [stacked] cuántos en total
    [stay] la pasada que lo sujeta
    [stitch] puntada
    [stitched] largo cosido
    [stitches] número de puntadas
    [stop] el tope, bajo el borde
    [stretch] tramo que queda
    [tail] cabo de hilo
    [taken] lo que se recoge
    [tape-length] largo de la cinta
    [tape-each] largo de cada cinta
    [tapes] número de cintas
    [thick] grueso
    [times] cuántas veces
    [to-come] margen que sigue
    [tie-long] largo de la lazada
    [to-hem] del borde superior al bajo
    [top] arriba
    [trial] tira de prueba
    [trial-short] la prueba, recogida
    [triangle] lado del triángulo
    [trim] margen que queda
    [tucks] número de lorzas
    [turn] el doblez
    [turn-width] ancho que se dobla
    [twice] hasta la segunda línea
    [under] remetido
    [understitch] junto a la costura
    [united-states] como mucho en Estados Unidos
    [up] recogido en alto
    [upper] en el borde superior
    [waist] la cintura
    [whole] el largo unido
    [wide] ancho
    [width] ancho
    [zigzag-long] largo del zigzag
    [zigzag-wide] ancho del zigzag
   *[other] { number-of-kind }
 }
# Donde un número no tiene nombre propio.
number-of-kind = { $kind ->
    [stitch] largo de puntada
    [count] cuántos
    [share] parte
    [ratio] proporción
    [weight] peso
    [volume] volumen
    [money] precio
   *[length] largo
 }
