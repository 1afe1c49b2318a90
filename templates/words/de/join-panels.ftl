### Die Teile einer Sorte Seite an Seite zu einer flachen Länge nähen.

join-panels-title = Die Bahnen von { PIECE($piece) } zusammennähen
    .number = { $seam-width }
join-panels-aim = { $panels } Bahnen werden zu einer flachen Länge; ihre beiden äußeren Seiten bleiben offen.
join-panels-lay = Jede Bahn auf die nächste legen, { faces-together } und oben auf oben, die letzte aber nicht auf die erste. Die Seiten entlang { pin }, je { $length }.
    .check = Alle oberen Kanten liegen am selben Ende, und zwei Seiten bleiben übrig: die äußeren.
    .remedy = Die falsch liegende herausnehmen und wenden.
join-panels-sew = { $length } steppen, { $seam-width } von der Kante, { $stitch }, an beiden Enden ein paar Stiche zurück. Beide Nahtzugaben mit dem Fingernagel zur selben Seite falten, bei jeder Naht gleich herum.
join-panels-measure = { PIECE($piece) } flach auslegen und die untere Kante von Seite zu Seite messen: { $whole }.
    .check = Sie ist { $whole } lang, beide äußeren Seiten noch ungesäumt.
    .tolerance = { $off } mehr oder weniger
    .remedy = Ist sie zu lang, eine Naht etwas breiter nachnähen; ist sie zu kurz, eine auftrennen und schmaler nähen.
