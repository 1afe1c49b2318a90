### Eine Kante in einseitige Falten, Quetschfalten oder Kellerfalten legen.

pleats-title = { $kind ->
    [knife] { EDGE($edge, at: "start") } in einseitige Falten legen
    [box] { EDGE($edge, at: "start") } in Quetschfalten legen
   *[inverted] { EDGE($edge, at: "start") } in Kellerfalten legen
 }
    .number = { $cloth } → { $length }
pleats-aim = { $count ->
    [one] { $cloth } − { $length } = { $taken } liegen in { $count } Falte, { $depth } tief.
   *[other] { $cloth } − { $length } = { $taken } liegen in { $count } Falten, je { $depth } tief.
 }

## Markierungen

pleats-mark-ring = { $count ->
    [one] { EDGE($edge, at: "start") } einmal markieren, an der Naht.
   *[other] { EDGE($edge, at: "start") } alle { $every } markieren, { $count }-mal, die erste Markierung an der Naht.
 }
    .check = { $count ->
        [one] { $count } Markierung.
       *[other] { $count } Markierungen, die letzte { $every } vor der ersten.
     }
    .tolerance = insgesamt { $mark-off }
    .remedy = Was übrig bleibt, auf alle Markierungen verteilen.
# Einseitige Falten beginnen an ihren Markierungen.
pleats-mark-flat = { $count ->
    [one] { EDGE($edge, at: "start") } einmal markieren, an einem Ende.
   *[other] { EDGE($edge, at: "start") } von einem Ende aus alle { $every } markieren, { $count }-mal.
 }
    .check = { $count ->
        [one] { $count } Markierung.
       *[other] { $count } Markierungen, die letzte { $every } vor dem anderen Ende.
     }
    .tolerance = { pleats-mark-ring.tolerance }
    .remedy = { pleats-mark-ring.remedy }
# Quetschfalten und Kellerfalten haben ihre Markierung in der Mitte.
pleats-mark-flat-middles = { $count ->
    [one] { EDGE($edge, at: "start") } einmal markieren, in der Mitte.
   *[other] { EDGE($edge, at: "start") } alle { $every } markieren, { $count }-mal, die erste Markierung { $half } neben einem Ende.
 }
    .check = { $count ->
        [one] { $count } Markierung, { $half } von beiden Enden.
       *[other] { $count } Markierungen, die letzte { $half } vor dem anderen Ende.
     }
    .tolerance = { pleats-mark-ring.tolerance }
    .remedy = { pleats-mark-ring.remedy }
pleats-lines-knife = Bei jeder Markierung { $twice } weiter eine zweite Linie anzeichnen.
pleats-lines-box = Bei jeder Markierung zu beiden Seiten im Abstand von { $half-shown } eine Linie anzeichnen.
pleats-lines-inverted = Bei jeder Markierung zu beiden Seiten im Abstand von { $twice } eine Linie anzeichnen.

## Falten legen

pleats-fold-knife = An der zweiten Linie falten und den Bruch zur ersten Markierung zurücklegen, alle Brüche in einer Richtung. Jede Falte { pin-start }.
pleats-fold-box = Beide Linien nach hinten falten, { $depth } tief, so dass jede Quetschfalte an die nächste stößt. Jeden Bruch { pin-start }.
pleats-fold-inverted = Beide Linien zur Markierung dazwischen legen, so dass die zwei Brüche vorn aneinanderstoßen. Jeden Bruch { pin-start }.

## Messen und festhalten

pleats-measure-ring = Die gefaltete Kante rundum messen: { $length }.
    .check = Sie ist { $length } lang, von jeder Falte sind { $shown } zu sehen.
    .tolerance = { $off } mehr oder weniger
    .remedy = Zu lang: einige Falten eine Spur tiefer legen. Zu kurz: weniger tief. Auf viele Falten verteilen.
pleats-measure-flat = Die gefaltete Kante messen: { $length }.
    .check = { pleats-measure-ring.check }
    .tolerance = { pleats-measure-ring.tolerance }
    .remedy = { pleats-measure-ring.remedy }
pleats-sew-down = Die Falten { $from-edge } neben der Kante mit der größten Stichlänge feststeppen, { $length }. Diese Naht bleibt in der Nahtzugabe.
pleats-press = Die Falten von oben her bügeln, so weit hinab, wie sie scharf bleiben sollen. Das Eisen abheben und aufsetzen, nicht schieben.
