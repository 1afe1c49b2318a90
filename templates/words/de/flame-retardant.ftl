### Teile mit einem Mittel gegen Feuer behandeln, wie sein Hersteller sagt.
### $agent: wie das Mittel heißt; $liquid: wie viel davon gebraucht wird, gebrauchsfertig.

flame-retardant-title = Gegen Feuer behandeln: { PIECE($pieces) }
    .number = { $liquid }
flame-retardant-aim = { PIECE($pieces, at: "start") }: mit { $agent } durchnässt und getrocknet. Es brennt langsamer, bis es gewaschen wird.
flame-retardant-caution = Keine Behandlung macht Stoff feuersicher: Er brennt trotzdem. Etikett und Sicherheitsblatt des Mittels, die örtlichen Vorschriften und das Wort der Brandschutzverantwortlichen einer Bühne oder Halle gehen dieser Anleitung vor. Nie selbst mit einer Flamme probieren, sondern prüfen lassen.
flame-retardant-caution-skin = Solche Mittel reizen Haut und Augen: Handschuhe und Augenschutz tragen, ein Fenster öffnen, Kinder und Essen fernhalten und nichts anders weggießen, als das Etikett sagt.
flame-retardant-caution-mist = Den Nebel nicht einatmen: im Freien oder in einem gut gelüfteten Raum sprühen, mit der Maske, die das Etikett verlangt.
flame-retardant-caution-child = Manche Mittel sind nicht für Kleidung, nicht für Kinder oder nicht auf der Haut: dieses nur nehmen, wenn das Etikett es erlaubt, und nur über anderer Kleidung, wenn es nicht mehr sagt.

flame-retardant-read = Das Etikett des Mittels ({ $agent }) lesen: ob es die Faser nennt, wie es gemischt wird, wie viel ein Gewicht Stoff braucht und was es mit Farben macht. Zum letzten Mal waschen und trocknen: { PIECE($pieces) }.
    .check = Das Etikett nennt die Faser und erlaubt Kleidung.
    .remedy = Wenn nicht, es nicht nehmen, sondern ein Mittel, das es tut.
flame-retardant-mix = { $liquid } des Mittels ({ $agent }) gebrauchsfertig machen, wie sein Etikett sagt. Zuerst einen Stoffrest behandeln und trocknen lassen.
    .check = Er zeigt keine Flecken, klebt nicht und hat seine Farbe behalten.
    .remedy = Hat er sich verändert, vor dem Weitermachen den Hersteller des Mittels fragen.
flame-retardant-dip = In das Mittel legen und alle Luft herausdrücken: { PIECE($pieces) }. So lange untergetaucht lassen, wie das Etikett sagt, dann gleichmäßig ausdrücken. Nicht spülen.
    .check = Es ist durchnässt, ohne helle Stelle.
    .remedy = Wo eine Stelle trocken blieb, noch einmal einlegen.
flame-retardant-spray = Über einem Laken aufhängen und von beiden Seiten sprühen, Lage für Lage, bis es durchnässt ist und tropft: { PIECE($pieces) }.
    .check = Es ist durchnässt, ohne helle Stelle.
    .remedy = Wo eine Stelle trocken blieb, noch einmal sprühen.
flame-retardant-dry = Hängend abtropfen und an der Luft trocknen lassen, so lange das Etikett sagt: fern von Heizung und Flammen.
    .check = Es ist ganz trocken und zeigt keine weiße Kruste.
    .remedy = Eine Kruste im Freien leicht abbürsten.
flame-retardant-keep = Den behandelten Stoffrest mit dem Namen des Mittels ({ $agent }) und dem Tag in einen Beutel legen, für alle, die das Kleidungsstück prüfen.
flame-retardant-label = Mit einem waschfesten Stift auf ein Baumwollband schreiben: behandelt, der Tag, { $agent }, NICHT WASCHEN. Es neben dem anderen Etikett einnähen.
    .check = Wer es trägt oder aufbewahrt, kann es lesen. Nach jeder Wäsche und einmal im Jahr wird es neu behandelt und geprüft.
