### Eine Taille im Schnitt, deren Futter über alle Nahtzugaben gewendet wird.

figure-lining-band = Vor dem Wenden: der Bund auf dem Futter
figure-lining-opening = Öffnung des Tunnels
figure-lining-band-alt = Schnitt: { PIECE($lining) } auf links und { PIECE($band) } gefaltet darüber, Schnittkanten bündig, { $inside } daneben genäht. Die Öffnung des Tunnels liegt dazwischen.
figure-lining-band-caption = Der Bund auf dem Futter im Schnitt, beide Säume rechts. Ist das Futter auf rechts gewendet, hängt der Bund darin.{ figure-hatched }
figure-lining-sewn = Beim Nähen: das Futter außen, der Saum rechts
figure-lining-turned = Gewendet: die Innenseite oben, der Bund links
figure-lining-alt = Zwei Schnitte. Vorher liegen aufeinander, die Schnittkanten bündig, { $seam-width } daneben gesteppt: { EDGE($to) }, { PIECE($band) } gefaltet, { PIECE($lining) }. Nachher steht der Bund nach oben, das Futter liegt innen, die Nahtzugaben zwischen ihm und den Lagen.
figure-lining-caption = Die Taille im Schnitt, vor und nach dem Wenden des Futters. Eine Lage steht für alle.{ figure-hatched }
