### Was die Anleitung rund um die Arbeit sagt: an der Maschine vor einem Schritt, wo sich aufhören lässt, und der letzte Blick.

# Überschrift der Schritte, denen die Schneiderin keine eigene gibt.
part = Die Arbeit
# Über der ersten Arbeit hinter einem Buchstaben, der ausfällt.
letters-skip = { $many ->
    [one] { $letters } fehlt? Die Buchstaben sind für alle Größen gleich. Einer, der fehlt, steht für eine Arbeit, die es in dieser Anleitung nicht gibt.
   *[other] { $letters } fehlen? Die Buchstaben sind für alle Größen gleich. Die fehlenden stehen für Arbeiten, die es in dieser Anleitung nicht gibt.
 }
letters-skip-run = { $first } bis { $last }

## Vor einem Schritt

# $bobbins: wie viele volle alle Nähte brauchen; 0, wo niemand weiß, was eine fasst. $bobbin-thread: der Faden auf allen zusammen.
machine-wind = { $bobbins ->
    [0] Zwei Spulen aufspulen: Alle Nähte brauchen etwa { $bobbin-thread } Unterfaden, eine leere also wieder füllen.
    [one] { $bobbins } Spule aufspulen: Alle Nähte brauchen etwa { $bobbin-thread } Unterfaden.
   *[other] { $bobbins } Spulen aufspulen: Alle Nähte brauchen etwa { $bobbin-thread } Unterfaden.
 }
machine-trial = Die neue Nadel einsetzen. { machine-wind } Zur Probe { $trial } auf einem doppelten Stoffrest nähen, { $stitch }.
    .check = Die Stiche sehen auf beiden Seiten gleich aus, und der Stoff liegt flach.
    .remedy = Ober- und Unterfaden neu einfädeln. Schlingen unten: die Oberfadenspannung eine Zahl höher stellen; Schlingen oben: eine Zahl niedriger.
overlocker-trial = Zur Probe { $trial } an der Kante eines doppelten Stoffrests mit der Overlock versäubern.
    .check = Die Schlingen beider Seiten treffen sich auf der Schnittkante, und die Kante liegt flach.
    .remedy = Kante wellig: den Differentialtransport eine Zahl höher stellen; eingezogen: eine Zahl niedriger. Stehen Schlingen über die Kante: beide Greifer um eine Zahl fester stellen.
machine-straight = Die Maschine von Zickzack auf Geradstich zurückstellen, { $stitch }.
machine-zip-open = Den Reißverschluss eine Handbreit öffnen, so dass der Schieber unter den kommenden Steppnähten liegt.
marks-on-net = Kreide fällt durch { $net }. Wo eine Kante markiert wird, { $clear } neben der Schnittkante, jenseits von Naht und Overlock, einen bunten Faden zweimal um einen Steg knoten. Ihn herausschneiden, ehe ein Umschlag ihn verdeckt, oder am Ende.
lines-on-net = Auf { $net } bleibt keine Linie. Wo eine gezogen werden soll, dort Klebestreifen aus Papier am Lineal entlang auflegen oder einen Faden feststecken, und beides abnehmen, wenn die Linie ausgedient hat.
# $flat: von einem Rest; er wird so stark zusammengezogen wie nachher die Arbeit.
practise-gathering = An einem Rest desselben Stoffs üben: die Zahl der Oberfadenspannung für Nähte aufschreiben, dann den längsten Stich und die Spannung eine Zahl niedriger einstellen. Auf { $flat } zwei Nähte nähen, { $first-row } und { $second-row } neben der Kante. An beiden Unterfäden ziehen, bis der Rest { $short } misst.
    .check = Die Fäden gleiten, ohne zu reißen, und der Stoff ist gleichmäßig gekräuselt.
    .remedy = Reißt ein Faden, die Oberfadenspannung ein wenig lockern oder kürzere Abschnitte nähen.
# $left: Faden auf der alten Spule, von der Länge auf einer vollen.
bobbin-fresh = Mit einer frischen Spule beginnen.
    .check = Auf der alten sind etwa { $left } von { $full } übrig: zu wenig für die nächste Naht.
bobbin-fresh-within = { $sewn ->
    [one] Eine volle Spule bereitlegen: Sie wird eingesetzt, wenn die erste der { $rows } Nähte genäht ist, die jetzt kommen.
   *[other] Eine volle Spule bereitlegen: Sie wird eingesetzt, wenn { $sewn } der { $rows } Nähte genäht sind, die jetzt kommen.
 }
    .check = Auf der alten sind dann etwa { $left } von { $full } übrig: zu wenig für die nächste Naht.
bobbin-spare = { $spare ->
    [one] { $spare } Ersatzspule aufspulen: Jede dieser langen Nähte braucht mehr Faden, als eine Spule fasst.
   *[other] { $spare } Ersatzspulen aufspulen: Jede dieser langen Nähte braucht mehr Faden, als eine Spule fasst.
 }

## Nach einem Schritt

stop = Eine gute Stelle, um aufzuhören und die Arbeit wegzulegen.
stop-sitting = Ende von Sitzung { $sitting }. Hier die Arbeit weglegen, Stecknadeln gezählt.

## Der letzte Blick

last-look = Der letzte Blick
last-look-title = Das Kleidungsstück durchsehen
last-look-aim = Es lässt sich gefahrlos anziehen.
# Wo weder Bund noch Tunnel das Etikett aufgenommen hat, das vor Feuer warnt.
last-look-label = Das Etikett innen nahe der oberen Kante neben eine Naht legen, die Schrift sichtbar. Beide Enden einschlagen und von Hand annähen, an einer Nahtzugabe oder nur an der inneren Lage.
    .check = Es hält an beiden Enden, auf der rechten Stoffseite ist kein Stich davon zu sehen.
last-look-pins = Stecknadeln und Nadeln zählen.
    .check = Es sind so viele in der Dose wie am Anfang.
    .remedy = An jeder Naht und an der Taille entlangfühlen, bis die letzte gefunden ist. Vorher zieht niemand das Kleidungsstück an.
last-look-threads = Alle losen Fäden abschneiden und die bunten im Stoff herausziehen.
# Die bunten kamen vor dem Stärken heraus.
last-look-loose-threads = Alle losen Fäden abschneiden.
last-look-marks = Alle Markierungen entfernen: die Kreide ausbürsten, den Stift nach Angabe seines Herstellers mit Wasser herauslösen.
    .check = Auf der rechten Stoffseite ist keine Markierung zu sehen.
    .remedy = Auswaschen, bevor dort gebügelt wird: Hitze macht manche Stifte dauerhaft.
last-look-length = Aufhängen und von der oberen Kante bis zum Saum messen: { $to-hem }.
    .check = Vorn, hinten und an den Seiten ist es gleich viel.
    .tolerance = { $off } mehr oder weniger
    .remedy = Hängt eine Seite tiefer, dort nach einer Naht suchen, die schmaler genäht ist, und sie neu nähen.
# Der Saum ist vorn höher geschnitten als hinten.
last-look-dips = { $train ->
    [yes] Die Schleppe herablassen. Das Kleidungsstück aufhängen und von der oberen Kante bis zum Saum messen: vorn { $front }, entlang beider Seitennähte { $side }, hinten { $back }.
   *[no] Aufhängen und von der oberen Kante bis zum Saum messen: vorn { $front }, entlang beider Seitennähte { $side }, hinten { $back }.
 }
    .check = Links und rechts ist es gleich viel, und der Saum fällt gleichmäßig nach hinten.
    .tolerance = { $off } mehr oder weniger
    .remedy = Wo links und rechts sich unterscheiden, dort nach einer Naht suchen, die schmaler genäht ist, und sie neu nähen.
# Die Taille wurde ausgeglichen: Das Kleidungsstück ist an manchen Stellen länger als an anderen.
last-look-lengths = Aufhängen und von der oberen Kante bis zum Saum messen: vorn { $front }, an den Seiten { $side }, hinten { $back }.
    .check = Alle drei stimmen.
    .tolerance = { $off } mehr oder weniger
    .remedy = Wo es länger ist, dort die Taille auftrennen und die obere Kante höher nehmen.
last-look-height = Die Person, die es trägt, gerade und ohne Schuhe hinstellen lassen. Vom Boden bis zum Saum messen: { $above }.
    .check = Vorn, hinten und an den Seiten ist es gleich viel.
    .tolerance = { $off } mehr oder weniger
    .remedy = Wo der Saum tiefer hängt, dort die obere Kante höher nehmen; nie den Saum abschneiden.
last-look-edges = Auf links wenden und an jeder Kante entlangsehen.
    .check = Keine Kante franst aus, keine Lage ist an falscher Stelle mitgefasst.
    .remedy = Versäubern oder neu nähen, was auffällt.
# Bänder raffen eine Schleppe.
last-look-drawn-up = Die Schleppe wieder hochziehen, jede Kordel an ihrer Markierung geknotet. Mit den Schuhen anziehen, die dazu getragen werden. Ein paar Schritte gehen.
    .check = Der Saum kommt rundum nicht auf den Boden.
    .remedy = Ausziehen, alle Kordeln um gleich viel weiter ziehen und die Stelle an jeder Kordel markieren.
