### Bänder mit Ringen innen im Rücken eines Rocks, herabgelassen und gerafft.

figure-bustle-tapes-down = Herabgelassen, von innen
figure-bustle-tapes-up = Gerafft
figure-bustle-tapes-alt = { $tapes ->
    [one] Ein { $long } langes Band innen am Rücken, { $below } unter der Oberkante, mit { $rings } Ringen im Abstand von { $every } und einer Kordel am untersten. Gerafft ist es { $left } lang, und der Saum liegt { $up } höher.
   *[other] { $tapes } je { $long } lange Bänder innen am Rücken, unten { $apart } voneinander und { $below } unter der Oberkante, jedes mit { $rings } Ringen im Abstand von { $every } und einer Kordel am untersten. Gerafft sind sie { $alike ->
        [yes] { $left } lang
       *[no] von der hinteren Mitte nach außen { $lefts } lang
     }, und der Saum liegt { $up } höher.
 }
figure-bustle-tapes-caption = Die Bänder herabgelassen, und eines der mittleren gerafft, mit dem Knoten am obersten Ring.
figure-bustle-tapes-loop = Schlaufe
figure-bustle-tapes-end = Ende
