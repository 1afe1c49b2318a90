### Falten: die Linien auf dem flachen Stoff, und die gefaltete Kante von oben gesehen.

figure-pleats-flat = Markierungen auf dem flachen Stoff, rechte Stoffseite oben
figure-pleats-folded = Gefaltet, die Kante von oben gesehen
figure-pleats-shown = sichtbar { $shown }
figure-pleats-depth = Jede Falte ist { $depth } tief. Die rechte Stoffseite ist unten.
figure-pleats-lines = Dicke Linien sind die Markierungen, Strich-Punkt-Linien die Brüche. Die gefaltete Kante ist größer gezeichnet.
figure-pleats-alt = { $kind ->
    [knife] Einseitige Falten: alle { $every } eine Markierung auf dem flachen Stoff, jede Falte { $depth } tief, davon { $shown } sichtbar; { $count } Falten bringen { $cloth } auf { $length }.
    [box] Quetschfalten: alle { $every } eine Markierung auf dem flachen Stoff, jede Falte { $depth } tief, davon { $shown } sichtbar; { $count } Falten bringen { $cloth } auf { $length }.
   *[inverted] Kellerfalten: alle { $every } eine Markierung auf dem flachen Stoff, jede Falte { $depth } tief, davon { $shown } sichtbar; { $count } Falten bringen { $cloth } auf { $length }.
 }
figure-pleats-caption = { $kind ->
    [knife] { $drawn } von { $count } einseitigen Falten, flach und gelegt.
    [box] { $drawn } von { $count } Quetschfalten, flach und gelegt.
   *[inverted] { $drawn } von { $count } Kellerfalten, flach und gelegt.
 }
