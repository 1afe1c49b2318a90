### Einen Schlitz an seiner fertigen oberen Kante mit Haken oder Druckknöpfen schließen, wo es kein Bund tut.
### $edge ist die offene obere Kante; $overlaps: ihre Enden liegen übereinander, um $overlap.

fastening-title = Den Schlitz an der Taille schließen
fastening-aim = Die Taille schließt auf { $waist } und öffnet sich für die Hüfte.
# Oben schließt ein Bund: Dies schließt den Rest des Schlitzes darunter.
fastening-title-under = Den Schlitz unter dem Bund schließen
fastening-aim-under = Der Schlitz klafft unter dem Bund nicht.

fastening-lay = { $overlaps ->
    [yes] Den Schlitz schließen: die Enden { $overlap } übereinanderlegen, oben bündig, und mit einer Nadel halten.
   *[no] Den Schlitz schließen: die Enden nebeneinanderlegen, oben bündig, und mit einer Nadel halten.
 }
    .check = Geschlossen misst { EDGE($edge) } rundum { $waist }.
    .tolerance = { $off } mehr oder weniger
    .remedy = Die Enden verschieben, bis es stimmt.
# Nur in anderen Sätzen gesagt. $marked: Jede Stelle hat ein Zeichen.
fastening-at = { $marked ->
    [yes] an jedem Zeichen
   *[no] { $below } unter der oberen Kante
 }
fastening-lay-under = { $overlaps ->
    [yes] Den Bund schließen. Die Kanten des Schlitzes darunter { $overlap } übereinanderlegen und mit Nadeln halten.
   *[no] Den Bund schließen. Die Kanten des Schlitzes darunter nebeneinanderlegen und mit Nadeln halten.
 }
    .check = Der Schlitz liegt flach, und seine Kanten enden bündig.
    .tolerance = { $off } mehr oder weniger
    .remedy = Eine Kante nach oben oder unten schieben, bis es stimmt.
# Mehrere: der erste oben, die anderen darunter.
fastening-mark = Die Stellen für { $count } Verschlüsse markieren: den ersten { $below } unter der oberen Kante, die nächsten alle { $apart } den Schlitz hinunter.
    .check = Es sind { $count } Zeichen, an beiden Enden.
fastening-mark-under = { $count ->
    [one] Die Stelle des Verschlusses markieren, { $apart } unter dem Bund.
   *[other] Die Stellen für { $count } Verschlüsse markieren: den ersten { $apart } unter dem Bund, die nächsten alle { $apart } den Schlitz hinunter.
 }
    .check = Für jeden ist an beiden Kanten ein Zeichen.
fastening-hook = Den Haken innen am Übertritt annähen, { fastening-at }, den Bogen { $hook-in } vom Ende. Um beide Ösen und über den Bogen nähen, ohne dass außen ein Stich zu sehen ist.
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
fastening-snap-on-top = Die flache Hälfte eines Druckknopfs innen am Übertritt annähen, { fastening-at } und { $snap-in } vom Ende: vier Stiche durch jedes Loch.
    .check = Außen ist kein Stich zu sehen, und er bewegt sich nicht, wenn man zieht.
    .remedy = Neu annähen, nur durch die innere Lage.
fastening-snap-beneath = Ihn auf den Untertritt drücken, die Stelle seiner Mitte markieren und die andere Hälfte dort annähen.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Die untere Hälfte an der richtigen Stelle neu annähen.
# Nur als Teil der Sätze darüber gesagt.
fastening-closed =
    .check = { $under ->
        [yes] Geschlossen liegt der Schlitz flach, und seine Kanten enden bündig.
       *[no] Geschlossen misst die Taille rundum { $waist }, und ihre Enden sind bündig.
     }
    .tolerance = { $off } mehr oder weniger

## Knöpfe

fastening-buttonhole = Am Übertritt, { fastening-at }, ein Knopfloch von { $buttonhole } anzeichnen: rechtwinklig zur Kante, ab { $half } von ihr. Wo nur eine Lage liegt, ein Quadrat festen Stoffs von { $patch } Seitenlänge dahinterstecken. So nähen, wie die Maschine Knopflöcher näht, zuerst aber eines auf einem ebenso dicken Stoffrest.
    .check = Der Knopf geht durch das auf dem Stoffrest und rutscht nicht von selbst heraus.
    .remedy = Etwas länger oder kürzer nähen und neu probieren.
fastening-cut = Das Knopfloch mit dem Nahttrenner aufschneiden, an jedem seiner Enden eine Stecknadel quer.
fastening-button = Den Schlitz wieder schließen. Eine Nadel durch das Knopfloch stechen, { $beyond } vor seinem äußeren Ende, und den Untertritt dort markieren, { $button-in } von seiner Kante. Den Knopf auf das Zeichen nähen, mit einem kurzen Stiel aus Garn darunter.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Den Knopf an der richtigen Stelle neu annähen.
fastening-loop = An der Kante des Übertritts, { fastening-at }, einen starken Faden viermal über { $button } hin- und herführen, so locker, dass der Knopf gerade hindurchgeht. Ihn von einem Ende zum anderen dicht an dicht mit Knopflochstichen umnähen.
    .check = Der Knopf geht hindurch und rutscht nicht von selbst heraus.
    .remedy = Neu arbeiten, straffer oder lockerer.
fastening-loop-button = Den Schlitz schließen, die Schlinge gerade ziehen und das andere Ende in der Mitte der Schlinge markieren. Den Knopf auf das Zeichen nähen, mit einem kurzen Stiel aus Garn darunter.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Den Knopf an der richtigen Stelle neu annähen.
