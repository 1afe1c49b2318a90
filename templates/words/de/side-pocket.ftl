### Eine Tasche in die Öffnung einer Naht einnähen.
### $bag: der Taschenbeutel, zwei Stücke; $on: das Teil, dessen Naht die Öffnung hat.

side-pocket-title = Eine Nahttasche in { PIECE($on) } einnähen
side-pocket-aim = Die Öffnung von { $gap } führt in einen { $wide } breiten und { $high } hohen Beutel.

side-pocket-mark = Auf beiden Nahtzugaben die Öffnung markieren, { $begins } und { $ends } unter der oberen Kante, und { $above } über der Öffnung den Anfang des Beutels.
side-pocket-lay = Je ein Stück von { PIECE($bag) } rechts auf rechts auf jede Nahtzugabe legen, die senkrechte Kante bündig mit der Kante der Nahtzugabe, die obere Kante { $above } über der Öffnung. Beide feststecken.
    .check = Beide Stücke liegen auf gleicher Höhe und weisen von der Naht weg.
    .tolerance = { $close-off } mehr oder weniger
    .remedy = Ein Stück vor dem Nähen verschieben.
side-pocket-sew = Jedes Stück nur an seine Nahtzugabe nähen, { $seam-width } neben der Kante, { $high }, { $stitch }; an beiden Enden verriegeln.
    .check = Der Oberstoff ist nicht mitgefasst.
    .remedy = Wo er mitgefasst ist, auftrennen und diese Strecke neu steppen.
side-pocket-turn = Beide Stücke über ihre Nähte nach außen legen und zusammen nach vorn bügeln, rechts auf rechts.
side-pocket-close = Beide Stücke aufeinanderstecken und { $seam-width } neben der Kante zusammennähen, von der Naht oben entlang, an der Seite hinunter und unten zurück zur Naht, { $around }, { $stitch }.
    .check = Eine Hand erreicht beide Ecken, und nichts fällt hindurch.
    .remedy = Wo die erste Naht den Stoff verlassen hat, eine zweite steppen.
side-pocket-bars = Rechte Seite oben, an beiden Enden der Öffnung quer über die Naht einen { $bar } langen Riegel nähen, vier Nähte aufeinander.
