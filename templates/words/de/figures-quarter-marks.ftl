### Eine Kante mit ihren Markierungen, dann ein Stück der beiden Kanten, zusammengesteckt, bevor sie genäht werden.
### $to: die Teile der oberen Kante, $edge: die der angenähten; $up: die Teile, die an der Maschine oben liegen, $under: die darunter.

figure-marks-edge = { PIECE($to, at: "start") }
figure-marks-other-seam = andere Naht
figure-marks-every = alle { $part } eine Markierung
figure-marks-both-faces = { $ring ->
    [yes] Beide Enden sind die Seitennaht. Eine Ecke ist umgeschlagen: beide Stoffseiten markieren.
   *[no] Eine Ecke ist umgeschlagen: beide Stoffseiten markieren.
 }
figure-marks-alt = { PIECE($to, at: "start") }, die Kante { $length } lang, in { $parts } gleiche Strecken geteilt, alle { $part } eine Markierung auf beiden Stoffseiten.

figure-pinned-up = { PIECE($up, at: "start") }, linke Seite oben
figure-pinned-mark = Markierung
figure-pinned-below = Darunter, wo die Ecke umgeschlagen ist, die rechte Seite oben und die Kanten bündig: { PIECE($under) }.
figure-pinned-alt = { $hold ->
    [clips] Ein Stück beider Kanten, bündig, oben mit der linken Seite nach oben { PIECE($up) }, darunter { PIECE($under) }, rechts auf rechts; eine Klammer an der Markierung und eine alle { $spacing }.
   *[pins] Ein Stück beider Kanten, bündig, oben mit der linken Seite nach oben { PIECE($up) }, darunter { PIECE($under) }, rechts auf rechts; eine Stecknadel an der Markierung und eine alle { $spacing }.
 }
figure-pinned-caption = Markierung auf Markierung, rechts auf rechts.
