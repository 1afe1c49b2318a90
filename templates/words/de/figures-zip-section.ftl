### Ein Reißverschluss in der Öffnung einer Naht, im Schnitt.

figure-zip-tape = Reißverschluss, Zähnchen schwarz
figure-zip-alt = { $way ->
    [centred] Beide Nahtzugaben sind umgeschlagen und treffen sich über den Zähnchen; eine Steppnaht { $beside } auf jeder Seite geht durch Stoff, Nahtzugabe und Band.
    [lapped] Ein Bruch liegt { $near } neben den Zähnchen und ist auf sein Band genäht; der andere verdeckt sie und ist { $beside } von seinem Bruch festgesteppt.
   *[invisible] Auf { $opening } Öffnung sind beide Nahtzugaben umgeschlagen; jede Hälfte ist dicht neben den Zähnchen nur an ihre Nahtzugabe genäht, keine Steppnaht geht durch den Stoff außen.
 }
figure-zip-caption = { $way ->
    [centred] Der Reißverschluss in der Mitte seiner Öffnung von { $opening }.{ figure-hatched }
    [lapped] Der verdeckte Reißverschluss, Öffnung { $opening }, vom oberen Ende gesehen.{ figure-hatched }
   *[invisible] Der nahtverdeckte Reißverschluss an den Nahtzugaben seiner Öffnung von { $opening }.{ figure-hatched }
 }
figure-zip-folded-head = Linke Stoffseite oben, vor dem Reißverschluss
figure-zip-folded-alt = Die Öffnung ist zugeheftet. Eine Nahtzugabe ist auf ihre eigene Seite gebügelt; die andere ist über die Heftnaht gelegt und wieder zurückgefaltet, ihr Bruch steht { $near } über die Heftnaht hinaus.
figure-zip-folded-caption = Der Bruch, unter den der Reißverschluss kommt, vom oberen Ende gesehen.{ figure-hatched }
figure-zip-beneath-head = An der Maschine, der Reißverschluss mit der Oberseite nach oben
figure-zip-over = oben
figure-zip-under = unten
figure-zip-beneath-alt = Der vorstehende Bruch liegt mit der rechten Stoffseite nach oben auf dem Band neben den Zähnchen und ist { $from-fold } von seiner Kante durch Bruch, Nahtzugabe und Band gesteppt. Die Seite mit dem Übertritt liegt auf der anderen, weg von der Nadel, ihre Nahtzugabe zurückgelegt.
figure-zip-beneath-caption = Nur der Bruch und das Band liegen unter der Nadel.{ figure-hatched }
