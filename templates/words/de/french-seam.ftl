### Eine Naht zweimal nähen, so dass ihre offenen Kanten darin eingeschlossen sind.
### -ends: Sie schließt die Enden von $pieces zum Ring. -edges: Sie verbindet $edge, das unten hängt, mit $to darüber.

french-seam-title-ends = Französische Naht: die Seitennaht von { PIECE($pieces) }
    .number = { $first } + { $second }
french-seam-title-edges = Französische Naht: die Naht zwischen { PIECE($pieces) }
    .number = { $first } + { $second }
french-seam-aim = Die offenen Kanten sind eingeschlossen: Von jeder Kante werden zuerst { $first }, dann { $second } verbraucht.

## Die erste Naht, links auf links

french-seam-lay-edges = { EDGE($edge, at: "start") } links auf links bündig auf { EDGE($to) } legen.
french-seam-turn = { PIECE($edge) } auf links wenden, { PIECE($to) } auf rechts.
french-seam-slip = { COUNT($to) ->
    [one] { PIECE($to) } kopfüber über { PIECE($edge) } ziehen, bis { EDGE($to, form: "short") } bündig auf { EDGE($edge, case: "dative", form: "short") } liegt.
   *[other] { PIECE($to) } kopfüber über { PIECE($edge) } ziehen, bis { EDGE($to, form: "short") } bündig auf { EDGE($edge, case: "dative", form: "short") } liegen.
 }
    .check = Die linken Stoffseiten liegen aufeinander, beide Schnittkanten sind bündig.
french-seam-pin = { match-and-pin }
    .check = { $folds ->
        [gathers] Die Kanten liegen bündig, an den Markierungen drängt sich keine Kräuselung.
        [pleats] Die Kanten liegen bündig, an den Markierungen drängt sich keine Falte.
       *[flat] Die Kanten liegen bündig.
     }
    .tolerance = { $folds ->
        [gathers] die Kräuselung insgesamt bis { $ease } zu kurz
        [pleats] die Falten insgesamt bis { $ease } zu kurz
       *[flat] eine Kante { $off } länger
     }
    .remedy = { $folds ->
        [gathers] Mehr als { $ease } zu kurz: die Kräuselung lockern.
        [pleats] Mehr als { $ease } zu kurz: die Falten lockern.
       *[flat] Den Unterschied zwischen den Markierungen verteilen.
     }
french-seam-first-ring = { $folds ->
    [gathers] Kräuselung unten: { $first } neben der Kante steppen, { $stitch }, { $length } rundum. Das Ende drei Stiche über den Anfang nähen.
    [pleats] Falten unten: { $first } neben der Kante steppen, { $stitch }, { $length } rundum. Das Ende drei Stiche über den Anfang nähen.
   *[flat] { $first } neben der Kante steppen, { $stitch }, { $length } rundum. Das Ende drei Stiche über den Anfang nähen.
 }
french-seam-first-flat = { $folds ->
    [gathers] Kräuselung unten: { $first } neben der Kante steppen, { $stitch }, { $length }; an beiden Enden verriegeln.
    [pleats] Falten unten: { $first } neben der Kante steppen, { $stitch }, { $length }; an beiden Enden verriegeln.
   *[flat] { $first } neben der Kante steppen, { $stitch }, { $length }; an beiden Enden verriegeln.
 }
french-seam-trim = Beide Nahtzugaben auf { $trim } zurückschneiden.
    .check = Die Nahtzugabe ist überall { $trim } breit, kein Faden steht ab.
    .tolerance = überall schmaler als { $second }
    .remedy = Wo sie breiter ist, noch einmal zurückschneiden, sonst sieht sie aus der fertigen Naht hervor.

## Die zweite Naht, rechts auf rechts

french-seam-press = Beide Nahtzugaben zusammen zu einer Seite bügeln. Die Arbeit entlang der Naht rechts auf rechts legen, die Naht auf den Bruch bügeln und { pin }.
    .check = Die erste Naht liegt genau auf dem Bruch.
    .remedy = Die Naht zwischen den Fingern rollen, bis sie auf dem Bruch liegt, und neu bügeln.
french-seam-second-ring = { $second } neben dem Bruch steppen, { $stitch }, { $length } rundum. Das Ende drei Stiche über den Anfang nähen.
    .check = { french-seam-second-flat.check }
    .remedy = { french-seam-second-flat.remedy }
french-seam-second-flat = { $second } neben dem Bruch steppen, { $stitch }, { $length }; an beiden Enden verriegeln.
    .check = { $folds ->
        [gathers] Auf der rechten Stoffseite ist nichts von der Nahtzugabe zu sehen und keine Kräuselnaht.
       *[other] Auf der rechten Stoffseite ist nichts von der Nahtzugabe zu sehen.
     }
    .remedy = { $folds ->
        [gathers] Abschneiden, was hervorsieht; wo die Nahtzugabe außen mitgefasst ist, diese Strecke etwas tiefer neu steppen. Eine sichtbare Kräuselnaht herausziehen.
       *[other] Abschneiden, was hervorsieht; wo die Nahtzugabe außen mitgefasst ist, diese Strecke etwas tiefer neu steppen.
     }
french-seam-press-ends = { $seams ->
    [one] Die Arbeit aufklappen und die fertige Naht zu einer Seite bügeln.
   *[other] Die Arbeit aufklappen und die fertigen Nähte alle in derselben Richtung bügeln.
 }
french-seam-press-edges = Die Arbeit aufklappen und die fertige Naht nach oben bügeln, zu { PIECE($to) } hin.
