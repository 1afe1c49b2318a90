### Der Plan für alle, die die Arbeit vorführen, in einem Raum oder vor einer Kamera.
### $piece: ein Teil des Kleidungsstücks. $letter: der Buchstabe eines Arbeitsgangs der Anleitung.

demonstration-skip = Zu den Vorbereitungen springen
# $whose: für wen oder welche Größe die Anleitung ist.
demonstration-for = Vorführung, { $whose }

## Vorher

demonstration-prepare = Bereitzulegen
demonstration-prepare-are = Jedes davon ist ein eigenes Stück, so weit gearbeitet, wie es dasteht: So wartet niemand, während schon Gezeigtes genäht wird.
# $time: aller Abschnitte. $parts (Zahl)
demonstration-minutes = { $parts } Abschnitte, zusammen etwa { $time }; jeder wird an einem Stück gezeigt.
demonstration-cut = { PIECE($piece, at: "start") }, zugeschnitten
demonstration-after = { PIECE($piece, at: "start") }, wie nach { $letter }
demonstration-goes-on = { PIECE($piece, at: "start") }, eben in { $letter } gezeigt

## Abschnitt für Abschnitt

demonstration-parts = Abschnitt für Abschnitt
demonstration-view = { $view ->
    [near] Von nahem zu sehen: die Hände, die Nadel und die Kante.
   *[wide] Im Ganzen zu sehen: der Tisch und aller Stoff darauf.
 }
demonstration-ready = Liegt bereit:
demonstration-at-hand = Zur Hand:
demonstration-say = Vor dem Anfangen sagen:
demonstration-captions = Einblendungen:
