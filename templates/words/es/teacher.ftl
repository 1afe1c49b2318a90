### Las hojas para quien da una clase: sesiones, avance, etiquetas, hoja de medidas, piezas de práctica.

teacher-skip = Ir a las sesiones
teacher-for = hojas para quien da la clase: { $whose }
teacher-keep = Estas hojas llevan nombres y notas. Guárdalas para ti; cada persona tiene su propia guía.

## Las sesiones

teacher-lessons = Las sesiones
# $length: de una sesión.
teacher-lessons-are = Sesiones de { $length }, al ritmo del taller. Cada persona para en el último punto en que la labor se puede guardar.
teacher-lesson = Sesión { $number }
teacher-pile = El montón de piezas cortadas
teacher-letter = Letra
teacher-work = Trabajo
teacher-pupil = Persona
teacher-stops = Dónde para cada persona: después de esta letra.
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
# $first, $last: letras. $time: de toda la sesión.
teacher-absent = Quien falta a esta sesión recupera de { $first } a { $last } antes de la siguiente: unos { $time }.

## Las hojas

teacher-progress = Avance
teacher-progress-are = Marca una letra cuando su trabajo está hecho y se cumple cada comprobación. Una raya: esa guía no tiene ese trabajo.
teacher-marks = Notas
teacher-marks-are = Las mismas letras, para lo que ves al mirar la labor.
teacher-labels = Etiquetas para los montones
teacher-labels-are = Recorta las etiquetas y pon una en cada montón. Cada una dice lo que tiene que haber debajo.
teacher-form = Hoja de medidas
teacher-form-are = Mide por encima de lo que se lleva debajo de la prenda. La cinta va plana y sin tirar. Toma cada medida dos veces.
teacher-practice = Piezas de práctica
# $ways, $strips (números)
teacher-practice-are = Cada una de las { $ways } formas de trabajar se prueba antes de coserla en la prenda: { $strips } tiras de { $length } x { $depth } por persona y por forma. Compra para ello { $bought } más de la tela ({ $cloth }).
