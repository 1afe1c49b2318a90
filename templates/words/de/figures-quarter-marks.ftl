### Die beiden Kanten einer Naht mit ihren Markierungen und Stecknadeln, bevor sie genäht werden.
### $to: die Teile der oberen Kante, $edge: die der unteren.

figure-marks-above = { PIECE($to, at: "start") }
figure-marks-below = { $under ->
    [yes] { PIECE($edge, at: "start") }, an der Maschine unten
   *[no] { PIECE($edge, at: "start") }, an der Maschine oben
 }
figure-marks-other-seam = andere Naht
figure-marks-every = alle { $part } eine Markierung

figure-marks-hold-ring = Die Kanten sind Ringe: Die erste und die letzte Markierung sind dieselbe Seitennaht. { figure-marks-hold }
figure-marks-hold-flat = Die erste und die letzte Markierung sind die beiden Enden. { figure-marks-hold }
# Nur in den beiden darüber gesagt.
figure-marks-hold = { $hold ->
    [clips] Zuerst Klammern an den Markierungen, dann alle { $spacing }.
   *[pins] Zuerst Stecknadeln an den Markierungen, dann alle { $spacing }.
 }

figure-marks-alt = { $hold ->
    [clips] { PIECE($to, at: "start") } oben und { PIECE($edge) } unten, je { $length } lang, in { $parts } gleiche Strecken geteilt, alle { $part } eine Markierung, Klammern an den Markierungen und dazwischen.
   *[pins] { PIECE($to, at: "start") } oben und { PIECE($edge) } unten, je { $length } lang, in { $parts } gleiche Strecken geteilt, alle { $part } eine Markierung, Stecknadeln an den Markierungen und dazwischen.
 }
figure-marks-caption = Markierung auf Markierung, rechts auf rechts.
