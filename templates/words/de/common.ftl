### Was alle Techniken gleich sagen. EDGE, PIECE und Längen holen sich hier ihre Wörter.
### Der Name, den die Schneiderin einem Teil gibt, wird nie gebeugt: Er steht in Klammern hinter dem Trägerwort „Teil“.

## Teile und Kanten

# $label (Text): der Name, den das Teil in der Vorlage hat, etwa „Volant“. $mark: seine Nummer im Zuschnittplan.
# $form: bare, wo kein Satz darum steht, wie in einer Tabelle; short, wo der Name im selben Schritt schon dasteht.
# $numbered: no, wo es keinen Zuschnittplan gibt.
piece = { $form ->
    [bare] { $label }
    [short] { $numbered ->
        [no] Teil „{ $label }“
       *[yes] Teil { $mark }
    }
   *[full] { $numbered ->
        [no] Teil „{ $label }“
       *[yes] Teil { $mark } ({ $label })
    }
 }
piece-alone = { PIECE($piece, form: "bare") }
# $case: dative; der Akkusativ klingt wie der Nominativ. „von Teil 2“ verträgt jeden Namen und jede Aufzählung.
edge = { $count ->
    [one] { $case ->
        [dative] { $side ->
            [top] der oberen Kante von { $pieces }
            [bottom] der unteren Kante von { $pieces }
            [start] der Anfangskante von { $pieces }
           *[end] der Endkante von { $pieces }
        }
       *[nominative] { $side ->
            [top] die obere Kante von { $pieces }
            [bottom] die untere Kante von { $pieces }
            [start] die Anfangskante von { $pieces }
           *[end] die Endkante von { $pieces }
        }
    }
   *[other] { $case ->
        [dative] { $side ->
            [top] den oberen Kanten von { $pieces }
            [bottom] den unteren Kanten von { $pieces }
            [start] den Anfangskanten von { $pieces }
           *[end] den Endkanten von { $pieces }
        }
       *[nominative] { $side ->
            [top] die oberen Kanten von { $pieces }
            [bottom] die unteren Kanten von { $pieces }
            [start] die Anfangskanten von { $pieces }
           *[end] die Endkanten von { $pieces }
        }
    }
 }
# Lagen, die als eine Kante verarbeitet werden: mit dem Namen aus der Vorlage, oder nach ihren Teilen, wo die Anleitung in
# einer anderen Sprache ist als der Name ($named ist no). „Lagen“ klingt in jedem Fall gleich.
stack = { $named ->
    [yes] { $form ->
        [bare] Lagen „{ $name }“
       *[full] { $case ->
            [dative] den oberen Kanten der Lagen „{ $name }“
           *[nominative] die oberen Kanten der Lagen „{ $name }“
        }
    }
   *[no] { $form ->
        [bare] Lagen ({ $pieces })
       *[full] { $case ->
            [dative] den oberen Kanten der Lagen von { $pieces }
           *[nominative] die oberen Kanten der Lagen von { $pieces }
        }
    }
 }
stack-layers-of = { $named ->
    [yes] Lagen „{ $name }“
   *[no] Lagen von { $pieces }
 }
# Im Dativ: „an …“, „neben …“, „von … aus“.
side-seam = { $seam ->
    [bright] der Seitennaht mit dem bunten Faden
   *[plain] der Seitennaht
 }
# Eine Naht in einem eigenen Satz der Schneiderin, an der Stelle {seam}.
own-seam = die Naht von { PIECE($pieces) }

# Zahlen, die aufeinander folgen: 5–8.
number-range = { $from }–{ $to }

## Zahlen und Einheiten

unit = { $unit ->
    [mm] { $number }{ "\u00A0" }mm
    [cm] { $number }{ "\u00A0" }cm
    [m] { $number }{ "\u00A0" }m
    [yd] { $number }{ "\u00A0" }Yard
    [ml] { $number }{ "\u00A0" }ml
    [l] { $number }{ "\u00A0" }l
   *[in] { $number }{ "\u00A0" }Zoll
 }
stitch-inches = Stichlänge { $number }{ "\u00A0" }mm ({ $per-inch } Stiche je Zoll)
stitch = Stichlänge { $number }{ "\u00A0" }mm
share = { $number }{ "\u00A0" }%
money = { $amount }{ "\u00A0" }{ $currency }
# Mehreres hintereinander, wie in einer Tabelle, und mehrere Aussagen.
row = { $before }, { $after }
clauses = { $before }; { $after }
then = { $before }, dann { $after }

# Wie lange etwas dauert.
duration = { $hours ->
    [0] { $minutes }{ "\u00A0" }min
   *[other] { $minutes ->
        [0] { $hours }{ "\u00A0" }h
       *[other] { $hours }{ "\u00A0" }h { $minutes }{ "\u00A0" }min
    }
 }

## Arbeit an gleichen Teilen

# Hinter der Überschrift einer Arbeit an mehreren gleichen Teilen: $copies.
all-of-it = { $copies ->
    [2] { $runs ->
        [yes] Beide arbeiten: einen Satz an beiden, dann den nächsten; wo es dabeisteht, mehrere Sätze am einen, dann am anderen.
       *[no] Beide arbeiten: jeden Satz mit den Kästchen a und b am einen, dann am anderen ausführen, ehe der nächste kommt.
    }
   *[other] { $runs ->
        [yes] Alle { $copies } arbeiten: einen Satz, bei dem a bis { $last } steht, an allen, dann den nächsten; wo es dabeisteht, mehrere am einen, dann am nächsten.
       *[no] Alle { $copies } arbeiten: jeden Satz, bei dem a bis { $last } steht, an einem nach dem anderen ausführen, ehe der nächste kommt.
    }
 }
# Die Abhilfe eines Satzes, die Wort für Wort die eines früheren in derselben Arbeit ist.
remedy-again = Wie bei { $sentence }.
# Hinter dem ersten von mehreren Sätzen, die alle an einem Teil getan werden, ehe das nächste kommt.
run-of-sentences = { $copies ->
    [2] Sätze { $first } bis { $last } am einen, dann am anderen
   *[other] Sätze { $first } bis { $last } am einen, dann am nächsten
 }
# Hinter einem Schritt, der an jeder Verbindungsnaht zwischen den Stücken eines Streifens getan wird.
chain-joins = { $joins ->
    [one] { $joins } Verbindungsnaht
   *[other] { $joins } Verbindungsnähte
 }

## Womit die Kanten gehalten werden

pin = { $hold ->
    [clips] klammern
   *[pins] stecken
 }
# Im Deutschen steht das Verb am Ende, deshalb nie groß am Satzanfang.
pin-start = { $hold ->
    [clips] klammern
   *[pins] stecken
 }

## Zwei Kanten, die zusammengenäht werden

# Nur in anderen Meldungen: Ein ausgestelltes Teil ist an der Schnittkante schmaler oder weiter als auf der Nahtlinie.
marks-on-line = { $flared ->
    [yes] { " " }Auf der Nahtlinie ergibt das { $on-line }.
   *[no] { "" }
 }
# $marked: eine der beiden Kanten.
mark-parts-ring = { $parts ->
    [8] { EDGE($marked, at: "start") } auf beiden Stoffseiten in Achtel teilen und alle { $part } markieren, die erste Markierung an { side-seam }.{ marks-on-line }
   *[4] { EDGE($marked, at: "start") } auf beiden Stoffseiten in Viertel teilen und alle { $part } markieren, die erste Markierung an { side-seam }.{ marks-on-line }
 }
mark-parts-flat = { $parts ->
    [8] { EDGE($marked, at: "start") } auf beiden Stoffseiten in Achtel teilen und alle { $part } markieren.{ marks-on-line }
   *[4] { EDGE($marked, at: "start") } auf beiden Stoffseiten in Viertel teilen und alle { $part } markieren.{ marks-on-line }
 }
# Nur in anderen Sätzen gesagt, am Satzanfang: wo beide Kanten zuerst aufeinandertreffen.
match-places = { $places ->
    [bright] Die Seitennähte mit dem bunten Faden und die Markierungen
    [some] Die Seitennähte (hat eine Kante mehrere, die mit dem bunten Faden) und die Markierungen
    [ends] Beide Enden und die Markierungen
   *[plain] Die Seitennähte und die Markierungen
 }
# „12 Stecknadeln“, so viele, wie eine Kante braucht.
pins-needed = { $hold ->
    [clips] { $pins ->
        [one] { $pins } Klammer
       *[other] { $pins } Klammern
    }
   *[pins] { $pins ->
        [one] { $pins } Stecknadel
       *[other] { $pins } Stecknadeln
    }
 }
# $on-top: die Kante, die an der Maschine oben liegt; dort werden die Stecknadeln herausgezogen.
match-and-pin = { $copies ->
    [one] { match-places } aufeinanderlegen und zuerst dort { pin }, von der Seite von { PIECE($on-top) } aus. Dazwischen alle { $spacing } { pin }: insgesamt etwa { pins-needed }.
   *[other] { match-places } aufeinanderlegen und zuerst dort { pin }, von der Seite von { PIECE($on-top) } aus. Dazwischen alle { $spacing } { pin }: für jedes Teil etwa { pins-needed }.
 }

## Enden, die eine Naht zum Ring schließt

# $pieces: die Stufen, durch die die Naht läuft; $tiers: ob es mehrere sind.
close-fold = { $tiers ->
    [yes] { PIECE($pieces) } { faces-together } falten, die Enden bündig aufeinander, obere Kante auf obere Kante, und auf { $length } { pin }. { tiers-meet }
   *[no] { PIECE($pieces) } { faces-together } falten, beide Enden bündig aufeinander, obere Kante auf obere Kante, und auf { $length } { pin }.
 }
    .check = Nichts ist verdreht: Der Ring liegt flach wie ein Band.
    .remedy = Ist er verdreht, ein Ende lösen und umdrehen.
# Wo eine Keilbahn hängt.
gore-place = { $place ->
    [front] vorn
    [back] hinten
   *[side] Seite
 }
# Nur im Satz darunter gesagt: eine Keilbahn mit ihrer Nummer in der Reihe.
close-row-gore = Nr. { $number } { gore-place }
# Keilbahnen mit eigenem Platz. $at-side: ob die Naht in jeder Höhe an der Seite liegt.
close-row = Die { $copies } Teile von { PIECE($pieces) } nebeneinander legen, rechte Seite oben, schmale Enden von sich weg, von links nach rechts: { $order }.
    .check = Das letzte wird an das erste genäht.
close-row-seam = { $at-side ->
    [yes] Auf jedes neben den Namen seine Nummer kreiden. Die Naht zwischen Nr. { $after } und Nr. { $next } ist die Seitennaht links an der tragenden Person.
   *[no] Auf jedes neben den Namen seine Nummer kreiden. Die Naht zwischen Nr. { $after } und Nr. { $next } liegt der linken Seite der tragenden Person am nächsten: Von ihr aus wird alles gemessen.
 }
# Keilbahnen, deren Seiten ungleich lang aufeinandertreffen.
close-unlike-by = die { $longer ->
    [front] vordere
    [back] hintere
   *[side] seitliche
 } Keilbahn, { $by } über die { $shorter ->
    [front] vordere
    [back] hintere
   *[side] seitliche
 }
close-unlike-trim = An der Unterkante stehen über, weil ihre Seiten schräger sind: { $unlike }. Bündig mit der Nachbarin abschneiden, bis { $run } neben der Seite auf nichts auslaufend.
    .check = Alle Oberkanten liegen bündig, und unten steht nichts mehr vor.
close-unlike-ease = Schrägere Seiten sind länger: { $unlike }. Zuerst Oberkanten und Säume bündig stecken, den Rest dazwischen einhalten.
    .check = Oberkanten und Säume liegen bündig, und keine Falte ist mitgesteckt.
# $copies Bahnen werden ein Ring.
close-panels = { $copies ->
    [2] { $tiers ->
        [yes] Beide Bahnen von { PIECE($pieces) } { faces-together } legen, obere Kante auf obere Kante, und beide Seitenkanten { pin }, je { $length }. { tiers-meet }
       *[no] Beide Bahnen von { PIECE($pieces) } { faces-together } legen, obere Kante auf obere Kante, und beide Seitenkanten { pin }, je { $length }.
    }
   *[other] { $tiers ->
        [yes] Jede Bahn von { PIECE($pieces) } { faces-together } auf die nächste legen, obere Kante auf obere Kante, und die letzte auf die erste. Die { $copies } Seitenpaare { pin }, je { $length }. { tiers-meet }
       *[no] Jede Bahn von { PIECE($pieces) } { faces-together } auf die nächste legen, obere Kante auf obere Kante, und die letzte auf die erste. Die { $copies } Seitenpaare { pin }, je { $length }.
    }
 }
    .check = Alle oberen Kanten liegen am selben Ende, der Ring ist nicht verdreht.
    .remedy = Die Bahn, die falsch herum liegt, lösen und umdrehen.
# Nur in anderen Sätzen gesagt.
faces-together = { $faces ->
    [wrong] links auf links
   *[right] rechts auf rechts
 }
tiers-meet = Die Nähte zwischen den Stufen genau aufeinanderlegen, Nahtzugaben nach oben, und zuerst dort { pin }.

## Die Maschine

# Überall in mm, wie die Maschinen beschriftet sind.
zigzag-set = Die Maschine auf Zickzackstich stellen, { $zigzag-wide }{ "\u00A0" }mm breit und { $zigzag-long }{ "\u00A0" }mm lang.

## Das Etikett, das vor Feuer warnt

# Die Worte sind die des Gesetzes, in der Sprache des Landes, in dem das Kleidungsstück getragen wird.
fire-label-write = Auf { $label-tape } Baumwollband in zwei Zeilen und roten Großbuchstaben, mindestens { $letters } hoch, mit einem waschfesten Stift VON FEUER FERNHALTEN schreiben. Das Ende, das eingenäht wird, fingerbreit frei lassen.

## Kräuselnähte, die zusammengezogen werden

rows-set-machine = Die Maschine zum Kräuseln einstellen: die größte Stichlänge, etwa { $long-stitch }{ "\u00A0" }mm, und die Oberfadenspannung eine Zahl unter der für Nähte. Die Zahl für Nähte aufgeschrieben lassen.
# Nur in anderen Sätzen gesagt. $per-run: über wie viele der markierten Teile eine Teilstrecke geht.
rows-runs = { $in-runs ->
    [yes] { $per-run ->
        [one] In { $runs } Teilstrecken nähen, je von einer Markierung zur nächsten. Nicht verriegeln; an beiden Enden jeder Teilstrecke { $tail } Faden hängen lassen.
       *[other] { $parts ->
            [8] In { $runs } Teilstrecken über je { $per-run } Achtel nähen, von Markierung zu Markierung. Nicht verriegeln; an beiden Enden jeder Teilstrecke { $tail } Faden hängen lassen.
           *[4] In { $runs } Teilstrecken über je { $per-run } Viertel nähen, von Markierung zu Markierung. Nicht verriegeln; an beiden Enden jeder Teilstrecke { $tail } Faden hängen lassen.
        }
    }
   *[no] In einem Zug nähen. Nicht verriegeln; an beiden Enden { $tail } Faden hängen lassen.
 }
rows-wind-tails = { $in-runs ->
    [yes] An einem Ende jeder Teilstrecke eine Stecknadel quer einstecken und die Fadenenden in Form einer Acht herumwickeln.
   *[no] An einem Ende der Naht eine Stecknadel quer einstecken und die Fadenenden in Form einer Acht herumwickeln.
 }
rows-set-back = Die Stichlänge wieder auf { $seam-stitch }{ "\u00A0" }mm und die Oberfadenspannung auf die aufgeschriebene Zahl stellen.
# Die Kräuselnähte sind zu sehen: Ihre Enden kommen auf die linke Stoffseite.
rows-tails-under = { $in-runs ->
    [yes] Die Stecknadeln herausnehmen, die die Fadenenden halten. An beiden Enden jeder Teilstrecke die Oberfäden auf die linke Stoffseite ziehen, jeden mit seinem Unterfaden verknoten und die Enden auf { $knot } kürzen.
   *[no] Die Stecknadeln herausnehmen, die die Fadenenden halten. An beiden Enden die Oberfäden auf die linke Stoffseite ziehen, jeden mit seinem Unterfaden verknoten und die Enden auf { $knot } kürzen.
 }

## Fadenenden, sobald die Kante gesteckt ist

tails-off-machine = { $in-runs ->
    [yes] Die Stecknadeln herausnehmen, die die Fadenenden halten. An beiden Enden jeder Teilstrecke jeden Oberfaden mit seinem Unterfaden verknoten und die Enden auf { $knot } kürzen.
   *[no] Die Stecknadeln herausnehmen, die die Fadenenden halten. An beiden Enden jeder Kräuselnaht jeden Oberfaden mit seinem Unterfaden verknoten und die Enden auf { $knot } kürzen.
 }
tails-off-hand = { $in-runs ->
    [yes] Die Stecknadeln herausnehmen, die die Fadenenden halten. An beiden Enden jeder Teilstrecke die Fäden miteinander verknoten und die Enden auf { $knot } kürzen.
   *[no] Die Stecknadeln herausnehmen, die die Fadenenden halten. An beiden Enden der Kräuselnähte die Fäden miteinander verknoten und die Enden auf { $knot } kürzen.
 }

## Als Ring zugeschnittener Stoff

# $fall: von der oberen Kante des Rings, wie er hängt, bis zu seiner offenen unteren Kante.
ring-drop-worn = Das Kleidungsstück über Nacht an der Taille aufhängen: Als Ring zugeschnittener Stoff senkt sich ab. Von der oberen Naht von { PIECE($ring-piece) } aus rundum { $fall } nach unten messen und abschneiden, was tiefer hängt.
    .check = { EDGE($ring-edge, at: "start") } hängt waagerecht.
# Er ist noch nirgends angenäht.
ring-drop-alone = { PIECE($ring-piece) } über Nacht an der oberen Kante aufhängen: Als Ring zugeschnittener Stoff senkt sich ab. Von dieser Kante aus rundum { $fall } nach unten messen und abschneiden, was tiefer hängt.
    .check = { ring-drop-worn.check }

## Das Bügeleisen

# $own (Text): das Wort der Schneiderin für eine Faser, die hier keines hat. Im Akkusativ: „für …“.
fibre = { $fibre ->
    [cotton] Baumwolle
    [linen] Leinen
    [wool] Wolle
    [silk] Seide
    [polyester] Polyester
    [viscose] Viskose
    [nylon] Nylon
    [acetate] Acetat
    [own] { $own }
   *[unknown] eine unbekannte Faser
 }
# Nur in den Sätzen darunter gesagt. $supply: wovon niemand die Faser genannt hat.
iron-unknown = { $supply } (Faser unbekannt)
# Die Hitze richtet sich nach einem Besatz, einem Reißverschluss oder anderem Stoff, nicht nach dem, der gebügelt wird.
iron-fibre-of = { $fibre } ({ $supply } verträgt hier am wenigsten Hitze)
# Die Punkte der Pflegekennzeichen: ISO 3758.
iron-set-three-dots = Das Bügeleisen für { $fibre } einstellen: drei Punkte, 200{ "\u00A0" }°C, mit Dampf. Zuerst auf einem Stoffrest ausprobieren.
iron-set-two-dots = Das Bügeleisen für { $fibre } einstellen: zwei Punkte, 150{ "\u00A0" }°C, durch ein Bügeltuch. Zuerst auf einem Stoffrest ausprobieren.
iron-set-one-dot = Das Bügeleisen für { $fibre } einstellen: ein Punkt, 110{ "\u00A0" }°C, ohne Dampf, durch ein trockenes Bügeltuch. Zuerst auf einem Stoffrest ausprobieren.

## Der bunte Faden, an dem eine von mehreren senkrechten Nähten zu erkennen ist

# Nur in anderen Sätzen gesagt: die Naht, in der eine Öffnung oder der bunte Faden liegt.
seam-named = { $which ->
    [numbered] der Naht zwischen Nr. { $after } und Nr. { $next }
    [any] einer der Nähte
   *[only] der Naht
 }
tag-seam = { $opened ->
    [yes] Auf der rechten Stoffseite in die Naht mit der Öffnung unter ihr, { $down } unter der oberen Kante, einen bunten Faden einknoten: Von dieser Seitennaht aus wird alles gemessen.
   *[no] { $which ->
        [numbered] Auf der rechten Stoffseite { $down } unter dem oberen Ende einen bunten Faden in die Naht zwischen Nr. { $after } und Nr. { $next } einknoten: Von dieser Seitennaht aus wird alles gemessen.
        [any] Auf der rechten Stoffseite { $down } unter dem oberen Ende einen bunten Faden in eine dieser Nähte einknoten: Von dieser Seitennaht aus wird alles gemessen.
       *[only] Auf der rechten Stoffseite { $down } unter dem oberen Ende einen bunten Faden in diese Naht einknoten: Von dieser Seitennaht aus wird alles gemessen.
    }
 }
    .check = { $low ->
        [yes] Er liegt dort, wo die Naht genäht ist, sein Knoten auf der rechten Seite.
       *[no] Er sitzt näher an der oberen Kante als an der unteren, sein Knoten auf der rechten Seite: Dort lässt er sich später herausziehen.
     }

## Eine Öffnung, die in einer Quernaht aufgetrennt wird

open-seam-press = Die Quernaht, die den Ring geschlossen hat, auseinanderbügeln: { PIECE($band) }.
# $opened: zwischen den beiden Nähten eines Tunnels, oder zwischen Bruch und Naht.
open-seam = { $opened ->
    [rows] Die Hälfte wählen, die innen liegen wird, und einen Zettel anstecken. In dieser Hälfte die Naht quer zum Bund, die den Ring geschlossen hat, zwischen den beiden Nähten mit dem Nahttrenner öffnen, und nur dort: { PIECE($band) }.
   *[row] In der Hälfte des Tunnels, die innen liegt, die Quernaht zwischen Bruch und Steppnaht mit dem Nahttrenner öffnen, { $channel }, und nur dort: { PIECE($band) }.
 }
    .check = Eine Sicherheitsnadel geht hinein und findet ihren Weg durch den Tunnel. Die Naht der äußeren Hälfte ist ganz.
    .remedy = Ist mehr aufgegangen, es bis an die Nähte von Hand schließen.
open-seam-bars = An jedem Ende der Öffnung dicht neben den Nähten drei Stiche von Hand quer über die Naht nähen.
    .check = Ein Zug öffnet sie nicht weiter.

## Die Löcher für die Enden einer Kordel

# Nur in anderen Sätzen gesagt.
cord-holes = { $kind ->
    [buttonholes] Knopflöcher
    [worked-eyelets] umstochene Löcher
   *[metal-eyelets] Ösen
 }
cord-hole = { $kind ->
    [buttonholes] Knopfloch
    [worked-eyelets] Loch
   *[metal-eyelets] Metallloch
 }

## Eine Linie quer über ein Teil, gemessen von einer Kante, wie sie jetzt liegt

# Nur innerhalb anderer Nachrichten.
line-place = { $line-from ->
    [top-seam] { $from-edge } unter der oberen Naht
    [top-cut] { $from-edge } unter der oberen Schnittkante
    [bottom-seam] { $from-edge } über der unteren Naht
    [bottom-cut] { $from-edge } über der unteren Schnittkante
   *[bottom] { $from-edge } über der unteren Kante
 }
line-across = Auf der rechten Stoffseite von { PIECE($on) } eine Linie anzeichnen, { line-place }.
    .check = Jede Handbreit nachgemessen, beträgt der Abstand { $from-edge }.
    .tolerance = { $level-off } mehr oder weniger
    .remedy = Wegwischen, was abweicht, und neu anzeichnen.
