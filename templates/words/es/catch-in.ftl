### Poner una tira fruncida o lisa a lo largo de un borde, para que su costura la coja.
### $edge: el borde de la tira; $in: la pieza sobre cuyo borde se pone.

catch-in-title = Mete { PIECE($edge) } en la costura { PIECE($in, case: "of") }
    .number = { $seam-width }
catch-in-aim = La costura que sigue coge { EDGE($edge) }; entonces salen de ella { $hangs }.

# Va sobre el borde inferior de una pieza y cae sobre lo que se le cose, ...
catch-in-lay-below = Pon { PIECE($edge) } sobre { PIECE($in) }, derecho con derecho, el dobladillo hacia el centro { PIECE($in, case: "of") }, los dos bordes cortados a ras.
    .check = El dobladillo queda lejos de los bordes cortados y el revés está encima.
    .remedy = Dale la vuelta: cosida al contrario enseña su revés.
# ... o sobre el borde superior de la pieza sobre la que cae.
catch-in-lay-above = Pon { PIECE($edge) } sobre { PIECE($in) }, las dos con el derecho encima, el dobladillo hacia el centro { PIECE($in, case: "of") }, los dos bordes cortados a ras.
    .check = El dobladillo queda lejos de los bordes cortados y el derecho está encima.
    .remedy = Dale la vuelta: cosida al contrario enseña su revés.
catch-in-pin = Haz coincidir { match-places }, y { pin } primero ahí. Después { pin } cada { $spacing } entre ellas: alrededor de { pins-needed }.
catch-in-baste-ring = Cose a { $row } del borde con la puntada más larga, { $length } todo alrededor. La costura va { $rest } más adentro y tapa esta fila.
    .check = { $folds ->
        [gathers] Los frunces quedan parejos y ningún pliegue está amontonado en las marcas.
       *[flat] La tira queda sin arrugas.
     }
    .remedy = Descose el ancho de una mano, repártelo de nuevo y vuelve a coserlo.
catch-in-baste-flat = Cose a { $row } del borde con la puntada más larga, { $length } de un extremo a otro. La costura va { $rest } más adentro y tapa esta fila.
    .check = { catch-in-baste-ring.check }
    .remedy = { catch-in-baste-ring.remedy }
