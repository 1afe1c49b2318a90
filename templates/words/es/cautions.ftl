### Precauciones: cada una va delante del primer paso al que atañe.

caution-pins = Saca cada alfiler antes de que llegue a la aguja, y cuéntalos al guardarlos en la caja.
caution-clips = Saca cada pinza antes de que llegue a la aguja, y cuéntalas al guardarlas en la caja.
caution-hand-needle = Al coser a mano: usa dedal y, cuando pares, clava la aguja en un alfiletero, nunca en tu ropa.
caution-fingers = Mantén los dedos al lado del prensatelas, nunca delante de la aguja.
caution-knives = Las cuchillas de la remalladora cortan los dedos igual que la tela: mantén las manos al lado del prensatelas, nunca delante.
caution-needle-teeth = Una aguja que golpea los dientes o un tope de la cremallera se rompe y salta: gira ahí la rueda a mano y ponte gafas. Antes del cursor párate con la aguja clavada, levanta el pie, pasa el cursor al otro lado y sigue.
caution-ripper = El descosedor resbala: clava un alfiler atravesado en cada extremo del corte y corta hacia un alfiler, nunca hacia tu mano.
caution-ripper-row = El descosedor resbala: pon la labor sobre la mesa y empújalo a lo largo del pespunte, nunca hacia tu mano.
caution-awl = Un punzón atraviesa una mano igual que la tela: empújalo contra corcho o una toalla doblada sobre la mesa, nunca hacia la palma ni sobre el regazo.
caution-cutting = Corta alejándote del cuerpo y de la otra mano, y cierra o cubre las tijeras y el cúter rotatorio cada vez que los sueltes.
caution-shears = Las tijeras cortan los dedos igual que la tela: mantén la otra mano bien lejos de las hojas.
caution-iron = La plancha y su vapor queman: aparta los dedos del doblez y deja la plancha de pie entre una planchada y otra, y apágala cuando pases a otra cosa.
caution-iron-marks = El calor fija para siempre algunos rotuladores y jaboncillos de cera: prueba antes jaboncillo, rotulador y plancha en un retal, y quita cada marca antes de acercar la plancha, salvo las que queden en los márgenes.
# La tela se funde: nailon, acetato o una fibra que no se conoce.
caution-iron-melts = { caution-iron } El nailon y el tul se funden bajo una plancha caliente y se pegan a la piel: poco calor, sin vapor, un paño de planchar seco, y no planches nunca la prenda puesta.

## Alfileres y cordones en la cintura

caution-safety-pin = Cierra el imperdible antes de soltarlo.
caution-safety-pin-last = Cierra el imperdible antes de soltarlo, y saca de la jareta hasta el último alfiler.
caution-no-flame-on-ends = No fundas los extremos con una llama: el nailon y el poliéster gotean, queman la piel y prenden fuego al tul. Unas puntadas, un doblez o cola textil sujetan igual de bien. La cola textil desprende vapores: abre una ventana, mantenla lejos de las llamas y déjala secar.
caution-cords = Los cordones se enganchan en puertas, ascensores y toboganes. En niños de hasta 14 años, los extremos de la cintura pueden colgar como máximo { $open } con la prenda extendida y abierta, y { $drawn-in } cuando está ceñida (EN 14682:2007; hay una edición más reciente en vigor). Ningún cordón por debajo de la entrepierna y ninguno en el cuello ni atado detrás. En Estados Unidos, los extremos en chaquetas y prendas superiores pueden asomar como máximo { $united-states } con la jareta abierta del todo, sin nudo ni tanca (ASTM F1816-18). Las normas de seguridad locales están por encima de esta guía.
caution-tight-elastic = Una goma demasiado apretada corta la circulación. Deben caber dos dedos por debajo y no debe dejar ninguna marca profunda. Puede que un niño no te lo diga: mira al cabo de unos minutos y quítasela enseguida si la piel se pone blanca o nota hormigueo.
caution-loops = Las trabillas cuelgan solo por dentro de la prenda, pegadas a ella: en un niño, una trabilla suelta se engancha.
caution-small-parts = Un niño pequeño puede asfixiarse con un cierre suelto. Cose cada uno de modo que un tirón fuerte no lo mueva, o usa cintas de atar o goma.
caution-steam = El vapor escalda: mantén la otra mano apartada y deja la plancha de pie entre una pasada y otra. El nailon y el tul encogen y se funden: con ellos, prueba antes en la tira de ensayo, desde más lejos.

## Arcos y aros

caution-arc = Corta el arco a tijeretadas cortas, con las tijeras apoyadas en la mesa y la otra mano bien por detrás de las hojas.
caution-short-bites = Corta a tijeretadas cortas, con las tijeras apoyadas en la mesa y la otra mano bien lejos de las hojas.
caution-boning = Ponte gafas de protección para cortar varilla: los trozos salen volando. Pon una contera en cada extremo, o redondéalo, antes de meter la varilla; un extremo desnudo atraviesa la tela y la piel. Un aro se levanta al sentarse, hace tropezar en las escaleras y se balancea hacia las llamas: pruébalo antes.

## Antes del trabajo: precauciones de la prenda entera

caution-garment-flame-sheer = El tul y otras telas transparentes prenden en un instante y arden en segundos, más aún después de lavarlos. Una falda con vuelo se separa del cuerpo y puede llegar a una llama antes de que te des cuenta. Mantén la prenda lejos de velas, fuegos abiertos, estufas, llamas de gas y cigarrillos, mientras la coses y cuando se lleve puesta. Cose dentro una etiqueta: MANTENER ALEJADO DEL FUEGO. { caution-garment-finish } { caution-garment-local }
caution-garment-flame-light = El algodón, el lino y la viscosa ligeros prenden tan deprisa como el tul y arden igual de deprisa. Una falda con vuelo se separa del cuerpo y puede llegar a una llama antes de que te des cuenta. Mantén la prenda lejos de velas, fuegos abiertos, estufas, llamas de gas y cigarrillos, mientras la coses y cuando se lleve puesta. Cose dentro una etiqueta: MANTENER ALEJADO DEL FUEGO. { caution-garment-finish } { caution-garment-local }
caution-garment-flame = Una falda con vuelo se separa del cuerpo y puede llegar a una llama antes de que te des cuenta: mantente lejos de velas, fuegos y estufas. { caution-garment-local }
# Se dice solo dentro de las tres de arriba.
caution-garment-finish = Un acabado ignífugo se va con los lavados: pregunta cuántos aguanta y haz que lo renueven a tiempo.
caution-garment-local = Las normas locales y el criterio de una persona habilitada, como el responsable de seguridad contra incendios de un escenario o una sala, están por encima de esta guía.
caution-garment-blades = Tijeras y cúter rotatorio: corta alejándote del cuerpo, cierra o cubre la hoja cada vez que los sueltes y no te quites los zapatos.
caution-garment-needles = Cuenta los alfileres y las agujas al sacarlos y al guardarlos. Revisa la prenda terminada en busca de alfileres olvidados antes de que nadie se la ponga. Quita el pie del pedal antes de enhebrar o cambiar una aguja.
caution-garment-needles-clips = Cuenta alfileres, pinzas y agujas al sacarlos y al guardarlos. Revisa la prenda acabada por si queda alguno antes de que nadie se la ponga. Quita el pie del pedal antes de enhebrar o cambiar una aguja.
caution-garment-hem = Un bajo largo hace tropezar en escaleras y escenarios, y una cola se arrastra hasta el fuego. Sube y baja una escalera con la prenda antes de llevarla por primera vez.
caution-garment-dye = Sigue la hoja de instrucciones del fabricante del tinte y las normas locales para manejar el tinte y verter el baño. Tinte en polvo: no lo respires. Ponte mascarilla y guantes; moja el polvo antes de que pueda volar. No uses ninguna olla, cuchara ni medida que se use para comida. El baño de tinte escalda. Saca la tela mojada con pinzas, mantén lejos a los niños y ventila la habitación.
caution-garment-child = Para un niño de menos de 14 años: no dejes colgando en la cintura ni por debajo del bajo ningún cordón, extremo de cinta ni trabilla, y cose bien sujetas las piezas pequeñas. La ropa y la ropa de dormir infantil tienen normas propias; infórmate antes de vender o prestar una prenda.
caution-train = Una cola hace tropezar a quien la lleva y a quien va detrás. Recógela o llévala en la mano antes de una escalera, en un escenario oscuro y cerca de máquinas.
caution-bustle-cords = Los cordones en la espalda de una falda se enganchan en puertas y ruedas. No en una falda de niña; ahí cuélgala con presillas cortas.
