### Die obere Kante mit einem eingefassten Schlitz öffnen, damit die Taille nicht über die Hüfte muss.
### $edge ist die obere Kante; $strip der Streifen, der den Schlitz einfasst.

placket-title = { EDGE($edge, at: "start") } mit einem Schlitz öffnen
    .number = { $slit }
# Die Öffnung wurde in einer Naht gelassen: Nichts wird geschnitten.
placket-title-seam = Die Öffnung einfassen: { EDGE($edge) }
    .number = { $slit }
placket-aim = Der Schlitz von { $slit } lässt die Taille über die Hüfte; er überlappt { $overlap }.

## Der Schlitz

placket-mark = Von { EDGE($edge, case: "dative") } aus eine gerade Linie anzeichnen, { $slit } lang, in der hinteren Mitte oder an der linken Seite, mindestens { $clear } von jeder Naht entfernt.
placket-stay = Mit { $short }{ "\u00A0" }mm Stichlänge eine Naht steppen, die den Schlitz hält. An der oberen Kante { $stay } neben der Linie beginnen und der Linie immer näher kommen, bis zu einer Spitze an ihrem unteren Ende. Einen Stich quer über die Spitze und auf der anderen Seite ebenso hinauf.
    .check = Oben ist jede Naht { $stay } von der Linie entfernt, unten treffen sie sich in einer Spitze.
    .tolerance = { $stay-off } mehr oder weniger
    .remedy = Diese Seite neben der ersten Naht neu steppen. Eine Naht, die der Linie zu nah kommt, wird durchgeschnitten.
# Der Schlitz geht durch eine Naht weiter.
placket-fasten = Etwa { $to-seam } tief kreuzt die Linie eine Naht. Auf beiden Seiten der Linie, { $stay } daneben, auf dieser Naht drei Stiche vor und zurück nähen; ist die Naht von Hand genäht, ihre Fäden dort von Hand vernähen.
    .check = An der Linie auseinandergezogen hält die Naht auf beiden Seiten.
    .remedy = Vor dem Schneiden noch einmal vernähen.
placket-cut = Auf der Linie einschneiden, bis einen Faden vor die Spitze.
    .check = Der Schnitt endet vor den Stichen.
    .remedy = Ist ein Stich durchgeschnitten, knapp darunter eine neue Spitze nähen.
# In einer Naht, die offen gelassen wurde.
placket-clip = Am Ende der Öffnung beide Nahtzugaben gerade bis zum letzten Stich der Naht einschneiden. Von dort aufwärts beide Nahtzugaben auf { $seam-width } zurückschneiden.
    .check = Die Schnitte enden einen Faden vor dem Stich, die Naht darunter ist ganz.
    .remedy = Ist der Stich durchgeschnitten, die letzten { $past } der Naht übernähen.

## Der Streifen

placket-spread = Den Schlitz zu einer geraden Linie spreizen. { PIECE($strip) } rechts auf rechts darunterlegen. An beiden Enden sind die Kanten bündig; an der Spitze liegt der Schlitz { $in-at-foot } innerhalb der Kante von { PIECE($strip, form: "short") }. Die Kanten { pin }.
placket-sew = Schlitz oben: { $seam-width } neben der Kante von { PIECE($strip) } steppen, knapp neben der Naht, die den Schlitz hält, { $both-sides }, { $stitch }.
    .check = An der Spitze sind { $foot } des Schlitzes gefasst, in der Naht liegt keine Falte.
    .remedy = An der Spitze { $past } auftrennen, glatt streichen und neu steppen.
placket-spread-seam = Die Öffnung zu einer geraden Linie spreizen. { PIECE($strip) } rechts auf rechts darunterlegen, alle Kanten bündig, beide Enden bündig mit der oberen Kante. Die Kanten { pin }.
placket-sew-seam = Öffnung oben: { $seam-width } neben den Kanten steppen, auf der Linie der Naht, { $both-sides }, { $stitch }.
    .check = Am Ende trifft die Reihe auf den letzten Stich der Naht, darin liegt keine Falte.
    .remedy = Am Ende { $past } auftrennen, glatt streichen und neu steppen.
placket-press = Die Nahtzugabe zu { PIECE($strip) } hin bügeln.
placket-fold = Die freie Kante { $seam-width } auf die linke Stoffseite umbügeln. { PIECE($strip) } über die Naht nach innen legen, den Bruch auf die Nahtlinie, und { pin }.
placket-stitch = Innenseite oben: { $edge-stitch } neben diesem Bruch steppen, { $both-sides }.
    .check = { PIECE($strip, at: "start") } ist überall { $overlap } breit.
    .tolerance = { $wide-off } mehr oder weniger
    .remedy = Den Bruch auf der Nahtlinie verschieben und neu steppen.

## Übertritt und Untertritt

placket-turn-in = { PIECE($strip) } an der Seite, die oben liegt, nach innen legen; an einer linken Seite ist das vorn. An der unteren Seite steht der Streifen { $overlap } über. Oben { pin }.
placket-foot = Den Schlitz rechts auf rechts falten, so dass die beiden Hälften von { PIECE($strip) } aufeinanderliegen. Schräg über ihr unteres Ende steppen, { $slant }, nur durch { PIECE($strip, form: "short") }.
    .check = Geschlossen überlappen die Seiten { $overlap }; offen misst die obere Kante { $across }.
    .tolerance = { $across-off } mehr oder weniger
    .remedy = Den Unterschied in der Kräuselung oder den Falten ausgleichen, oder in der nächsten Naht.
