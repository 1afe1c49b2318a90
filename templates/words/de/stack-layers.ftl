### Kanten ineinanderlegen und als eine Kante halten.

stack-layers-title = Die { $count } Lagen zusammenlegen
stack-layers-aim = { $count } Lagen sind eine Kante von { $length }.
# Eine einzige Lage: Nichts bleibt zu tun.
stack-layers-title-single = { PIECE($pieces) } bereitlegen
stack-layers-aim-single = Die Lage ist bereit.

## Ein Bund, der zur Hälfte gefaltet wird, seine beiden Kanten aufeinander

stack-layers-title-fold = { PIECE($band) } zur Hälfte falten
stack-layers-fold = { PIECE($band) } der Länge nach links auf links zur Hälfte falten, beide Schnittkanten bündig, und den Bruch bügeln.
    .check = Vom Bruch aus ist es { $deep } plus die Breite der späteren Naht hoch.

## Jede Lage legen, von der äußersten bis zu der am Körper

# Nur in den Sätzen darunter gesagt: welche Stoffseite wohin zeigt.
stack-layers-way = { $face ->
    [either] Nahtzugaben zu den Beinen
    [out] rechte Stoffseite nach außen
   *[in] rechte Stoffseite zu den Beinen, linke Stoffseite zur vorigen Lage
 }
stack-layers-hold = { PIECE($layer) } halten, wie es getragen wird, { stack-layers-way }.
stack-layers-hold-stack = Die { $plies } zusammengenähten Lagen halten, wie sie getragen werden, { stack-layers-way }.
stack-layers-nest = Die { $copies } Ringe von { PIECE($layer) } ineinanderstecken, { stack-layers-way }.
stack-layers-put-in = { PIECE($layer) } hineinstecken, { stack-layers-way }.
stack-layers-put-in-stack = Die { $plies } zusammengenähten Lagen hineinstecken, { stack-layers-way }.
stack-layers-put-in-rings = Die { $copies } Ringe von { PIECE($layer) } hineinstecken, { stack-layers-way }.

## Markieren und stecken

stack-layers-mark = { $parts ->
    [8] { $threads ->
        [yes] Die obere Kante jeder Lage in Achtel teilen und alle { $part } markieren, die erste Markierung an der Seitennaht, an der mit dem bunten Faden, wo die Lage eine hat.
       *[no] Die obere Kante jeder Lage in Achtel teilen und alle { $part } markieren, die erste Markierung an der Seitennaht.
    }
   *[4] { $threads ->
        [yes] Die obere Kante jeder Lage in Viertel teilen und alle { $part } markieren, die erste Markierung an der Seitennaht, an der mit dem bunten Faden, wo die Lage eine hat.
       *[no] Die obere Kante jeder Lage in Viertel teilen und alle { $part } markieren, die erste Markierung an der Seitennaht.
    }
 }
stack-layers-pin = Die oberen Kanten bündig legen, Seitennähte und Markierungen aufeinander, und dort { pin }.
    .check = Zwischen den Markierungen hängt keine Lage durch.
    .remedy = { $parts ->
        [8] In diesem Achtel die Nadeln herausnehmen und die Mehrweite neu verteilen.
       *[4] In diesem Viertel die Nadeln herausnehmen und die Mehrweite neu verteilen.
     }

## Nähen

stack-layers-sew = Alle { $count } Lagen { $from-edge } neben der Kante zusammensteppen, { $length }, mit der größten Stichlänge. Diese Naht bleibt.
