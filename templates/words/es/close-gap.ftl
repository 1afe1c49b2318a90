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
# La abertura está en la costura vertical de una cinturilla, atravesando la jareta.
close-gap-seam = Junta a mano los dos dobleces de la abertura con puntadas pequeñas, { $gap } en total, y remata el hilo por dentro.
    .check = La costura está entera de nuevo y la goma se desliza bajo el dedo.
    .remedy = Si la goma ha quedado pillada, deshaz las puntadas y coge solo la tela.
