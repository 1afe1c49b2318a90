### Cerrar con una costura la abertura de una jareta.

close-gap-title = Cierra la abertura
close-gap-aim = La jareta está cerrada todo alrededor.

# El pespunte de una cinturilla se ve por el derecho; el de una jareta doblada, por el revés.
close-gap-sew = { $band ->
    [yes] Con el derecho encima, estira la jareta hasta que quede lisa solo en la abertura. Cose los { $gap } para cerrarla, { $stitch }, en línea con el primer pespunte y montando { $past } sobre él en los dos extremos.
   *[no] Con el interior encima, estira la jareta hasta que quede lisa solo en la abertura. Cose los { $gap } para cerrarla, { $stitch }, en línea con el primer pespunte y montando { $past } sobre él en los dos extremos.
 }
    .check = El pespunte no se interrumpe y la goma no ha quedado pillada: se desliza bajo el dedo.
    .remedy = Si la goma ha quedado pillada, descose el pespunte y vuelve a hacerlo más cerca del doblez.
