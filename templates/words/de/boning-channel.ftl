### Rund um einen Rock einen Tunnel aus Band aufnähen und einen Reifen einziehen.

boning-channel-title = Einen Reifen in { PIECE($piece) } einziehen
    .number = { $around }
boning-channel-aim = Ein Reifen von { $around } hält den Rock auseinander.

## Den Tunnel nähen

boning-channel-mark = Innen auf { PIECE($piece) } rundum eine Linie anzeichnen, { line-place }.
    .check = Die Linie hält ihren Abstand: Ein Reifen, der absinkt, fällt sofort auf.
    .tolerance = { $line-off } mehr oder weniger
    .remedy = Wo sie absinkt, neu anzeichnen.
boning-channel-cut-tape = Vom Band ({ $tape }) { $tape-length } abschneiden: { $around } und an jedem Ende { $fold } zum Einschlagen.
boning-channel-pin = Das Band ({ $tape }) mit der unteren Kante auf die Linie legen und alle { $spacing } { pin-start }. In der hinteren Mitte beginnen, beide Enden eingeschlagen, so dass sie gerade aneinanderstoßen.
boning-channel-sew-lower = { $from-edge } neben der unteren Kante des Bands steppen, { $around } rundum, { $stitch }. Das Ende drei Stiche über den Anfang nähen.
boning-channel-sew-upper = { $from-edge } neben der oberen Kante steppen, { $stitched }, { $stitch }, und eine Öffnung von { $gap } lassen, wo die Enden zusammentreffen. Auf beiden Seiten der Öffnung verriegeln.
    .check = Der Tunnel ist rundum offen: eine Durchziehnadel durchschieben.
    .remedy = Auftrennen, was ihn schließt.

## Den Reifen einziehen

boning-channel-cut-bone = Das Reifenband ({ $bone }) auf { $bone-length } schneiden und beide Enden abdecken oder umwickeln.
    .check = Kein Ende ist blank.
    .remedy = Neu abdecken: Ein blankes Ende arbeitet sich durch.
boning-channel-push = Durch den Tunnel schieben, die Enden { $overlap } überlappen und die Überlappung fest umwickeln.
    .check = Der Reifen misst rundum { $around }, der Stoff liegt faltenlos darauf.
    .tolerance = { $hoop-off } mehr oder weniger
    .remedy = Wo der Stoff spannt, die Enden mehr überlappen, wo er durchhängt, weniger.
boning-channel-close = Die Öffnung von { $gap } von Hand schließen.
