### Die Stücke, in denen ein Teil zugeschnitten ist, zu einem Streifen zusammennähen.
### $piece: das Teil, aus dem es $copies Streifen gibt. $pieces: alle Teile des Schritts, die in Stücken zugeschnitten sind.

join-strips-title = Die Streifen von { PIECE($pieces) } zusammennähen
join-strips-aim = Jeder Streifen ist aus einem Stück.

# Die Zettel sind die des Zuschnittplans.
join-strips-lay = Die Stücke von { PIECE($piece) } in der Reihenfolge ihrer Zettel auslegen, lange Kanten bündig. Die kurzen Enden, die einander gegenüberliegen, rechts auf rechts { pin-start }.
    .check = { $copies ->
        [one] Alle Stücke des Streifens liegen gleich herum.
       *[other] Jeder Streifen hat die Stücke mit seiner eigenen Nummer, und sie liegen gleich herum.
     }
join-strips-sew = Jede Verbindungsnaht { $seam-width } neben den Enden steppen, { $stitch }; an beiden Enden verriegeln. Beide Nahtzugaben mit dem Fingernagel zur selben Seite streichen, gleich zu welcher.
    .check = Alle Nahtzugaben stehen auf der linken Stoffseite.
    .remedy = Eine Verbindungsnaht, deren Zugabe auf der rechten Stoffseite steht, auftrennen, ein Stück umdrehen und neu steppen.
join-strips-measure = { $copies ->
    [one] Den zusammengesetzten Streifen messen: { $whole }.
   *[other] Jeden zusammengesetzten Streifen messen: { $whole }.
 }
    .check = { $copies ->
        [one] Der Streifen von { PIECE($piece) } ist von Schnittkante zu Schnittkante { $whole } lang.
       *[other] Jeder Streifen von { PIECE($piece) } ist von Schnittkante zu Schnittkante { $whole } lang.
     }
    .tolerance = { $off } mehr oder weniger
    .remedy = Ist er länger, ein Ende rechtwinklig kürzen. Ist er kürzer, die zu breite Verbindungsnaht auftrennen und neu steppen. Ist keine zu breit, den Streifen mit einem Stoffrest verlängern und zuschneiden.

## Hinter einem Schritt, in Klammern

join-strips-joins-for = { $copies ->
    [one] { chain-joins }
   *[other] { chain-joins } für { $copies } Streifen
 }
