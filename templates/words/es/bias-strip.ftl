### Cortar una tira larga al bies de un cuadrado.
### $lines: cuántos anchos de tira caben uno junto a otro en el cuadrado.

bias-strip-title = Corta { PIECE($piece) } al bies
bias-strip-aim = Un cuadrado de { $side } da { $gives } de bies de { $width } de ancho, unido a 45 grados.
bias-strip-cut-across = Traza en el cuadrado para { PIECE($piece) } una línea de esquina a esquina, de { $diagonal }, y corta por ella.
    .check = Las dos mitades son iguales, cada una con un ángulo recto.
    .remedy = Recorta el cuadrado hasta que sus lados sean iguales y vuelve a cortar.
bias-strip-first-seam = Pon las mitades derecho con derecho, con dos lados rectos uno sobre otro. Las puntas sobresalen { $seam-width } en los dos extremos. Cose a { $seam-width } de esos lados, { $stitch }, y abre los márgenes con la plancha.
    .check = Abierto es un cuadrilátero inclinado cuyos bordes largos van al bies.
    .remedy = Si es un triángulo, descose y une otros dos lados rectos.
bias-strip-lines = Por el revés traza líneas a lo largo del borde al bies, cada { $width }: { $lines } tiras. Corta lo que sobre después de la última línea.
    .check = Cada tira mide { $width } de ancho.
    .tolerance = { $off } de más o de menos
    .remedy = Vuelve a trazar la línea desde el borde.
bias-strip-tube = Junta los otros dos lados rectos en un tubo, derecho con derecho, corridos una tira. La primera línea coincide con el borde.
bias-strip-second-seam = Prende línea con línea a { $seam-width } del borde con alfileres y cose ahí, { $stitch }. Abre los márgenes con la plancha.
    .check = En cada extremo sobresale una tira.
    .remedy = Si no sobresale ninguna, el tubo se cerró sin correrlo: descose y córrelo una línea.
bias-strip-cut = Empieza por la tira que sobresale y corta por la línea, vuelta tras vuelta, hasta el final.
    .check = Es una sola tira de { $gives }.
    .remedy = Donde las tijeras se salieron de la línea, sigue por la siguiente.
bias-strip-trim = Córtala a { $length }, con los dos extremos a escuadra.
