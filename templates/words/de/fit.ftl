### Die beste Wahl unter Grenzen, gesagt von `furbelow fit`. $limit, $limits, $aims, $choices, $options: so, wie sie getippt werden.

fit-asked = { $garment }: { $aims }, so dass { $limits }
fit-asked-no-limit = { $garment }: { $aims }, ohne Grenze
fit-make = herstellen mit { $options }
fit-no-better = nicht besser: mit { $choices } geht es nicht, denn { $why }
fit-none = kein Kleidungsstück mit dieser Auswahl hält das ein
fit-nearest = am nächsten: { $choices }
fit-would-do-all = es ginge mit { $limits } statt allem, was verfehlt ist
fit-would-do = { COUNT($kept) ->
    [0] es ginge mit { $instead } statt `{ $limit }`, bei { $choices }
   *[other] es ginge mit { $instead } statt `{ $limit }`, wenn { $kept } bleibt, bei { $choices }
 }

## Was es braucht

fit-amount = { $what }: { $amount }
fit-amount-of = { $side ->
    [under] { $what }: { $amount } von { $limit }, { $spare } darunter
   *[over] { $what }: { $amount } von { $limit }, { $spare } darüber
 }
fit-cost = Kosten
fit-hours = Stunden
# $fault: eine Meldung der Prüfungen, auf Englisch.
fit-refused-by = es lässt sich nicht herstellen: { $fault }
fit-missed = { $side ->
    [under] { $what } kommt auf { $came-to }, { $by } zu wenig
   *[over] { $what } kommt auf { $came-to }, { $by } zu viel
 }
fit-missed-at-least = { $side ->
    [under] { $what } kommt auf mindestens { $came-to }, { $by } zu wenig
   *[over] { $what } kommt auf mindestens { $came-to }, { $by } zu viel
 }

## Wie viele Kleidungsstücke es waren; sie stehen in einer Zeile

fit-garments = { $garments ->
    [one] { $garments } Kleidungsstück zur Auswahl
   *[other] { $garments } Kleidungsstücke zur Auswahl
 }
fit-refused = { $garments } von den Prüfungen abgelehnt
fit-ruled-out = { $garments } allein wegen der Fläche der Teile ausgeschlossen
fit-planned = { $garments } bis zum letzten Streifen zugeschnitten
fit-unsure = { $garments ->
    [one] { $garments } im erlaubten Aufwand nicht erreicht, es könnte also besser sein
   *[other] { $garments } im erlaubten Aufwand nicht erreicht, eines davon könnte also besser sein
 }
