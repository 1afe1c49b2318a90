### Einen gekräuselten oder glatten Streifen an eine Kante legen, sodass ihre Naht ihn mitfasst.
### $edge: die Kante des Streifens; $in: das Teil, auf dessen Kante er liegt.

catch-in-title = { PIECE($edge) } in die Naht legen: { PIECE($in, form: "bare") }
    .number = { $seam-width }
catch-in-aim = Die folgende Naht fasst { EDGE($edge) } mit; dann kommen { $hangs } aus ihr heraus.

# Er liegt auf der unteren Kante eines Teils und fällt über das, was daran genäht wird, …
catch-in-lay-below = { PIECE($edge) } rechts auf rechts auf { PIECE($in) } legen, den Saum zur Mitte von { PIECE($in) }, beide Schnittkanten bündig.
    .check = Der Saum zeigt von den Schnittkanten weg, die linke Stoffseite ist oben.
    .remedy = Umdrehen: Andersherum genäht, zeigt der Streifen seine linke Stoffseite.
# … oder auf der oberen Kante des Teils, über das er fällt.
catch-in-lay-above = { PIECE($edge) } auf { PIECE($in) } legen, beide mit der rechten Stoffseite nach oben, den Saum zur Mitte von { PIECE($in) }, beide Schnittkanten bündig.
    .check = Der Saum zeigt von den Schnittkanten weg, die rechte Stoffseite ist oben.
    .remedy = Umdrehen: Andersherum genäht, zeigt der Streifen seine linke Stoffseite.
catch-in-pin = { match-places } aufeinanderlegen und zuerst dort { pin }. Dazwischen alle { $spacing } { pin }: etwa { pins-needed }.
catch-in-baste-ring = { $row } neben der Kante mit dem längsten Stich steppen, { $length } rundum. Die Naht folgt { $rest } weiter innen und verdeckt diese Reihe.
    .check = { $folds ->
        [gathers] Die Kräusel liegen gleichmäßig, an den Markierungen ist keine Falte gestaucht.
       *[flat] Der Streifen liegt faltenlos.
     }
    .remedy = Diese Handbreite auftrennen, neu verteilen und neu steppen.
catch-in-baste-flat = { $row } neben der Kante mit dem längsten Stich steppen, { $length } von einem Ende zum anderen. Die Naht folgt { $rest } weiter innen und verdeckt diese Reihe.
    .check = { catch-in-baste-ring.check }
    .remedy = { catch-in-baste-ring.remedy }
