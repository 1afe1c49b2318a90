### Ein Teil und sein Futter rundum zusammennähen und verstürzen.
### $outer: das Teil; $lining: sein Futter. Gewendet wird durch eine Öffnung oder durch die obere Kante.

bagged-lining-title = { PIECE($outer) } füttern und verstürzen
    .number = { $seam-width }
bagged-lining-aim-gap = Alle Kanten sind zwischen Stoff und Futter geschlossen.
bagged-lining-aim-top = Alle Kanten außer der oberen sind zwischen Stoff und Futter geschlossen.

## Nähen

bagged-lining-lay = { PIECE($outer) } und { PIECE($lining) } rechts auf rechts legen, die Kanten bündig, und { pin }.
bagged-lining-mark = In der Mitte der unteren Kante eine Öffnung von { $gap } markieren: Sie bleibt offen.
bagged-lining-sew-gap = { $seam-width } neben der Kante steppen, von einem Ende der Öffnung rundum bis zum anderen, insgesamt { $length }, { $stitch }. An jeder Ecke die Arbeit um die eingestochene Nadel drehen. An beiden Enden verriegeln.
    .check = Alle Ecken sind rechtwinklig, die Öffnung ist offen.
    .remedy = Eine runde Ecke bis in beide geraden Seiten auftrennen und neu steppen.
bagged-lining-sew-top = { $seam-width } neben der Kante steppen: eine Seite hinab, unten entlang und die andere Seite hinauf, insgesamt { $length }, { $stitch }. An beiden Ecken die Arbeit um die eingestochene Nadel drehen. An beiden Enden verriegeln; die ganze obere Kante bleibt offen.
    .check = Beide Ecken sind rechtwinklig.
    .remedy = { bagged-lining-sew-gap.remedy }

## Wenden

bagged-lining-trim = An jeder genähten Ecke die Nahtzugabe schräg abschneiden, { $corner } neben der Naht.
bagged-lining-turn-gap = Die Arbeit durch die Öffnung wenden und die Ecken mit einem stumpfen Stäbchen ausformen.
bagged-lining-turn-top = Die Arbeit durch die obere Kante wenden und die Ecken mit einem stumpfen Stäbchen ausformen.
bagged-lining-roll = Die Naht mit den Fingern an die Kante rollen und von der Futterseite bügeln, das Futter eine Spur zurückgesetzt.
    .check = Fertig misst es { $wide } mal { $deep }.
    .tolerance = { $off } mehr oder weniger
    .remedy = Zurückwenden; wo es zu klein ist, ist die Naht zu breit, wo es zu groß ist, zu schmal.
bagged-lining-close = Die Nahtzugaben der Öffnung nach innen einschlagen. Die { $gap } von Hand mit Blindstichen schließen.
    .check = Die Stiche sind nicht zu sehen.
    .remedy = Den sichtbaren Stich aufschneiden und innerhalb des Bruchs neu nähen.
