### Woher die Zahlen kommen, für Lesende, die die Datei der Schneiderin nicht gesehen haben.

## Wie eine Zahl heißt

reason-of-piece = { $measure } von { PIECE($piece) }
reason-of-material = { $measure } von Material ({ $material })
# Eine Zahl, nach der ein Schritt fragt, mit dem Titel des Schritts.
reason-for = { $label } für „{ $title }“
# Die Maße eines Teils oder Materials; auch allein gesagt.
reason-length = fertige Länge
reason-depth = fertige Höhe
reason-start-takes = Zugabe am Anfang
reason-end-takes = Zugabe am Ende
reason-top-takes = Zugabe oben
reason-bottom-takes = Zugabe unten
reason-count = Anzahl
reason-hem-round = Saumweite
reason-top-to-hem = Länge ab der oberen Kante
reason-top-round = obere Weite
reason-used = verbrauchte Länge
reason-used-weight = verbrauchtes Gewicht

## Woher sie kommt

reason-same = wie { $same }
reason-same-of = wie { $same } von „{ $title }“
reason-body = ein Körpermaß
reason-choice = eine Auswahl, { $place }
reason-choice-made = eine Auswahl für diese Anleitung
# Eine Zeile der Datei der Schneiderin.
reason-place = Zeile { $line } von { $file }
reason-written = { $asked ->
    [yes] { $shown ->
        [yes] { $placed ->
            [yes] für „{ $title }“ als { $formula } angegeben, { $place }
           *[no] für „{ $title }“ als { $formula } angegeben
        }
       *[no] { $placed ->
            [yes] für „{ $title }“ angegeben, { $place }
           *[no] für „{ $title }“ angegeben
        }
    }
   *[no] { $shown ->
        [yes] { $placed ->
            [yes] als { $formula } angegeben, { $place }
           *[no] als { $formula } angegeben
        }
       *[no] { $placed ->
            [yes] angegeben, { $place }
           *[no] angegeben
        }
    }
 }
reason-workroom = von der Werkstatt festgelegt
reason-usual-step = wie Läden meist zuschneiden, wo die Vorlage nichts sagt
reason-one = eins, da keine Anzahl angegeben ist
reason-none = keine, da die Wiederholung nicht so weit reicht
reason-as-worked = wie zugeschnitten und verarbeitet
reason-before-drawn = obere Weite, vor dem Zusammenziehen

# Was gekauft wird: der Plan eines Stoffes, Faden und alles andere.
reason-plan-proven = der Zuschnittplan: { reason-plan-joins }, bewiesen der billigste seiner Art
reason-plan = der Zuschnittplan: { reason-plan-joins }, höchstens { $share } teurer als der beste
reason-plan-joins = { $joins ->
    [one] { $joins } Verbindungsnaht in { reason-plan-sections }
   *[other] { $joins } Verbindungsnähte in { reason-plan-sections }
 }
reason-plan-sections = { $sections ->
    [one] { $sections } Abschnitt
   *[other] { $sections } Abschnitten
 }
reason-needle = was die Nadel in allen Nähten vernäht, { $share } Verlust eingerechnet
reason-bobbin = was die Spule in allen Nähten hergibt, { $share } Verlust eingerechnet
reason-looper = was der Greifer in allen Nähten vernäht, { $share } Verlust eingerechnet
reason-steps-use = was die Schritte davon brauchen, und die Reserve, die im Entwurf steht
reason-square-end = für das Ende, das zuerst gerade geschnitten wird

# Wie lange die Arbeit dauert.
reason-time-sewing = { $seams ->
    [one] { $seams } Naht von etwa { $metres } m im Tempo der Werkstatt
   *[other] { $seams } Nähte, insgesamt etwa { $metres } m, im Tempo der Werkstatt
 }
reason-time-handling = { $ends ->
    [0] { $seams } Nähte ansetzen und vernähen
   *[other] { $seams } Nähte ansetzen und vernähen, dazu { $ends } Bündel Fadenenden
 }
reason-time-set-ups = { $changes ->
    [one] { $changes } Wechsel von Maschine, Fuß, Stich oder Garn
   *[other] { $changes } Wechsel von Maschine, Fuß, Stich oder Garn
 }
reason-time-pinning = { $pins } Stecknadeln setzen und wieder herausnehmen
reason-time-gathering = etwa { $metres } m zusammenziehen und verteilen
reason-time-cutting = { $sections ->
    [0] etwa { $metres } m anzeichnen und schneiden
   *[other] etwa { $metres } m anzeichnen und schneiden, den Stoff { $sections } Mal auflegen
 }
reason-time-pressing = etwa { $metres } m bügeln
reason-time-tended = dabeistehen
reason-time-look = der letzte Blick auf das fertige Stück

# Die Einheit, in der gerechnet wird, wenn die Anleitung andere nennt.
reason-units-cm = cm
reason-units-inches = Zoll

## Runden

reason-rounded = auf { $step } aufgerundet: Aus { $before } wird { $after }
# Das Fertigmaß ergibt sich anders als das Zuschnittmaß.
reason-rounded-cut = Zuschnittmaß auf { $step } aufgerundet: Aus { $before } wird { $after }; fertig wird aus { $finished-before } dann { $finished-after }

## Funktionen in einer Formel; dahinter steht eine Klammer mit ihren Zahlen.

reason-max = das Größte von
reason-min = das Kleinste von
reason-round-up = aufgerundet
reason-round-down = abgerundet
reason-round-near = gerundet
