### Einen Schlitz an seiner fertigen oberen Kante mit Haken oder Druckknöpfen schließen, wo es kein Bund tut.
### $edge ist die offene obere Kante; $overlaps: ihre Enden liegen übereinander, um $overlap.

fastening-title = Den Schlitz an der Taille schließen
fastening-aim = Die Taille schließt auf { $waist } und öffnet sich für die Hüfte.

fastening-lay = { $overlaps ->
    [yes] Den Schlitz schließen: die Enden { $overlap } übereinanderlegen, oben bündig, und mit einer Nadel halten.
   *[no] Den Schlitz schließen: die Enden nebeneinanderlegen, oben bündig, und mit einer Nadel halten.
 }
    .check = Geschlossen misst { EDGE($edge) } rundum { $waist }.
    .tolerance = { $waist-off } mehr oder weniger
    .remedy = Die Enden verschieben, bis es stimmt.
# Mehrere: der erste oben, die anderen darunter.
fastening-mark = Die Stellen für { $count } Verschlüsse markieren: den ersten { $below } unter der oberen Kante, die nächsten alle { $apart } den Schlitz hinunter.
    .check = Es sind { $count } Zeichen, an beiden Enden.
fastening-hook = Den Haken innen am Übertritt annähen, { $below } unter der oberen Kante, den Bogen { $hook-in } vom Ende. Um beide Ösen und über den Bogen nähen, ohne dass außen ein Stich zu sehen ist.
    .check = Er bewegt sich nicht, wenn man zieht.
    .remedy = Noch einmal darumnähen.
fastening-bar = Den Steg außen am Untertritt annähen, { $bar-in } von der Kante, wo der Haken auf ihn trifft.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Den Steg an der richtigen Stelle neu annähen.
fastening-eye = Die Öse innen am anderen Ende annähen, wo der Haken auf sie trifft, sodass sie knapp über das Ende hinaussteht.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Die Öse an der richtigen Stelle neu annähen.
fastening-snap-on-top = Die flache Hälfte eines Druckknopfs innen am Übertritt annähen, { $below } unter der oberen Kante und { $snap-in } vom Ende: vier Stiche durch jedes Loch.
    .check = Außen ist kein Stich zu sehen, und er bewegt sich nicht, wenn man zieht.
    .remedy = Neu annähen, nur durch die innere Lage.
fastening-snap-beneath = Ihn auf den Untertritt drücken, die Stelle seiner Mitte markieren und die andere Hälfte dort annähen.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Die untere Hälfte an der richtigen Stelle neu annähen.
# Nur als Teil der Sätze darüber gesagt.
fastening-closed =
    .check = Geschlossen misst die Taille rundum { $waist }, und ihre Enden sind bündig.
    .tolerance = { $waist-off } mehr oder weniger
