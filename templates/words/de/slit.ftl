### Den am Saum offenen Teil einer Naht fertig nähen, als Schlitz oder als Gehschlitz mit Untertritt.

slit-title = Den Schlitz in { PIECE($pieces) } fertig nähen
    .number = { $long }
slit-title-vent = Den Gehschlitz in { PIECE($pieces) } fertig nähen
    .number = { $long }
slit-aim = Der Schlitz ist über dem Saum { $long } lang, seine Kanten liegen flach.
slit-aim-vent = Der Gehschlitz ist über dem Saum { $long } lang und überlappt { $margin }.
slit-press = Beide Nahtzugaben entlang der Öffnung und weiter entlang der Naht darüber umbügeln, je { $margin }.
    .check = Beide Brüche setzen die Nahtlinie fort.
    .remedy = Am Lineal entlang neu bügeln.
slit-sew = Rechte Seite oben, { $beside } neben der Öffnung vom Saum bis zu ihrem Ende steppen, mit der Nadel im Stoff drehen, quer und auf der anderen Seite hinunter steppen, { $stitch }; an beiden Enden verriegeln.
    .check = Beide Steppnähte fassen die Nahtzugabe überall.
    .remedy = Wo eine Nahtzugabe herausgerutscht ist, auftrennen und diese Strecke neu steppen.
slit-bar = Am Ende der Öffnung quer einen { $bar } langen Riegel nähen, vier Nähte aufeinander.
slit-press-vent = Beide Nahtzugaben zu einer Seite bügeln, { $margin } breit, beim Tragen die linke oben. Entlang der Öffnung die obere Nahtzugabe in der Nahtlinie zurückschlagen; die untere bleibt darunter stehen.
    .check = Geschlossen überlappen die Seiten { $margin } und hängen gleich lang.
    .tolerance = { $close-off } mehr oder weniger am Saum
    .remedy = Die längere Seite frei hängen lassen und ihren Bruch neu bügeln.
slit-hold-vent = Die umgeschlagene Nahtzugabe { $beside } neben ihrer Kante festnähen, die Öffnung flach ausgebreitet, von der unteren Kante bis zum Ende der Öffnung, { $now }, { $stitch }.
slit-across-vent = Rechte Seite oben, am Ende der Öffnung schräg eine { $margin } lange Linie anzeichnen und darauf durch beide Nahtzugaben steppen, hin und zurück.
    .check = Innen sind beide Nahtzugaben gefasst.
    .remedy = Daneben eine zweite Naht steppen.
