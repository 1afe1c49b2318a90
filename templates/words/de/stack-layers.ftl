### Kanten ineinanderlegen und als eine Kante halten, Lage für Lage.

stack-layers-title = { $count } Lagen zusammenlegen: { EDGE($stack, form: "bare") }
stack-layers-aim = Eine Kante von { $length }, von hier an { EDGE($stack, form: "bare") } genannt.
# Eine einzige Lage: Nichts bleibt zu tun.
stack-layers-title-single = { PIECE($pieces) } bereitlegen
stack-layers-aim-single = Die Lage ist bereit.

## Ein Bund, der zur Hälfte gefaltet wird, seine beiden Kanten aufeinander

stack-layers-title-fold = { PIECE($band) } zur Hälfte falten
stack-layers-fold = { PIECE($band) } der Länge nach links auf links zur Hälfte falten, beide Schnittkanten bündig, und den Bruch bügeln.
    .check = Vom Bruch aus ist es { $deep } plus die Breite der späteren Naht hoch.

## Markieren

# Nur in der Meldung darunter. $several: Lagen, die noch keine Markierungen haben.
stack-faces = { $several ->
    [yes] beiden Stoffseiten jeder Lage
   *[no] beiden Stoffseiten
 }
# Stücke, die anders herauskamen: wie weit ihre Markierungen auseinanderliegen, oder wie lang jedes ist.
stack-layers-own = { $part } (Stück { $letter })
# $marked: die Kanten, die noch keine Markierungen haben. $seam: wie die Stelle der ersten Markierung heißt.
stack-layers-mark = { $parts ->
    [8] { $seam ->
        [bright] In Achtel teilen und auf { stack-faces } alle { $part } markieren, die erste Markierung an der Seitennaht mit dem bunten Faden: { $marked }.{ marks-on-line }
        [some] In Achtel teilen und auf { stack-faces } alle { $part } markieren, die erste Markierung an der Seitennaht (hat eine davon den bunten Faden, an dieser): { $marked }.{ marks-on-line }
        [plain] In Achtel teilen und auf { stack-faces } alle { $part } markieren, die erste Markierung an der Seitennaht: { $marked }.{ marks-on-line }
       *[ends] In Achtel teilen und auf { stack-faces } von einem Ende aus alle { $part } markieren: { $marked }.{ marks-on-line }
    }
   *[4] { $seam ->
        [bright] In Viertel teilen und auf { stack-faces } alle { $part } markieren, die erste Markierung an der Seitennaht mit dem bunten Faden: { $marked }.{ marks-on-line }
        [some] In Viertel teilen und auf { stack-faces } alle { $part } markieren, die erste Markierung an der Seitennaht (hat eine davon den bunten Faden, an dieser): { $marked }.{ marks-on-line }
        [plain] In Viertel teilen und auf { stack-faces } alle { $part } markieren, die erste Markierung an der Seitennaht: { $marked }.{ marks-on-line }
       *[ends] In Viertel teilen und auf { stack-faces } von einem Ende aus alle { $part } markieren: { $marked }.{ marks-on-line }
    }
 }

## Jede Lage legen, von der äußersten bis zu der am Körper

# Nur in den Sätzen darunter gesagt: welche Stoffseite wohin zeigt, und wie eine Lage auf die vorige trifft.
stack-layers-way = { $face ->
    [either] Nahtzugaben zu den Beinen
    [out] rechte Stoffseite nach außen
   *[in] rechte Stoffseite zu den Beinen, linke Stoffseite zur vorigen Lage
 }
stack-layers-meet = { $ring ->
    [yes] Seitennähte und Markierungen aufeinanderlegen, obere Kanten bündig, und dort { pin }.
   *[no] Enden und Markierungen aufeinanderlegen, obere Kanten bündig, und dort { pin }.
 }
stack-layers-hold = { PIECE($layer) } wie beim Tragen halten, { stack-layers-way }.
# Mehrere gleiche, die als erste gelegt werden.
stack-layers-nest = { $ring ->
    [yes] Die { $copies } Ringe von { PIECE($layer) } ineinanderstecken, { stack-layers-way }. { stack-layers-meet }
   *[no] Die { $copies } Stücke von { PIECE($layer) } aufeinanderlegen, { stack-layers-way }. { stack-layers-meet }
 }
    .check = Zwischen den Markierungen hängt keine Lage durch.
    .remedy = { $parts ->
        [8] { $hold ->
            [clips] In diesem Achtel die Klammern abnehmen und die Mehrweite neu verteilen.
           *[pins] In diesem Achtel die Nadeln herausnehmen und die Mehrweite neu verteilen.
        }
       *[4] { $hold ->
           [clips] In diesem Viertel die Klammern abnehmen und die Mehrweite neu verteilen.
          *[pins] In diesem Viertel die Nadeln herausnehmen und die Mehrweite neu verteilen.
       }
     }
# Nur in den Prüfungen darunter gesagt: wo eine Lage neben der davor endet.
stack-layers-ends = { $ends ->
    [above] { " " }Ihre Unterkante endet { $by } über der der Lage davor.
    [below] { " " }Ihre Unterkante endet { $by } unter der der Lage davor.
   *[level] { "" }
 }
stack-layers-put-in = { $ring ->
    [yes] { PIECE($layer) } hineinstecken, { stack-layers-way }. { stack-layers-meet }
   *[no] { PIECE($layer) } dahinterlegen, { stack-layers-way }. { stack-layers-meet }
 }
    .check = { stack-layers-nest.check }{ stack-layers-ends }
    .remedy = { stack-layers-nest.remedy }
stack-layers-lined = { PIECE($layer, at: "start") } hängt schon dahinter: glatt streichen. { stack-layers-meet }
    .check = { stack-layers-nest.check }{ stack-layers-ends }
    .remedy = { stack-layers-nest.remedy }
stack-layers-put-in-alike = { $ring ->
    [yes] Die { $copies } Ringe von { PIECE($layer) } hineinstecken, { stack-layers-way }. { stack-layers-meet }
   *[no] Die { $copies } Stücke von { PIECE($layer) } dahinterlegen, { stack-layers-way }. { stack-layers-meet }
 }
    .check = { stack-layers-nest.check }{ stack-layers-ends }
    .remedy = { stack-layers-nest.remedy }

## Alle halten

stack-layers-share = Die Stücke sind nicht gleich lang: { $lengths }. Was länger ist, gleichmäßig von Markierung zu Markierung verteilen, insgesamt { $gap }.
stack-layers-pin = Zwischen den Markierungen alle { $spacing } { pin-start }.
# Mehr als zwei Lagen: Jene Stecknadeln gingen nur durch die Lagen, die schon lagen.
stack-layers-pin-through = { $hold ->
    [clips] Wenn alle Lagen darin sind, alle zusammen klammern: zuerst an den Markierungen, dann alle { $spacing }.
   *[pins] Wenn alle Lagen darin sind, die Stecknadeln durch alle stecken: zuerst an den Markierungen, dann alle { $spacing }.
 }
stack-layers-sew = { $count ->
    [2] Beide Lagen { $from-edge } neben der Kante zusammensteppen, { $length }, mit der größten Stichlänge. Diese Naht bleibt.
   *[other] Alle { $count } Lagen { $from-edge } neben der Kante zusammensteppen, { $length }, mit der größten Stichlänge. Diese Naht bleibt.
 }
# Eine kurze Stichlänge: Die Kräusel der Lagen sind für immer gehalten.
stack-layers-sew-short = { $count ->
    [2] Beide Lagen { $from-edge } neben der Kante zusammensteppen, { $stitch }, { $length }. Diese Naht bleibt.
   *[other] Alle { $count } Lagen { $from-edge } neben der Kante zusammensteppen, { $stitch }, { $length }. Diese Naht bleibt.
 }
    .check = Jede Lage ist gefasst, keine Kräusel sind zu einer Falte geschoben.
    .remedy = Diese Handbreit auftrennen, enger stecken und neu steppen.
