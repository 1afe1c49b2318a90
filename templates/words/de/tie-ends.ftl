### Zwei Bindebänder nähen und an die Enden eines Bunds steppen.

tie-ends-title = Bindebänder an { PIECE($band) } nähen
    .number = { $tie-long }
tie-ends-aim = Die Taille schließt mit Bindebändern von { $tie-long }.

## Jedes Bindeband

tie-ends-fold = Jedes Bindeband der Länge nach rechts auf rechts zur Hälfte falten und { pin }.
tie-ends-sew = { $seam-width } neben den Kanten steppen, { $stitch }, am Bindeband entlang und über ein Ende, { $around }. Das andere Ende offen lassen.
tie-ends-turn = Die Ecken zurückschneiden, das Bindeband mit einem stumpfen Stäbchen wenden und bügeln.
    .check = Es ist { $depth } breit.
    .tolerance = { $wide-off } mehr oder weniger
    .remedy = Die Naht mit den Fingern herausrollen und neu bügeln.
tie-ends-turn-under = Das offene Ende { $under } nach innen einschlagen und bügeln.

## Am Bund

tie-ends-lay = Dieses Ende { $lap } weit innen auf ein Ende von { PIECE($band) } legen und { pin }.
    .check = Das Bindeband steht { $tie-long } über den Bund hinaus.
    .tolerance = { $length-off } mehr oder weniger
    .remedy = Vor dem Nähen verschieben.
tie-ends-stitch = Rund um die Überlappung ein Rechteck von { $lap } mal { $depth } steppen, dann von Ecke zu Ecke quer darüber.
    .check = Kräftig ziehen: Nichts gibt nach.
    .remedy = Das Rechteck noch einmal übernähen.
