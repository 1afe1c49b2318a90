### Bahnen zuschneiden, die zum Saum hin weiter werden, Kopf an Fuß aus Rechtecken.

figure-gores-head = Das Rechteck
figure-gores-top = oben
figure-gores-hem = Saum
figure-gores-alt = { $paired ->
    [yes] Ein Rechteck von { $wide } mal { $high } mit einer schrägen Linie von { $narrow } an der oberen Kante bis { $broad } an der unteren: zwei Keilbahnen, Kopf an Fuß.
   *[no] Ein Rechteck von { $wide } mal { $high } mit einer schrägen Linie von { $narrow } an der oberen Kante zur unteren rechten Ecke: eine Keilbahn.
 }
figure-gores-row-head = { $times ->
    [one] Ein Rechteck, { $count ->
        [one] eine Keilbahn
       *[other] { $count } Keilbahnen
    }
   *[other] { $times } Rechtecke, je { $count ->
        [one] eine Keilbahn
       *[other] { $count } Keilbahnen
    }
 }
figure-gores-diagonal = beide Diagonalen { $diagonal }
figure-gores-row-alt = Ein Rechteck von { $wide } mal { $high }, beide Diagonalen { $diagonal }, mit schrägen Linien von der oberen zur unteren Kante, von links: { $lines }. Dazwischen liegen die Keilbahnen Kopf an Fuß.
figure-gores-caption = Wie die Keilbahnen im Rechteck liegen.
