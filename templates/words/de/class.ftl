### Die Seite eines Kurses oder einer Größenreihe, und die Seiten, die für alle zuschneiden.

## Inhalt

class-skip-to-guides = Zu den Anleitungen springen
class-contents = Auf dieser Seite
class-guides = Die Anleitungen
class-missing = Nicht gemacht
class-chart = Die Größentabelle
class-order = Ein Einkauf für alle
class-cutting = Zuschneiden für alle

## Die Anleitungen

class-guides-are = Die Nummer steht auf dem Zettel jedes Teils, das für alle zugeschnitten wird, an erster Stelle.
class-number = Nr.
class-for = Für
class-cloth = Stoff
class-time = Zeit
# Was nicht zu sehen ist, wird dahinter vorgelesen. $whose: ein Name, eine Nummer oder eine Größe.
class-guide = Anleitung
    .unseen = für { $whose }
class-pdf = PDF
    .unseen = für { $whose }
# $number: der Datei, wo eine nicht alle Anleitungen fasst.
class-print-file = Alle Anleitungen in einer Datei, für beidseitigen Druck ({ $number })
class-print-guides-alone = In diesen Dateien stehen nur die Anleitungen. Der Zuschnitt für alle wird für sich gedruckt: die Wege dorthin stehen unter „{ class-cutting }“.
class-missing-are = Hierfür ließ sich keine Anleitung machen. Die ausgegebene Meldung nennt die Zeile, die zu ändern ist.

# Wessen Kursseite es ist, wo die Datei es nicht sagt.
class-every-size = alle Größen
class-orders = Aufträge
class-of = ein Kurs von { $number }
# Anstelle eines Namens, der sich nicht lesen ließ.
class-line = Zeile { $line } der Datei

## Die Größentabelle

class-chart-are = { $rounding ->
    [none] Zuschnittmaße sind nicht gerundet und enthalten alle Zugaben.
   *[other] Zuschnittmaße sind auf { $rounding } aufgerundet und enthalten alle Zugaben.
 }
class-chart-sizes = Größentabelle, { $sizes }
class-size = Größe

## Der Einkauf

class-apart = Dasselbe, von jeder Person allein gekauft.
class-material = Material
class-together = Zusammen
class-alone = Jede allein
class-cost = Zusammen: { $cost }, oder { $head } pro Person, wenn gleichmäßig geteilt wird.
class-cost-alone = Jede allein: { $cost }, oder { $head } pro Person.
class-saved = Zusammen spart { $saved }, { $share } % davon.
# $materials (Liste)
class-unpriced = Ohne Preis und nicht in diesen Summen: { $materials }.
# $reels (Zahl): wie viele eine Maschine gleichzeitig braucht.
class-reels = { $reels ->
    [one] Die Rollen sind für den ganzen Faden zusammen gezählt. Maschinen, die gleichzeitig nähen, brauchen je eine Rolle.
   *[other] Die Rollen sind für den ganzen Faden zusammen gezählt. Plätze, an denen gleichzeitig genäht wird, brauchen je bis zu { $reels } Rollen.
 }
class-shopping-file = Die Liste für den Laden
class-materials-file = Die Materialien als Tabelle
# In der Materialtabelle für Programme.
class-garments = Kleidungsstücke, die es brauchen
class-to-order = zu bestellen
class-order-cost = Kosten der Bestellung
class-mean = { $garments ->
    [one] Mittel aus { $garments } Kleidungsstück
   *[other] Mittel aus { $garments } Kleidungsstücken
 }

## Zuschneiden für alle

class-cutting-are = Alle Teile liegen auf einem Ballen je Stoff, auf jedem Zettel zuerst die Nummer der Person.
class-cutting-file = Der Zuschnittplan für alle, mit Schritten
class-cutting-print = Der Zuschnittplan zum Drucken
# $part, $parts (Zahlen): von dem, was nacheinander zugeschnitten wird.
class-cutting-file-part = Etappe { $part } des Zuschnittplans für alle, mit Schritten
class-cutting-print-part = Etappe { $part } des Zuschnittplans zum Drucken
# Überschrift der Seiten, die für alle zuschneiden, wo eine Anleitung sagt, für wen sie ist.
class-cutting-for = Zuschnitt für { $whose }
class-cutting-for-part = Zuschnitt für { $whose }, Etappe { $part } von { $parts }
class-cutting-about = Alle Teile von einem Ballen je Stoff. Der Zettel jedes Teils beginnt mit der Nummer der Person, für die es ist: { $example } ist Stück a von Teil { $piece } für Nummer { $number }. Wer die Nummern sind, steht auf der Seite mit den Anleitungen. Beim Zuschneiden die Teile jeder Nummer auf einen eigenen Stapel legen.
# Wo in Etappen zugeschnitten wird.
class-cutting-parts-are = Die Etappen in ihrer Reihenfolge zuschneiden: Jede geht auf dem Ballen dort weiter, wo die vorige geendet hat. Stoff, der im Ganzen gewaschen wurde, wird nicht noch einmal gewaschen.
# Von denen, die in einer Etappe Teile haben. $numbers (eine Liste), $count (Zahl): wie viele.
class-cutting-piles-whole = { $count ->
    [one] Mit dieser Etappe ist der Stapel der Nummer { $numbers } vollständig.
   *[other] Mit dieser Etappe sind die Stapel der Nummern { $numbers } vollständig.
 }
class-cutting-piles-go-on = { $count ->
    [one] Der Stapel der Nummer { $numbers } geht in einer späteren Etappe weiter: so liegen lassen, dass noch etwas darauf kann.
   *[other] Die Stapel der Nummern { $numbers } gehen in einer späteren Etappe weiter: so liegen lassen, dass noch etwas darauf kann.
 }
# $example: ein Zettel mit seinem Stern. Für jemanden geplant, der gegangen ist oder neu gemessen wurde.
class-cutting-spare = Ein Stern auf einem Zettel, wie bei { $example }, steht an einem Teil, das niemand mehr braucht: Jemand ist gegangen oder neu gemessen worden. Ist sein Abschnitt noch nicht geschnitten, wird es mit den anderen abgeschnitten und als Rest beiseitegelegt.
class-cutting-parts = Etappen des Zuschnitts
class-cutting-part = Etappe { $part }
# $joins (Zahl)
class-joins = { $joins ->
    [one] { $joins } Verbindungsnaht, über alle Stücke
   *[other] { $joins } Verbindungsnähte, über alle Stücke
 }
class-whole = ganz

## Fuß

class-end = Örtliche Vorschriften und zugelassene Fachleute gehen vor. Kursseite { $key }.
