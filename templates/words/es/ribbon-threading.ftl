### Pasar una cinta por la puntilla de un borde.

ribbon-threading-title = Pasa una cinta por la puntilla { PIECE($edge, case: "of") }
ribbon-threading-aim = La cinta está pasada por la puntilla.

ribbon-threading-cut = Corta { $ribbon-length } de cinta ({ $ribbon }).
ribbon-threading-seal = Evita que se deshilachen sus dos extremos: ponles un poco de cola textil y déjala secar, o remételos y cóselos.
# Los extremos se cosen uno sobre otro.
ribbon-threading-thread = Enhébrala en una aguja de punta roma o en un pasacintas. Empieza en { side-seam } y pásala por encima y por debajo por los agujeros a lo largo { EDGE($edge, case: "of") }.
    .check = La cinta no está retorcida y no se ha saltado ningún agujero.
    .remedy = Sácala hasta ese punto y sigue desde ahí.
ribbon-threading-thread-bow = Enhébrala en una aguja de punta roma o en un pasacintas. Empieza en el centro del delantero y pásala por encima y por debajo por los agujeros a lo largo { EDGE($edge, case: "of") }.
    .check = { ribbon-threading-thread.check }
    .remedy = { ribbon-threading-thread.remedy }
ribbon-threading-sew = Monta los extremos { $overlap } uno sobre otro detrás de la puntilla y cóselos juntos a mano.
    .check = La puntilla queda lisa y no se encoge.
    .remedy = Descose los extremos y afloja la cinta.
ribbon-threading-bow = Iguala los extremos y haz un lazo; antes de atarlo cuelgan { $ends } por cada extremo.
    .check = { ribbon-threading-sew.check }
    .remedy = Afloja la cinta antes de atarla.
