### Kräuseln: wo die Kräuselnähte liegen und wohin gezogen wird, und wie der Stoff zwischen den Markierungen verteilt ist.

figure-gathering-pleated = Mit dem Faltenlegefuß, rechte Stoffseite oben
figure-gathering-rows = Zwei Kräuselnähte, rechte Stoffseite oben
figure-gathering-second-row = { $second-row } neben der Kante
figure-gathering-tails = Fadenenden
figure-gathering-pull = { $parts ->
    [8] Anziehen, bis jedes Achtel kurz genug ist
   *[4] Anziehen, bis jedes Viertel kurz genug ist
 }
# $knotted: whether the tails of that end are knotted, not wound round a pin.
figure-gathering-held = { $knotted ->
    [yes] auf beiden Seiten verknotet
   *[no] um eine Stecknadel gehalten
 }
figure-gathering-then-pin = dann um eine Stecknadel wickeln
figure-gathering-lengths = Flach und gekräuselt, in einem Maßstab
figure-gathering-short = { $short } gekräuselt, alle { $part } eine Markierung
# Was die Enden der gezeichneten Kante sind; dann, wo der Stoff ungleich verteilt ist, wie viel hinten liegt.
figure-gathering-ends = { $ring ->
    [yes] die Kante ist ein Ring: beide Enden sind dieselbe Naht
   *[no] 0 und die letzte Markierung sind die Enden
 }
figure-gathering-ends-behind = { figure-gathering-ends }; { $behind } des Stoffs liegen hinten
figure-gathering-pleated-alt = Falten mit dem Faltenlegefuß, rechte Seite oben: eine Naht { $first-row } neben der Kante.
figure-gathering-rows-alt = Zwei Kräuselnähte, rechte Seite oben, { $first-row } und { $second-row } neben der Kante. Fadenenden von { $tail } hängen heraus.
figure-gathering-pulled-alt = { $knotted ->
    [yes] Die Fadenenden der einen Seite sind auf beiden Stoffseiten verknotet und gekürzt, an denen der anderen wird gezogen, bis es von Markierung zu Markierung { $part } sind; dann werden sie um eine Stecknadel gewickelt.
   *[no] Die Fadenenden der einen Seite sind um eine Stecknadel gewickelt, an denen der anderen wird gezogen, bis es von Markierung zu Markierung { $part } sind; dann werden auch sie um eine Stecknadel gewickelt.
 }
figure-gathering-alt = { $method ->
    [attachment] Kräuseln mit einer Naht des Faltenlegefußes, { $first-row } neben der Kante: { $cloth } flacher Stoff auf { $short } zusammengezogen, markiert bei { $marks } am flachen Stoff und alle { $part } an der gekräuselten Kante.
    [hand] Kräuseln mit zwei Reihen Vorstichen, { $first-row } und { $second-row } neben der Kante: { $cloth } flacher Stoff auf { $short } zusammengezogen, markiert bei { $marks } am flachen Stoff und alle { $part } an der gekräuselten Kante.
   *[machine] Kräuseln mit zwei Kräuselnähten, { $first-row } und { $second-row } neben der Kante: { $cloth } flacher Stoff auf { $short } zusammengezogen, markiert bei { $marks } am flachen Stoff und alle { $part } an der gekräuselten Kante.
 }
figure-gathering-caption = { $cloth } Stoff werden auf { $short } zusammengezogen.
