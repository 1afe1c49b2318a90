### Cerrar con una costura la abertura de una jareta.

close-gap-title = Cierra la abertura
    .number = { $gap }
close-gap-aim = La jareta está cerrada todo alrededor.

# El pespunte de una cinturilla se ve por el derecho; el de una jareta doblada, por el revés.
close-gap-sew = { $band ->
    [yes] Con el derecho encima, estira la jareta hasta que quede lisa solo en la abertura. Cose los { $gap } para cerrarla, { $stitch }, en línea con el primer pespunte y montando { $past } sobre él en los dos extremos.
   *[no] Con el interior encima, estira la jareta hasta que quede lisa solo en la abertura. Cose los { $gap } para cerrarla, { $stitch }, en línea con el primer pespunte y montando { $past } sobre él en los dos extremos.
 }
    .check = El pespunte no se interrumpe y la goma no ha quedado pillada: se desliza bajo el dedo.
    .remedy = Si la goma ha quedado pillada, descose el pespunte y vuelve a hacerlo más cerca del doblez.
# Varios pespuntes, cada uno con su abertura.
close-gap-sew-rows = { $band ->
    [yes] Con el derecho encima, cose las aberturas de los { $rows } pespuntes para cerrarlas, primero la del doblez. Estira la jareta hasta que quede lisa solo en la abertura: { $gap } cada una, { $stitch }, en línea con su pespunte y montando { $past } sobre él en los dos extremos.
   *[no] Con el interior encima, cose las aberturas de los { $rows } pespuntes para cerrarlas, primero la del doblez. Estira la jareta hasta que quede lisa solo en la abertura: { $gap } cada una, { $stitch }, en línea con su pespunte y montando { $past } sobre él en los dos extremos.
 }
    .check = Ningún pespunte se interrumpe, y cada goma se desliza bajo el dedo.
    .remedy = Si una goma ha quedado pillada, descose ese pespunte y vuelve a hacerlo apartado de ella.
# La abertura está en la costura vertical de una cinturilla, atravesando la jareta.
close-gap-seam = Junta a mano los dos dobleces de la abertura con puntadas pequeñas, { $gap } en total, y remata el hilo por dentro.
    .check = La costura está entera de nuevo y la goma se desliza bajo el dedo.
    .remedy = Si la goma ha quedado pillada, deshaz las puntadas y coge solo la tela.

## La abertura de una costura

close-gap-aim-seam = La costura { PIECE($pieces, case: "of") } queda cosida de un extremo a otro.
close-gap-sew-seam = Pon del revés { PIECE($pieces) } y deja los dos márgenes a ras en la abertura. Cose los { $gap } para cerrarla, a { $seam-width } de los bordes, { $stitch }, en línea con la costura y montando { $past } sobre ella en los dos extremos.
    .check = Vista por el derecho, la costura no se interrumpe.
    .remedy = Donde se desvíe, descose ese tramo y vuelve a coserlo sobre la línea.
