### Eine Anleitung eines Kurses, der gemeinsam zuschneidet: der Stapel der Teile anstelle des Zuschneidens, und was ausgegeben wird.
### $number: die Nummer der Person im Kurs, auf jedem ihrer Zettel.

pile-title = Der Stapel der Teile, Nummer { $number }
pile-aim = Alle Teile sind da, und jedes hat sein Maß.
# $pieces (Zahl): wie viele im Stapel liegen.
pile-take = Stapel { $number } vom Zuschnitt des Kurses nehmen. Der Zettel jedes Stücks darin beginnt mit { $number }.
    .check = { $pieces ->
        [one] Es liegt { $pieces } Stück darin.
       *[other] Es liegen { $pieces } Stücke darin.
     }
    .remedy = Fehlt ein Stück oder trägt es eine andere Nummer, vor dem Weiterarbeiten bei der Kursleitung nachfragen.
# $cuts (Liste): jeder Zettel mit seiner Länge. $count: wie viele es sind.
pile-piece = { PIECE($piece, at: "start") } an der langen Kante nachmessen: { $cuts }.
    .check = { $count ->
        [one] Es ist so lang und an beiden Enden { $depth } tief.
       *[other] Jedes ist so lang und an beiden Enden { $depth } tief.
     }
    .tolerance = { $off }
    .remedy = Ein zu langes Stück auf dem Tisch nachschneiden. Für ein zu kurzes ein anderes verlangen; nie lang ziehen.
# Nur in der Meldung darüber. $mark: ein Zettel ihres Stapels, etwa 5-2a.
pile-tag = { $mark } { $length }
# Anstelle der Menge Stoff, die zu kaufen wäre.
pile-cloth = in Stapel { $number }
