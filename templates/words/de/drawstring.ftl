### Eine Kordel durch einen Tunnel ziehen; ihre Enden kommen aus der Öffnung und werden gebunden.
### $band ist der Bund oder das Teil, dessen Kante umgelegt wurde; $cord die Kordel.

drawstring-title = Die Kordel einziehen
    .number = { $cut }
drawstring-aim = Eine Kordel zieht { $casing } Tunnel zusammen; sie wird vorn gebunden.
# Der Tunnel ist flach: Die Kordel geht an einem Ende hinein und am anderen heraus.
drawstring-aim-flat = Eine Kordel läuft durch { $casing } Tunnel und wird um die Taille gebunden.

## Die Öffnung und die Kordel

drawstring-bars = An beiden Enden der Öffnung von { $gap } einen kurzen Riegel aus Zickzackstichen nähen.
    .check = Die Öffnung kann nicht weiter aufreißen.
    .remedy = Den Riegel noch einmal übernähen.
# $finish: was ein Knoten oder ein Bruch von jedem Ende braucht.
drawstring-cut = Die Kordel ({ $cord }) auf { $cut } schneiden: { $casing } für den Tunnel und zweimal { $ends } für ein Ende und { $finish } für dessen Abschluss.
    .check = Sie misst { $cut }, wenn sie locker neben dem Maßband liegt.
drawstring-wrap = Um beide Enden etwas Klebestreifen wickeln, damit sie unterwegs nicht ausfransen.

## Durch den Tunnel

drawstring-thread = In ein Ende eine Sicherheitsnadel oder Durchziehnadel stecken und rundum durch den Tunnel bis zur Öffnung schieben.
    .check = Die Kordel ist nicht verdreht.
    .remedy = Ist sie verdreht, die letzte Handlänge zurückziehen, drehen und weiterschieben.
drawstring-thread-flat = In ein Ende eine Sicherheitsnadel oder Durchziehnadel stecken und durch den Tunnel schieben, an einem Ende hinein und am anderen heraus.
    .check = { drawstring-thread.check }
    .remedy = { drawstring-thread.remedy }
# Die Enden kommen aus Löchern, die vorn gearbeitet wurden.
drawstring-thread-holes = In ein Ende eine Sicherheitsnadel oder Durchziehnadel stecken, bei einem { cord-hole } hinein, rundum durch den Tunnel und beim anderen heraus schieben.
    .check = { drawstring-thread.check }
    .remedy = { drawstring-thread.remedy }
drawstring-even = { PIECE($band) } flach hinlegen und die Enden gleich lang ziehen.
    .check = An jedem Ende hängen { $out } heraus.
    .tolerance = { $ends-off } mehr oder weniger
    .remedy = Die Kordel zur kürzeren Seite nachziehen.
drawstring-bar-behind = Die Kordel ({ $cord }) in der hinteren Mitte, gegenüber der Öffnung, mit einem kurzen Riegel durch alle Lagen an { PIECE($band) } festnähen.
    .check = Sie lässt sich nicht herausziehen.
    .remedy = Den Riegel noch einmal übernähen.

drawstring-bar-flat = Die Kordel ({ $cord }) in der Mitte des Tunnels mit einem kurzen Riegel aus Zickzackstichen durch alle Lagen festnähen: { PIECE($band) }.
    .check = { drawstring-bar-behind.check }
    .remedy = { drawstring-bar-behind.remedy }
drawstring-bar-behind-holes = Die Kordel ({ $cord }) in der hinteren Mitte, gegenüber den Löchern ({ cord-holes }), mit einem kurzen Riegel durch alle Lagen an { PIECE($band) } festnähen.
    .check = { drawstring-bar-behind.check }
    .remedy = { drawstring-bar-behind.remedy }

## Die Enden

# Eine erwachsene Person trägt es.
drawstring-knot = Den Klebestreifen abnehmen und in jedes Ende einen festen Knoten machen. Was mehr als { $beyond } über den Knoten hinaussteht, abschneiden, den Schnitt mit Textilkleber betupfen.
    .check = { drawstring-hang.check }
    .tolerance = { drawstring-hang.tolerance }
    .remedy = Den Knoten öffnen und näher an der Spitze oder weiter davon neu knüpfen.
# Ein Kind trägt es: Ein Knoten oder eine Perle am Ende bleibt hängen.
drawstring-fold = Den Klebestreifen abnehmen, beide Schnittenden mit Textilkleber betupfen und trocknen lassen. Jedes Ende zweimal einschlagen, je { $half-finish }, und von Hand flach festnähen. Keinen Knoten machen: Er bleibt hängen.
    .check = { drawstring-hang.check }
    .tolerance = { drawstring-hang.tolerance }
    .remedy = Den Einschlag auftrennen. Abschneiden, was zu lang ist, und neu einschlagen.
# Nur als Teil der beiden darüber gesagt. $waist-known: Bekannt ist, wie weit die Enden hängen, wenn die Taille zusammengezogen ist.
drawstring-hang =
    .check = { $waist-known ->
        [yes] An jedem Ende hängen { $ends } heraus. Auf die Taille zusammengezogen hängen an jedem Ende { $drawn } heraus.
       *[no] An jedem Ende hängen { $ends } heraus.
     }
    .tolerance = { $ends-off } mehr oder weniger
