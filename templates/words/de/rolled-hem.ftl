### Die Kante eines dünnen Stoffs zu einem Saum von wenigen Millimetern rollen.
### $edge: die Kante, die gesäumt wird.

rolled-hem-title = { PIECE($edge) } mit Rollsaum säumen
    .number = { $roll }
rolled-hem-aim = Ein sehr schmaler Saum hält die Kante.

## Mit dem Rollsaumfuß

rolled-hem-fit-foot = Einen Rollsaumfuß für { $roll } einsetzen. Auf einem Rest desselben Stoffs ausprobieren.
rolled-hem-thin-seams = Wo eine Naht auf { EDGE($edge) } trifft, die Ecken der Nahtzugaben schräg abschneiden, damit sie durch den Fuß passen.
rolled-hem-begin-ring = Linke Stoffseite oben: neben { side-seam } { EDGE($edge) } auf den ersten { $first } zweimal { $roll } einschlagen. Den Bruch unter den Fuß legen, die Nadel in den Stoff.
rolled-hem-begin-flat = Linke Stoffseite oben: an einem Ende { EDGE($edge) } auf den ersten { $first } zweimal { $roll } einschlagen. Den Bruch unter den Fuß legen, die Nadel in den Stoff.
rolled-hem-sew-foot-ring = Auf dem Bruch steppen. Dann die offene Kante in die Schnecke des Fußes führen und weitersteppen, { $stitch }, die Kante vor dem Fuß hochhalten. { $first } vor dem Anfang anhalten und die Kante aus der Schnecke nehmen. Den Rest von Hand einschlagen und drei Stiche über den Anfang nähen: insgesamt { $length }.
rolled-hem-sew-foot-flat = Auf dem Bruch steppen. Dann die offene Kante in die Schnecke des Fußes führen und weitersteppen, insgesamt { $length }, { $stitch }, die Kante vor dem Fuß hochhalten.
rolled-hem-foot-off = Wieder den normalen Nähfuß einsetzen.

## Von Hand

rolled-hem-crease = { $twice } neben { EDGE($edge, case: "dative") } eine Linie steppen oder falzen, dann lose Fäden abschneiden.
rolled-hem-roll = Linke Stoffseite oben: die Kante zwischen Daumen und Finger auf { $roll } rollen, immer eine Handlänge.
rolled-hem-sew-hand = Die Rolle mit Blindstichen annähen, alle { $every } ein Stich, { $length }: einen Faden des Stoffs aufnehmen, dann durch die Rolle. An beiden Enden den Faden in der Rolle vernähen.

## Mit der Overlock

rolled-hem-set-overlocker = Die Overlock auf Rollsaum einstellen: Stichzunge weg, { $stitch }, unterer Greifer fest. Auf einem Stoffrest ausprobieren.
rolled-hem-sew-overlocker-ring = Rechte Stoffseite oben: { EDGE($edge) } nähen, { $length }; das Messer nimmt nur lose Fäden weg. { $past } über den Anfang nähen, dann vom Stoff nähen.
rolled-hem-sew-overlocker-flat = Rechte Stoffseite oben: { EDGE($edge) } nähen, { $length }; das Messer nimmt nur lose Fäden weg. An beiden Enden vom Stoff nähen.
rolled-hem-chain = An Anfang und Ende eine Fadenkette von { $tail } stehen lassen. Jede in eine stumpfe Nadel fädeln, unter die Stiche ziehen und den Rest abschneiden.
    .check = Keine Fadenkette hängt lose heraus.
rolled-hem-set-back = Die Overlock wieder auf Versäubern einstellen.

## Nachsehen

rolled-hem-look = { EDGE($edge, at: "start") } auf ganzer Länge nachsehen.
    .check = Die Rolle ist { $roll } breit, keine offene Kante steht heraus.
    .tolerance = { $off } mehr oder weniger
    .remedy = Auf beiden Seiten der Stelle eine Handbreit auftrennen, neu rollen und nähen.
rolled-hem-look-overlocker = { rolled-hem-look }
    .check = { rolled-hem-look.check }
    .tolerance = { rolled-hem-look.tolerance }
    .remedy = Abschneiden, was heraussteht, und diese Strecke mit ausgeschaltetem Messer noch einmal übernähen.
