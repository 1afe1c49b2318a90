### Rematar una cintura con cinta de gros que se vuelve hacia dentro.

petersham-title = Remata { EDGE($edge) } con una cinta ({ $ribbon })
petersham-aim = La cinta queda por dentro y mantiene la cintura en { $length }.
petersham-cut = Corta { $cut } de la cinta ({ $ribbon }).
petersham-lay = Coloca la cinta por el derecho, a lo largo { EDGE($edge, case: "of") }, su borde inferior a { $lap } hacia dentro del borde cortado, de modo que sobresalga por encima.
petersham-ends-ring = Dobla { $end } al principio, pon el final sobre el principio en el centro de la espalda y préndela con alfileres.
    .check = { petersham-held.check }
    .tolerance = { petersham-held.tolerance }
    .remedy = { petersham-held.remedy }
petersham-ends-flat = Dobla { $end } en los dos extremos, a ras de los extremos del borde, y préndela con alfileres.
    .check = { petersham-held.check }
    .tolerance = { petersham-held.tolerance }
    .remedy = { petersham-held.remedy }
# Se dice solo como partes de los dos de arriba.
petersham-held =
    .check = Sobre el borde la cinta mide { $length }.
    .tolerance = { $off } de más o de menos
    .remedy = { $gathered ->
        [yes] Frunce más o afloja los frunces.
       *[no] Reparte la diferencia entre las costuras.
     }
petersham-sew = Cose a { $close } del borde inferior de la cinta, { $length }, { $stitch }, rematando en los dos extremos.
    .check = El margen ha quedado sujeto bajo la cinta a todo lo largo.
    .remedy = Descose donde se haya escapado y vuelve a coser ese tramo.
petersham-turn = Vuelve la cinta hacia dentro y plancha la cintura sobre el pespunte, con la tela un pelo hacia dentro.
    .check = La cinta no asoma por fuera.
    .remedy = Haz rodar el borde hacia dentro con los dedos y vuelve a planchar.
petersham-catch = A mano, cose los extremos de la cinta y sujeta su borde libre a cada margen de costura que cruce.
