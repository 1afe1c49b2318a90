### Las hojas para quien da una clase: sesiones, avance, etiquetas, hoja de medidas, piezas de práctica.

teacher-skip = Ir a las sesiones
teacher-for = hojas para quien da la clase: { $whose }
teacher-keep = Estas hojas llevan nombres y notas. Guárdalas para ti; cada persona tiene su propia guía.

## Las sesiones

teacher-lessons = Las sesiones
# $length: de una sesión.
teacher-lessons-are = Sesiones de { $length }, al ritmo del taller. Cada persona para en el último punto en que la labor se puede guardar.
# $lessons (número): por turnos en lo que tiene la sala.
teacher-lessons-in-turns = Por turnos en las máquinas y planchas de la sala, todo lleva { $lessons } sesiones.
teacher-lessons-fewer = Donde hay menos máquinas o planchas de las que pide una sesión, id por turnos; con su número en el archivo del taller (`machines`, `overlockers`, `irons`), las sesiones se cuentan así.
teacher-lesson = Sesión { $number }
teacher-pile = El montón de piezas cortadas
teacher-letter = Letra
teacher-work = Trabajo
teacher-pupil = Persona
teacher-each = Quién hace qué. Quien falta a esta sesión hace su propia fila antes de la siguiente.
teacher-everybody = todas las personas
teacher-letters = Letras
teacher-stands = Cómo queda la labor
# $first, $last: letras.
teacher-range = { $one ->
    [yes] { $first }
   *[no] de { $first } a { $last }
 }
# $work (una lista): letras con sus títulos.
teacher-new = Nadie lo ha hecho todavía, así que muéstralo primero: { $work }.
# $machines (una lista)
teacher-machines = Ten a punto, para que nadie espere: { $machines }.
# Se dice solo dentro del mensaje de arriba. $count (número)
teacher-machine = { $set-up ->
    [straight] { $count } x máquina de coser en puntada recta
    [zigzag] { $count } x máquina de coser en zigzag
    [overlocker] { $count } x remalladora
    [attachment] { $count } x máquina de coser con el plisador
   *[iron] { $count } x plancha con su tabla
 }
# $has, $lessons (números): lo que tiene la sala; las sesiones que esta lleva entonces.
teacher-turns = { $place ->
    [machines] Máquinas de coser en la sala: { $has }. Id por turnos y calcula { $lessons } sesiones para esta.
    [overlockers] Remalladoras en la sala: { $has }. Id por turnos y calcula { $lessons } sesiones para esta.
   *[irons] Planchas en la sala: { $has }. Id por turnos y calcula { $lessons } sesiones para esta.
 }

## Las hojas

teacher-progress = Avance
teacher-progress-are = Marca una letra cuando su trabajo está hecho y se cumple cada comprobación. Una raya: esa guía no tiene ese trabajo.
teacher-marks = Notas
teacher-marks-are = Las mismas letras, para lo que ves al mirar la labor.
teacher-labels = Etiquetas para los montones
teacher-labels-are = Recorta las etiquetas y pon una en cada montón. Cada una dice lo que tiene que haber debajo.
teacher-form = Hoja de medidas
teacher-form-are = Mide por encima de lo que se lleva debajo de la prenda. La cinta va plana y sin tirar. Toma cada medida dos veces.
teacher-practice = Técnicas y piezas de práctica
teacher-way = Forma de trabajar
# $ways, $strips (números)
teacher-practice-are = Cada una de las { $ways } formas de trabajar se prueba antes de coserla en la prenda: { $strips } tiras de { $length } x { $depth } por persona y por forma. Compra para ello { $bought } más de la tela ({ $cloth }).
# De quien no estaba cuando se cortó, o ya no está.
teacher-later = Cortado más tarde
teacher-later-are = Alguien llegó, se fue o se midió de nuevo después del primer corte. Lo que está cortado se queda como está; solo lo que se nombra aquí se corta de nuevo, de las secciones planeadas más tarde.
# $cloths (una lista): lo que se corta más tarde de cada tela; sus secciones siguen a las del primer corte.
teacher-later-buy = Ten para ello, además de lo comprado al principio: { $cloths }.
# Se dice solo dentro del mensaje de arriba.
teacher-later-cloth = { $length } de la tela ({ $cloth })
teacher-later-stays = Se queda como está cortado:
teacher-later-anew = Córtalo de nuevo:
teacher-later-spare = Ya no hace falta; quítale la etiqueta:
teacher-later-sewn = Cóselo de nuevo, si ya estaba cosido:
# $mark: el número de una pieza. $count (número)
teacher-later-piece = { $mark } { $piece }, { $count } x { $length } x { $depth }

## Fichas

handout-all = Fichas de las sesiones
handout-for = fichas de las sesiones, { $whose }
handout-are = Recorta las fichas y reparte cada una al empezar su sesión. Las letras son las de la guía. Una ficha perdida se recupera antes de la sesión siguiente.
# $stands: una frase entera.
handout-stop = Para después de { $letter }. Entonces: { $stands }
