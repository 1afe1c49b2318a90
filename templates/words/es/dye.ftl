### Teñir piezas en un solo baño. La hoja que acompaña al tinte está por encima de cada frase de aquí.
### $dye: el nombre del tinte.

dye-title = Tiñe { PIECE($pieces) }
dye-aim = { PIECE($pieces, at: "start") }, de un tono uniforme.
dye-caution-powder = Sigue la hoja de instrucciones del fabricante del tinte y las normas locales para manejar el tinte y verter el baño. Tinte en polvo: no lo respires. Ponte mascarilla y guantes; moja el polvo antes de que pueda volar. No uses ninguna olla, cuchara ni medida que se use para comida.
dye-caution-bath = El baño de tinte escalda. Saca la tela mojada con pinzas, mantén lejos a los niños y ventila la habitación.

## Antes del baño

# $grams: de tinte en polvo. $cloth: cuánto pesa la tela seca.
dye-weigh = Pesa { $grams } g de tinte ({ $dye }). Peso total en seco { PIECE($pieces, case: "of") }: { $cloth }.
    .check = La balanza marca { $grams } g.
dye-wet = Lava { PIECE($pieces) } y deja la tela mojada.
    .check = Está empapada y se hunde.
    .remedy = Las partes secas quedan pálidas: déjala más tiempo en remojo.
dye-try = Tiñe antes un retal mojado de cada tela en una taza del baño y déjalo secar.
    .check = El retal seco tiene el tono que quieres. La tela mojada parece más oscura.
    .remedy = Si queda demasiado oscuro, añade agua. Si queda demasiado pálido, moja más polvo hasta formar una pasta y añádelo.

## En el baño

dye-bath = Moja el polvo hasta formar una pasta y prepara el baño como indica su hoja, con tanta agua que la tela se mueva libremente.
dye-turn = Mete la tela, lleva el baño despacio a la temperatura que indica la hoja y remueve la tela todo el tiempo.
    .check = Ningún pliegue se queda quieto y no hay aire atrapado en la tela.
    .remedy = Húndela y separa los pliegues.
dye-rinse = Deja que se enfríe en el baño como indica la hoja y después aclárala.
    .check = El agua sale clara.
    .remedy = Vuelve a aclarar.
dye-dry = Sécala al aire, a la sombra, y lávala aparte las primeras veces.
## Un adorno, antes de coserlo

dye-title-trim = Tiñe el adorno ({ $trim })
dye-aim-trim = { $length } de adorno ({ $trim }) de un tono uniforme, antes de coserlo.
dye-weigh-trim = Desenrolla { $length } de adorno ({ $trim }) de una pieza y pesa { $grams } g de tinte ({ $dye }). Peso en seco del adorno: { $cloth }.
    .check = La balanza marca { $grams } g.
dye-wet-trim = Enrolla el adorno ({ $trim }) en una madeja suelta entre la mano y el codo y átala floja en cuatro sitios. Lávalo y déjalo mojado.
    .check = Está empapado y se hunde.
    .remedy = Donde las ataduras aprietan, el adorno queda pálido: aflójalas.
dye-try-trim = Tiñe antes un extremo mojado del adorno ({ $trim }) en una taza del baño y déjalo secar.
    .check = El extremo seco tiene el tono que quieres. Mojado se ve más oscuro.
    .remedy = Si queda demasiado oscuro, añade agua. Si queda demasiado pálido, moja más polvo hasta formar una pasta y añádelo.
dye-bath-trim = Moja el polvo hasta formar una pasta y prepara el baño como indica su hoja, con tanta agua que la madeja se mueva libremente.
dye-turn-trim = Mete la madeja, lleva el baño despacio a la temperatura que indica la hoja y remueve la madeja todo el tiempo.
    .check = Ninguna parte se queda quieta ni asoma del baño.
    .remedy = Húndela y ábrela.
dye-rinse-trim = Deja que se enfríe en el baño como indica la hoja y después acláralo.
    .check = El agua sale clara: el adorno no manchará la tela al lavarla.
    .remedy = Vuelve a aclararlo.
dye-dry-trim = Sécalo al aire, fuera del sol, enrollado plano en una tabla para que no se arrugue.
    .check = Puede haber encogido: mídelo, y quedan al menos { $needed }: eso es lo que se cose.
    .remedy = Si es demasiado corto, tiñe el resto en un baño aparte con los mismos pesos.
