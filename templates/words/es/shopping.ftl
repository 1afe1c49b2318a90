### La lista para llevar a la tienda. Los valores son textos acabados, salvo que una nota diga otra cosa.

shopping-title = Compras para { $title }, { $whose }
# $garments (número)
shopping-class = { $garments ->
    [one] { $whose }: { $garments } prenda
   *[other] { $whose }: { $garments } prendas
 }

## Un material

# $amount: cuánto hace falta. $use: dónde va.
shopping-needed = hace falta: { $amount }, para { $use }
shopping-widths = comparación de los anchos:
# $joins (número)
shopping-width = { $joins ->
    [one] { $width } de ancho: { $amount }, { $cost }, { $joins } unión
   *[other] { $width } de ancho: { $amount }, { $cost }, { $joins } uniones
 }
shopping-width-chosen = { shopping-width }, elegido
shopping-no-price = sin precio
# $reels (número)
shopping-thread = { $looped ->
    [yes] { $reels ->
        [one] aguja { $needle }, canilla { $bobbin }, áncora { $looper }, { $waste } de desperdicio; { $reels } carrete a la vez en la máquina
       *[other] aguja { $needle }, canilla { $bobbin }, áncora { $looper }, { $waste } de desperdicio; { $reels } carretes a la vez en las máquinas
    }
   *[no] { $reels ->
        [one] aguja { $needle }, canilla { $bobbin }, { $waste } de desperdicio; { $reels } carrete a la vez en la máquina
       *[other] aguja { $needle }, canilla { $bobbin }, { $waste } de desperdicio; { $reels } carretes a la vez en las máquinas
    }
 }
# $bobbins (número)
shopping-bobbins = { $bobbins ->
    [one] llena { $bobbins } canilla
   *[other] llena { $bobbins } canillas
 }
# $materials: una lista.
shopping-cut-to = El archivo no dice cómo se venden: { $materials }. Sus largos se redondean hacia arriba a { $step }, como suelen cortar las tiendas; pregunta en la tuya.

## Lo que suma

# Dos asteriscos a cada lado ponen un texto en negrita.
shopping-cost = Materiales: **{ $cost }**
# $materials (una lista)
shopping-cost-without = Materiales: **{ $cost }**, sin { $materials }
shopping-work = Trabajo: **{ $time }** aproximadamente, corte incluido
shopping-labour = Mano de obra: { $labour }; en total { $cost }
# $margin: en tanto por ciento.
shopping-price = Precio que pedir: **{ $price }**, margen del { $margin } % sobre el coste

## Comprado en común

shopping-together = Comprado en común y por separado
