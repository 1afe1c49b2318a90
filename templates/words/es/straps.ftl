### Coser dos tirantes y sujetarlos por dentro del borde superior.

straps-title = Cose dos unidades { PIECE($strap, case: "of") } { EDGE($edge, case: "to") }
straps-aim = Cada tirante mide { $wide } de ancho y { $long } de borde a borde.
straps-sew = Dobla la tira por la mitad a lo largo, derecho con derecho. Cose a { $seam-width } de los bordes largos, { $stitch }, y deja los dos extremos abiertos.
straps-turn = Cierra un imperdible en un extremo y empújalo hasta el otro para dar la vuelta al tubo. Plánchalo plano, con la costura en un borde.
    .check = Mide { $wide } de ancho en todo su largo.
    .tolerance = { $hair-off } de más o de menos
    .remedy = Haz rodar la costura hacia el borde con los dedos y vuelve a planchar.
straps-close = Cierra la abertura { EDGE($edge, case: "of") } o préndela con alfileres tal como va a cerrar: el contorno es entonces de { $round }.
straps-mark = Marca los cuartos { EDGE($edge, case: "of") }, cada { $quarter }, desde { side-seam } como un lado. Desde el centro delantero marca { $half-front } a los dos lados; desde el centro de la espalda, { $half-back }.
    .check = Las marcas de delante y de detrás están tan lejos del costado a la izquierda como a la derecha.
    .tolerance = { $close-off } de más o de menos
    .remedy = Vuelve a medir desde el centro.
straps-pin = Dobla { $under } de cada extremo del tirante y préndelo por dentro del borde, a { $lap } de profundidad: un extremo delante y el otro detrás, sin cruzarlos ni torcerlos.
straps-try = Ponte la prenda y mírala en un espejo.
    .check = Los tirantes no aprietan ni resbalan, y el borde cuelga a nivel.
    .remedy = Sube o baja lo mismo los extremos de la espalda y vuelve a prenderlos.
straps-fasten = Cose cada extremo en rectángulo, a { $close } de sus bordes y a lo largo del borde superior, { $stitch }, y remata.
    .check = Un tirón fuerte no mueve ningún extremo.
    .remedy = Cose el rectángulo otra vez.
