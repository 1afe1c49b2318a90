### Was unterwegs gemessen wurde, was zu tun ist, und die Anleitung von da an.
### `.step` sagt eine Meldung als Anfang eines Schritts; die Meldung selbst steht in einer Liste.

## Was gemessen wurde. $copy: welches von mehreren gleichen Teilen, 0 beim einzigen.

amend-cloth = Breite des Stoffs „{ $cloth }“
    .step = Die Breite des Stoffs „{ $cloth }“
amend-bolt = die Länge des Stoffs ({ $cloth })
    .step = Die Länge des Stoffs ({ $cloth })
amend-shrinkage = das Einlaufen des Stoffs ({ $cloth })
    .step = Das Einlaufen des Stoffs ({ $cloth })
amend-elastic = das Gummiband ({ $elastic }), die Schlaufe in Ruhe
    .step = Das Gummiband ({ $elastic }), die Schlaufe in Ruhe
amend-edge = { $copy ->
    [0] { EDGE($edge) }
   *[other] { EDGE($edge) }, Stück { $letter }
 }
    .step = { $copy ->
        [0] { EDGE($edge, at: "start") }
       *[other] { EDGE($edge, at: "start") }, Stück { $letter },
     }
# $stack: der Name, den die Lagen in der Vorlage haben.
amend-stack = { $copy ->
    [0] die Kante der Lagen „{ $stack }“
   *[other] die Kante der Lagen „{ $stack }“, Stück { $letter }
 }
    .step = { $copy ->
        [0] Die Kante der Lagen „{ $stack }“
       *[other] Die Kante der Lagen „{ $stack }“, Stück { $letter },
     }
amend-ring = { $copy ->
    [0] { PIECE($piece) } rundum
   *[other] { PIECE($piece) } rundum, Stück { $letter }
 }
    .step = { $copy ->
        [0] { PIECE($piece, at: "start") } rundum
       *[other] { PIECE($piece, at: "start") } rundum, Stück { $letter },
     }
amend-ring-edge = { $along ->
    [cut] { $copy ->
        [0] { EDGE($edge) }, ringsum an der Schnittkante
       *[other] { EDGE($edge) }, ringsum an der Schnittkante, Stück { $letter }
    }
    [line] { $copy ->
        [0] { EDGE($edge) }, ringsum auf der Nahtlinie
       *[other] { EDGE($edge) }, ringsum auf der Nahtlinie, Stück { $letter }
    }
   *[no] { $copy ->
        [0] { EDGE($edge) }, rundum
       *[other] { EDGE($edge) }, rundum, Stück { $letter }
    }
 }
    .step = { $along ->
        [cut] { $copy ->
            [0] { EDGE($edge, at: "start") }, ringsum an der Schnittkante,
           *[other] { EDGE($edge, at: "start") }, ringsum an der Schnittkante, Stück { $letter },
        }
        [line] { $copy ->
            [0] { EDGE($edge, at: "start") }, ringsum auf der Nahtlinie,
           *[other] { EDGE($edge, at: "start") }, ringsum auf der Nahtlinie, Stück { $letter },
        }
       *[no] { $copy ->
            [0] { EDGE($edge, at: "start") }, rundum,
           *[other] { EDGE($edge, at: "start") }, rundum, Stück { $letter },
        }
     }
amend-cut-length = { $copy ->
    [0] { PIECE($piece) }, zugeschnittene Länge
   *[other] { PIECE($piece) }, zugeschnittene Länge, Stück { $letter }
 }
    .step = { $copy ->
        [0] { PIECE($piece, at: "start") }, zugeschnittene Länge,
       *[other] { PIECE($piece, at: "start") }, zugeschnittene Länge, Stück { $letter },
     }
amend-cut-depth = { $copy ->
    [0] { PIECE($piece) }, zugeschnittene Höhe
   *[other] { PIECE($piece) }, zugeschnittene Höhe, Stück { $letter }
 }
    .step = { $copy ->
        [0] { PIECE($piece, at: "start") }, zugeschnittene Höhe,
       *[other] { PIECE($piece, at: "start") }, zugeschnittene Höhe, Stück { $letter },
     }

## Wie es misst

amend-length = { $length }
# Niemand hat nachgemessen: Gekräuselt wurde auf die Länge der ersten Anleitung.
amend-length-assumed = { $length } nach der ersten Anleitung
amend-share = { $share }
amend-as-planned = wie geplant
amend-short = { $wanted } gewünscht, { $gap } zu kurz ({ $share }{ "\u00A0" }%)
amend-long = { $wanted } gewünscht, { $gap } zu lang ({ $share }{ "\u00A0" }%)
amend-share-reckoned = mit { $share } gerechnet
amend-bolt-enough = { $wanted } gebraucht, { $gap } Reserve

## Was zu tun ist. $gap: wie viel fehlt oder zu viel ist. $metre: wie viel davon auf jeden Meter kommt.

# Nur in den Meldungen darunter: wie viel vom Unterschied auf jeden Meter oder jedes Yard kommt.
amend-each = { $per ->
    [yard] { $metre } auf jedes Yard
   *[metre] { $metre } auf jeden Meter
 }
amend-none = innerhalb der Rundung: weiter
    .step = Das liegt innerhalb der Rundung: weiterarbeiten.
amend-ease = beim Nähen { $gap } einhalten, { amend-each }
    .step = Beim Nähen { $gap } einhalten, { amend-each }.
amend-trim = die Kante, an die sie kommt, um { $gap } kürzen, auf { $length }
    .step = Die Kante, an die sie kommt, um { $gap } kürzen, auf { $length }.
amend-choose = nach Wahl: { $gap } einhalten, { amend-each }, oder die Kräuselung um so viel lockern
    .step = Nach Wahl { $gap } einhalten, { amend-each }, oder die Kräuselung um so viel lockern.
amend-let-out = die Kräuselung um { $gap } lockern, { amend-each }
    .step = Die Kräuselung um { $gap } lockern, { amend-each }.
amend-closer = die Kräuselung um { $gap } enger zusammenziehen, { amend-each }
    .step = Die Kräuselung um { $gap } enger zusammenziehen, { amend-each }.
amend-pleats-out = aus den Falten zusammen { $gap } herauslassen, aus jeder gleich viel
    .step = Aus den Falten zusammen { $gap } herauslassen, aus jeder gleich viel.
amend-pleats-in = in die Falten zusammen { $gap } mehr legen, in jede gleich viel
    .step = In die Falten zusammen { $gap } mehr legen, in jede gleich viel.
amend-row-out = den Faden der Reihe um { $gap } lockern, { amend-each }
    .step = Den Faden der Reihe um { $gap } lockern, { amend-each }.
amend-row-in = den Faden der Reihe um { $gap } weiter anziehen, { amend-each }
    .step = Den Faden der Reihe um { $gap } weiter anziehen, { amend-each }.
amend-bolt-short = vor dem Zuschneiden { $gap } nachkaufen oder einen Zuschnitt mit mehr Verbindungsnähten wählen
    .step = Vor dem Zuschneiden { $gap } nachkaufen oder einen Zuschnitt mit mehr Verbindungsnähten wählen.
amend-bolt-buy = vor dem Zuschneiden { $gap } nachkaufen
    .step = Vor dem Zuschneiden { $gap } nachkaufen.
amend-cut-anew = der Zuschnitt ist neu geplant
    .step = Der Zuschnitt ist neu geplant.
amend-follows = es bleibt so, die späteren Maße richten sich danach
    .step = Es bleibt so, die späteren Maße richten sich danach.
amend-level-it = schneide es an der unteren Kante auf { $length }, gleich mit den anderen Stücken, an die es genäht wird
    .step = Schneide es an der unteren Kante auf { $length }, gleich mit den anderen Stücken, an die es genäht wird.
amend-level-others = schneide die anderen Stücke, an die es genäht wird, an der unteren Kante ebenso auf { $length }
    .step = Schneide die anderen Stücke, an die es genäht wird, an der unteren Kante ebenso auf { $length }.
amend-follows-at-hem = gilt als an der unteren Kante zu kurz, die Maße danach richten sich danach
    .step = Das gilt als an der unteren Kante zu kurz; die Maße danach richten sich danach.
# Eines von zweien, etwa eine Tasche.
amend-follows-pair = bleibt so, die eigenen Maße richten sich danach; soll es zum anderen passen, auch jenes auf { $length } schneiden
    .step = Das bleibt so, die eigenen Maße richten sich danach. Soll es zum anderen passen, auch jenes auf { $length } schneiden.
amend-cut-to = auf { $wanted } schneiden
    .step = Auf { $wanted } schneiden.
amend-sewn = ist schon eingenäht: weiter
    .step = Das ist schon eingenäht: weiter.
amend-go-on = weiter
    .step = Weiterarbeiten.

## Die Anleitung von hier an

# Hinter dem Namen, für den die Anleitung ist.
amend-wearer = { $whose }, von hier an wie gemessen
amend-part = Wie gemessen
amend-title = Richten, was gemessen wurde
amend-aim = Alles misst, womit die nächsten Schritte rechnen.
# $what, $measured, $off und $todo sind Meldungen von oben.
amend-step = { $what } misst { $measured }: { $off }. { $todo }
amend-step-gathers = { $what } misst { $measured }: { $off }. { $todo }
    .check = Jedes Viertel misst { $quarter }, alle vier { $whole }.
    .remedy = Die Kräuselung von Markierung zu Markierung neu verteilen.
amend-step-choose = { $what } misst { $measured }: { $off }. { $todo }
    .check = Werden die Kräusel herausgelassen, misst jedes Viertel { $quarter }, alle vier { $whole }. Wird eingehalten, bleiben sie; ist die Naht gesteckt, hängt zwischen den Nadeln kein Stoff durch.
    .remedy = Die Kräusel von Markierung zu Markierung neu verteilen.
amend-step-row = { $what } misst { $measured }: { $off }. { $todo }
    .check = { amend-step-gathers.check }
    .remedy = Den Stoff entlang der Reihe von Markierung zu Markierung ausstreichen.
# Zwei Kanten, die aneinander kommen und nicht mehr gleich lang sind; $copy wie oben. $metre: davon auf jeden Meter.
amend-shared = { $alike ->
    [yes] { $copy ->
        [0] { EDGE($longer) }, { $long }, ist jetzt { $gap } länger als { EDGE($shorter) }, { $short }: jede in Teile ihrer eigenen Länge markieren und das beim Zusammennähen gleichmäßig verteilen, { amend-each }
       *[other] Stück { $letter }: { EDGE($longer) }, { $long }, ist jetzt { $gap } länger als { EDGE($shorter) }, { $short }: jede in Teile ihrer eigenen Länge markieren und das beim Zusammennähen gleichmäßig verteilen, { amend-each }
    }
   *[no] { $copy ->
        [0] { EDGE($longer) } ist jetzt { $gap } zu lang für { EDGE($shorter) }: beim Zusammennähen gleichmäßig verteilen, { amend-each }
       *[other] Stück { $letter }: { EDGE($longer) } ist jetzt { $gap } zu lang für { EDGE($shorter) }: beim Zusammennähen gleichmäßig verteilen, { amend-each }
    }
 }
amend-step-shared = { $alike ->
    [yes] { $copy ->
        [0] { EDGE($longer, at: "start") }, { $long }, ist jetzt { $gap } länger als { EDGE($shorter) }, { $short }. Jede in Teile ihrer eigenen Länge markieren und das beim Zusammennähen gleichmäßig von Nadel zu Nadel verteilen, { amend-each }.
       *[other] Bei Stück { $letter }: { EDGE($longer) }, { $long }, ist jetzt { $gap } länger als { EDGE($shorter) }, { $short }. Jede in Teile ihrer eigenen Länge markieren und das beim Zusammennähen gleichmäßig von Nadel zu Nadel verteilen, { amend-each }.
    }
   *[no] { $copy ->
        [0] { EDGE($longer, at: "start") } ist jetzt { $gap } zu lang für { EDGE($shorter) }. Beim Zusammennähen das gleichmäßig von Nadel zu Nadel verteilen, { amend-each }.
       *[other] Bei Stück { $letter }: { EDGE($longer) } ist jetzt { $gap } zu lang für { EDGE($shorter) }. Beim Zusammennähen das gleichmäßig von Nadel zu Nadel verteilen, { amend-each }.
    }
 }
    .check = Keine Falte ist in der Naht gefangen.
    .remedy = Diese Handbreit auftrennen, den Stoff ausstreichen und neu nähen.
# Arbeit, die einzelne Stücke für sich haben: hinter der Überschrift, und wo sie an mehreren getan wird. $letters: dieser
# Stücke; $count: wie viele. $own: ob ihre Maße andere sind als geplant.
amend-copies-title = { $own ->
    [yes] { $count ->
        [one] { $title }: Stück { $letters }, mit eigenen Maßen
       *[other] { $title }: Stücke { $letters }, mit eigenen Maßen
    }
   *[no] { $count ->
        [one] { $title }: Stück { $letters }
       *[other] { $title }: Stücke { $letters }
    }
 }
amend-some-of-it = { $runs ->
    [yes] Diese { $count } arbeiten: { $letters }. Einen Satz an jedem davon ausführen, dann den nächsten; wo es dabeisteht, mehrere Sätze am einen, dann am nächsten.
   *[no] Diese { $count } arbeiten: { $letters }. Jeden Satz an einem Teil nach dem anderen ausführen, bevor es zum nächsten Satz weitergeht.
 }

## Der Bericht

amend-report = { $title }, { $whose }, wie gemessen
amend-report-line = { $what }: { $measured }; { $off }
amend-same = in den folgenden Schritten ändert sich nichts
amend-same-copy = für Stück { $letter } ändert sich nichts
amend-same-others = für die übrigen Stücke ändert sich nichts
amend-same-meet = wo die Stücke zusammenkommen, ändert sich nichts
amend-changes = was sich in den folgenden Schritten ändert:
amend-changes-copy = was sich für Stück { $letter } ändert:
amend-changes-others = was sich für die übrigen Stücke ändert:
amend-changes-meet = was sich ändert, wo die Stücke zusammenkommen:
