### Cómo llama una guía a las medidas del cuerpo y a los números de un archivo, por los nombres que les dan los archivos.
### $own (texto): el nombre tal como está en el archivo, donde no es ninguno de estos.

name-body = { $name ->
    [waist-girth] contorno de cintura
    [hip-girth] contorno de cadera
    [chest-girth] contorno de pecho
    [neck-girth] contorno de cuello
    [waist-height] altura de la cintura
    [hip-height] altura de la cadera
    [hip-depth] alto de cadera
    [knee-height] altura de la rodilla
    [height] estatura
   *[own] { $own }
 }
# Las longitudes y los números de un paso, una pieza, un material y la prenda entera.
name-number = { $name ->
    [above-hem] por encima del bajo
    [back] espalda
    [behind] por detrás
    [below-top] por debajo del borde superior
    [channel] jareta
    [edge-stitch] pespunte del canto
    [pins] de alfiler a alfiler
    [count] cantidad
    [cut-area] superficie de corte
    [cut-depth] alto de corte
    [cut-length] largo de corte
    [depth] alto
    [ease] holgura
    [ends] extremos
    [fell] ancho de la sobrecarga
    [first-seam] primera costura
    [first-turn] primer doblez
    [fold-ends] doblez en cada extremo
    [from-edge] desde el borde
    [from-start] desde el principio
    [front] delantero
    [fullness-to-hem] vuelo hasta el bajo
    [gap] abertura
    [gap-below-top] hueco bajo el borde superior
    [open-at-hem] abierto sobre el bajo
    [open] abierto bajo el borde superior
    [gathered-strips] tiras fruncidas
    [gathers] frunces
    [heading] cabecilla
    [hem] dobladillo
    [hole] agujero
    [apart] distancia
    [button] botón
    [channels] canales
    [let-out] soltar
    [takes] ml por gramo
    [hem-layers] capas en el bajo
    [front-hem] bajo de la nesga delantera
    [back-hem] bajo de una nesga trasera
    [backs] nesgas traseras
    [each] anillas por cinta
    [every] de anilla a anilla
    [long] largo de una pinza
    [tapes] cintas
    [up] recogido
    [hems-together] bajos en total
    [inset] distancia a los bordes
    [lap] solape
    [length] largo
    [most-joins] máximo de uniones
    [over] por encima
    [overlap] cruce
    [price] precio
    [reel] carrete
    [roll] rollo
    [rounding] redondeo
    [rows] pasadas
    [seam] costura
    [second-seam] segunda costura
    [second-turn] segundo doblez
    [selvedge] orillo
    [shortest] trozo más corto
    [shrinkage] encogimiento
    [bending-length] longitud de flexión
    [side] lado
    [slit] abertura
    [sold-by] venta por
    [space] separación
    [spacing] distancia
    [spare] reserva
    [stitch] puntada
    [stretch] elasticidad
    [top-to-hem] de la cintura al bajo
    [trim-to] recorte
    [turn] doblez
    [turn-under] remetido
    [turn-up] dobladillo
    [weight] peso
    [width] ancho
   *[own] { $own }
 }
