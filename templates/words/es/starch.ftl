### Dar apresto a una pieza con almidón, comprado listo o cocido con almidón de maíz, con brocha, pulverizado o por inmersión.
### $starch: el nombre del almidón, o del almidón de maíz.

starch-title = Almidona { PIECE($pieces) }
    .number = { $liquid }
starch-aim = { COUNT($pieces) ->
    [one] { PIECE($pieces, at: "start") } queda ahuecada.
   *[other] { PIECE($pieces, at: "start") } quedan ahuecadas.
 }
starch-caution-hot = El almidón caliente escalda y se pega: vierte la mezcla fría en el agua caliente, remueve con una cuchara larga y mantén lejos a los niños.
starch-caution-spray = El almidón en aerosol es inflamable: pulverízalo al aire libre o en una habitación bien ventilada, lejos de llamas, llamas piloto, cigarrillos y planchas calientes, y no respires la niebla.
starch-caution-flame = Una falda de tul arde deprisa, almidonada o no. Sécala al aire: nada de secadora caliente, y ninguna cocina, llama piloto, estufa, vela ni fuego abierto cerca. Mantenla lejos de todo ello también cuando se lleve puesta.
starch-caution-warm-air = Una falda de tul arde deprisa, almidonada o no. El aire templado viene solo de un secador de pelo en la mano, al calor más bajo, a { $air-far } y nunca encendido sin vigilancia: ninguna estufa, cocina, llama piloto, vela ni fuego abierto cerca. Mantenla lejos de todo ello también cuando se lleve puesta. Las normas locales contra incendios están por encima de esta guía.

## Preparar el almidón

starch-ready = Prepara en un cuenco { $liquid } de almidón ({ $starch }) listo para usar; si hay que diluirlo, como indica su etiqueta.
starch-ready-spray = Prepara { $liquid } de almidón ({ $starch }) listo para usar, como indica su etiqueta, y llena con él un pulverizador. El de aerosol ya viene listo.
starch-paste = Deslíe { $cornflour } de almidón de maíz ({ $starch }) en { $cold } de agua fría. En una cucharada rasa caben 15 ml.
    .check = No queda ningún grumo.
starch-cook = Lleva { $hot } de agua a ebullición y retírala del fuego. Vierte la mezcla despacio y remueve hasta que se vuelva transparente.
    .check = Está transparente y sin grumos.
    .remedy = Si sigue blanca, vuelve a calentarla y remueve. Si tiene grumos, cuélala por una tela.
starch-cool = Déjala enfriar hasta que esté a la temperatura de la mano.
starch-try = Prueba en un retal y déjalo secar.
    .check = Queda tan rígido como quieres y sin manchas blancas.
    .remedy = Si queda demasiado rígido o blanco, añade agua. Si queda demasiado blando, da una segunda mano cuando la primera esté seca.

## Aplicarlo

# Se dice lo primero, antes de preparar el almidón.
# $last: no sigue ningún paso que mida desde un hilo de color vivo.
starch-pins = { $last ->
    [yes] Cuenta los alfileres y las agujas antes de mojar la tela. Quita los hilos de color vivo y todas las marcas: cepilla el jaboncillo y haz desaparecer el rotulador con agua.
   *[no] Cuenta los alfileres y las agujas antes de mojar la tela. Quita todas las marcas: cepilla el jaboncillo y haz desaparecer el rotulador con agua.
 }
    .check = En la caja hay tantos como al empezar, y no se ve ninguna marca.
    .remedy = Palpa todas las costuras hasta encontrar el último alfiler: en la tela tiesa nadie lo nota, y se oxida. El almidón fija una marca para siempre.
starch-hang = Cuelga la prenda cabeza abajo por el bajo, o tiéndela sobre una cuerda al aire libre, con una sábana vieja debajo.
starch-brush = Aplica el almidón con la brocha en { PIECE($pieces) }, capa por capa. Mantén apartado todo lo demás.
    .check = La tela está húmeda de parte a parte, sin gotas que escurran.
    .remedy = Seca con un paño las partes demasiado mojadas: al secarse quedan blancas.
starch-spray = Pulveriza { PIECE($pieces) } con el almidón desde { $far } de distancia, capa por capa. Mantén apartado todo lo demás.
    .check = { starch-brush.check }
    .remedy = { starch-brush.remedy }
starch-dip = Sumerge { PIECE($pieces) } en un barreño con el almidón, capa por capa, hasta que la tela esté bien empapada. Escúrrela apretando con las manos, sin retorcerla. Mantén todo lo demás fuera del barreño.
    .check = { starch-brush.check }
    .remedy = { starch-brush.remedy }
starch-hang-wet = Cuelga la prenda cabeza abajo por el bajo, o tiéndela sobre una cuerda al aire libre, con una sábana vieja debajo para recoger las gotas.
starch-dry = Sacude las capas para separarlas y deja secar la prenda al aire, lejos del calor.
    .check = No hay dos capas pegadas.
    .remedy = Humedécelas y sepáralas.
starch-form = Pon la prenda húmeda, de pie y del derecho, en un maniquí o sobre una cesta vuelta encima de un soporte, y separa las capas todo alrededor.
    .check = Cada capa queda separada de la de debajo.
    .remedy = Donde dos se peguen, humedécelas y sepáralas.
starch-warm-air = Con un secador de pelo en la mano, echa aire templado desde abajo entre las capas, sin dejar de dar la vuelta, hasta que la tela ya no esté mojada.
    .check = La tela nunca está caliente al tacto.
    .remedy = Aparta más el secador.
starch-overnight = Déjala toda la noche en el maniquí, sin calor.
    .check = Por la mañana está seca del todo y conserva la forma al quitarla.
    .remedy = Si sigue húmeda o blanda, déjala más tiempo o dale una segunda capa.
