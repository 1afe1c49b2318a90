### Gummiband mit Knopflöchern durch einen Tunnel ziehen; sein Ende wird innen angeknöpft und lässt sich auslassen.
### $piece: der Bund, oder das Teil, dessen Kante umgelegt wurde.

adjustable-elastic-title = Das Gummiband zum Knöpfen einziehen
    .number = { $first }
adjustable-elastic-aim = Das Gummiband misst zuerst rundum { $first } und lässt sich auf { $out } auslassen.

adjustable-elastic-bars = An beiden Enden der Öffnung von { $gap } einen kurzen Riegel aus Zickzackstichen nähen: Sie bleibt offen.
    .check = Ein Zug öffnet sie nicht weiter.
adjustable-elastic-try = Vor dem Abschneiden das Gummiband mit einer Sicherheitsnadel zu einem Ring von { $first } stecken. Um die Taille legen, hinsetzen und einatmen.
    .check = Es hält und schneidet nicht ein. Zwei Finger passen darunter.
    .remedy = Länger oder kürzer stecken, bis es passt, diese Länge statt { $first } nehmen und so viel mehr oder weniger abschneiden.
adjustable-elastic-cut = Das Gummiband ({ $elastic }) auf { $cut } schneiden: { $out } rundum, { $reach } bis zum Knopf, { $fast } für das feste Ende und { $hem } für das andere. Zwischen zwei Knopflöchern schneiden.
    .check = Es misst { $cut }, wenn es locker neben dem Maßband liegt.
adjustable-elastic-lay-end = An einem Ende { $half-fast } einschlagen. Auf die Innenseite gesehen das Ende links von der Öffnung in den Tunnel legen, den Bruch bündig mit ihrem linken Ende; das Gummiband führt von ihr weg.
adjustable-elastic-fast = Es mit einem Quadrat aus Zickzackstichen nur durch Gummiband und innere Lage festnähen.
    .check = Fest ziehen: Nichts gibt nach. Außen ist kein Stich zu sehen.
    .remedy = Das Quadrat noch einmal übernähen.
adjustable-elastic-thread = In das andere Ende eine Sicherheitsnadel oder Durchziehnadel stecken und rundum durch den Tunnel schieben, zur Öffnung heraus. Dabei den Stoff über das Gummiband zurückschieben.
    .check = Das Gummiband liegt rundum flach.
    .remedy = Ist es verdreht, die letzte Handlänge zurückziehen, drehen und weiterschieben.
adjustable-elastic-hem = Dieses Ende zweimal einschlagen, je { $half-hem }, und quer darüber steppen.
adjustable-elastic-button = Einen flachen Knopf von { $button } Breite innen auf den Tunnel nähen, { $reach } links von der Öffnung: Das lose Ende liegt über dem festen. Nur die innere Lage fassen.
    .check = Ein fester Zug bewegt ihn nicht, und außen ist kein Stich zu sehen.
    .remedy = Noch einmal annähen.
adjustable-elastic-close = Das Gummiband auf { $first } zusammenziehen und dort anknöpfen. Die nächsten Knopflöcher, { $slots } voneinander, lassen es um bis zu { $more } aus.
    .check = Das Ende liegt innen flach, und die Weite ist rundum gleich verteilt.
    .remedy = Die Weite mit den Fingern am Gummiband entlangschieben.
