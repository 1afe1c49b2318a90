### Bahnen zuschneiden, die zum Saum hin weiter werden, zwei aus jedem Rechteck durch eine schräge Linie.

figure-gores-head = Das Rechteck
figure-gores-top = oben
figure-gores-hem = Saum
figure-gores-alt = { $paired ->
    [yes] Ein Rechteck von { $wide } mal { $high } mit einer schrägen Linie von { $narrow } an der oberen Kante bis { $broad } an der unteren: zwei Keilbahnen, Kopf an Fuß.
   *[no] Ein Rechteck von { $wide } mal { $high } mit einer schrägen Linie von { $narrow } an der oberen Kante zur unteren rechten Ecke: eine Keilbahn.
 }
figure-gores-caption = Wie die Keilbahnen im Rechteck liegen.
