### Was alle Schnitte durch die Arbeit gleich sagen.

figure-right-side-up = Rechte Stoffseite oben
figure-inside-up = Innenseite oben
figure-finished-edge = fertige Kante
# Beendet eine Bildunterschrift. $sided: ob ein Stoff im Schnitt eine rechte und eine linke Seite hat.
figure-hatched = { $sided ->
    [yes] { " " }Die schraffierte Hälfte eines Stoffs ist seine linke Stoffseite.
   *[no] { "" }
 }
