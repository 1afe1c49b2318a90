### Doblar un bies alrededor de un cordón y ponerlo a lo largo de un borde, para que su costura enseñe un vivo.
### $strip: la pieza que cubre el cordón; $in: el borde sobre el que se pone.

piping-title = Pon un vivo en { EDGE($in) }
    .number = { $thick }
piping-aim = La costura que sigue enseña un vivo de { $thick } de grueso, de { $length } de { $cord }.

piping-fold = Dobla { PIECE($strip) } por la mitad a lo largo, revés con revés, y mete el cordón ({ $cord }) en el doblez. { pin-start } los bordes cortados a ras.
    .check = El cordón está en el doblez en todo el largo, a { $inside } de los bordes cortados.
    .remedy = Empújalo con la uña hasta el doblez y vuelve a { pin }.
piping-cover-ring = Pon la puntada más larga y el prensatelas para cremalleras. Cose muy cerca del cordón, { $length } todo alrededor. Corta las puntas del cordón de modo que se toquen y no se monten.
    .check = El cordón no puede correrse y el pespunte no lo atraviesa.
    .remedy = Descose donde el pespunte tocó el cordón y vuelve a coser a su lado.
piping-cover-flat = Pon la puntada más larga y el prensatelas para cremalleras. Cose muy cerca del cordón, { $length }. Corta el cordón a { $seam-width } de los dos extremos, para que la costura lateral no lo encuentre.
    .check = El cordón no puede correrse y el pespunte no lo atraviesa.
    .remedy = Descose donde el pespunte tocó el cordón y vuelve a coser a su lado.
piping-lay = Pon { PIECE($strip) } sobre el derecho { PIECE($piece, case: "of") }, el cordón hacia dentro, todos los bordes cortados a ras { EDGE($in, case: "of") }, y { pin } sin estirar. { $ring ->
    [yes] La costura lateral coincide con la costura lateral.
   *[no] Empieza por un extremo.
 }
    .check = Queda liso y no encoge el borde.
    .remedy = Suéltalo, deja la tira floja y vuelve a { pin }.
piping-baste-ring = Con el prensatelas para cremalleras, cose sobre la primera fila, { $length } todo alrededor.
    .check = El cordón sigue el borde en una línea pareja.
    .remedy = Descose donde ondee y vuelve a coser ese tramo.
piping-baste-flat = Con el prensatelas para cremalleras, cose sobre la primera fila, { $length } de un extremo a otro.
    .check = { piping-baste-ring.check }
    .remedy = { piping-baste-ring.remedy }
piping-next = Para la costura que sigue deja puesto el prensatelas para cremalleras, con esta fila hacia arriba, y cose un hilo más cerca del cordón. Después vuelve a poner el prensatelas y la puntada.
