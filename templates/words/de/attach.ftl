### Eine Kante an eine gleich lange Kante nähen.
### $edge und seine Teile hängen unten, $to ist die Kante darüber.

attach-title = { PIECE($edge) } an { PIECE($to) } nähen
    .number = { $seam-width }
attach-aim = { COUNT($edge) ->
    [one] { PIECE($edge, at: "start") } hängt an { PIECE($to) }, Nahtbreite { $seam-width }.
   *[other] { PIECE($edge, at: "start") } hängen an { PIECE($to) }, Nahtbreite { $seam-width }.
 }

## Auflegen

attach-turn = { PIECE($edge) } auf rechts wenden, { PIECE($to) } auf links.
attach-slip = { COUNT($to) ->
    [one] { PIECE($to) } kopfüber über { PIECE($edge) } ziehen, bis { EDGE($to, form: "short") } bündig auf { EDGE($edge, case: "dative", form: "short") } liegt.
   *[other] { PIECE($to) } kopfüber über { PIECE($edge) } ziehen, bis { EDGE($to, form: "short") } bündig auf { EDGE($edge, case: "dative", form: "short") } liegen.
 }
    .check = Die rechten Stoffseiten liegen aufeinander, beide Schnittkanten sind bündig.
attach-slip-tails = { COUNT($to) ->
    [one] { PIECE($to) } kopfüber über { PIECE($edge) } ziehen, bis { EDGE($to, form: "short") } bündig auf { EDGE($edge, case: "dative", form: "short") } liegt. Die Fadenenden über die Kante heraushängen lassen.
   *[other] { PIECE($to) } kopfüber über { PIECE($edge) } ziehen, bis { EDGE($to, form: "short") } bündig auf { EDGE($edge, case: "dative", form: "short") } liegen. Die Fadenenden über die Kante heraushängen lassen.
 }
    .check = { attach-slip.check }
attach-lay = { EDGE($edge, at: "start") } rechts auf rechts bündig auf { EDGE($to) } legen.
attach-lay-tails = { EDGE($edge, at: "start") } rechts auf rechts bündig auf { EDGE($to) } legen. Die Fadenenden über die Kante heraushängen lassen.

## Stecken

attach-pin-gathers = { match-and-pin }
    .check = { $hold ->
        [clips] Die Kanten liegen bündig, an den Markierungen drängt sich keine Kräuselung. Wo die glatte Kante länger ist, verteilt sie sich faltenlos zwischen den Klammern.
       *[pins] Die Kanten liegen bündig, an den Markierungen drängt sich keine Kräuselung. Wo die glatte Kante länger ist, verteilt sie sich faltenlos zwischen den Stecknadeln.
     }
    .tolerance = die Kräuselung insgesamt bis { $ease } zu kurz
    .remedy = Mehr als { $ease } zu kurz: die Kräuselung lockern.
attach-pin-pleats = { match-and-pin }
    .check = { $hold ->
        [clips] Die Kanten liegen bündig, an den Markierungen drängt sich keine Falte. Wo die glatte Kante länger ist, verteilt sie sich faltenlos zwischen den Klammern.
       *[pins] Die Kanten liegen bündig, an den Markierungen drängt sich keine Falte. Wo die glatte Kante länger ist, verteilt sie sich faltenlos zwischen den Stecknadeln.
     }
    .tolerance = die Falten insgesamt bis { $ease } zu kurz
    .remedy = Mehr als { $ease } zu kurz: die Falten lockern.
attach-pin-flat = { match-and-pin }
    .check = Die Kanten liegen bündig.
    .tolerance = eine Kante { $off } länger
    .remedy = Den Unterschied zwischen den Markierungen verteilen.

## Nähen

# Kräuselung an Kräuselnähten: Jede Falte ist zu sehen, bevor die Nadel sie erreicht.
attach-turn-work-gathers-up = Die Arbeit so wenden, dass die Kräuselung oben liegt. So ist jede Falte rechtzeitig zu sehen und lässt sich bei stehender Maschine mit der Spitze einer Stecknadel glatt streichen.
attach-turn-work-gathers-up-ring = { attach-turn-work-gathers-up } Von der Innenseite des Rings aus nähen.
# Die Kräuselung eines Faltenlegefußes hält ihre eigene Naht.
attach-turn-work-gathers = { COUNT($to) ->
    [one] Die Arbeit so wenden, dass { PIECE($to) } oben liegt und die Kräuselung unten. Die Naht des Faltenlegefußes hält sie, und die Maschine transportiert den weiteren Stoff von unten.
   *[other] Die Arbeit so wenden, dass { PIECE($to) } oben liegen und die Kräuselung unten. Die Naht des Faltenlegefußes hält sie, und die Maschine transportiert den weiteren Stoff von unten.
 }
attach-turn-work-pleats = { COUNT($to) ->
    [one] Die Arbeit so wenden, dass { PIECE($to) } oben liegt und die Falten unten. Dort kann der Nähfuß sie nicht umschieben.
   *[other] Die Arbeit so wenden, dass { PIECE($to) } oben liegen und die Falten unten. Dort kann der Nähfuß sie nicht umschieben.
 }
attach-turn-work-flat = { COUNT($to) ->
    [one] Die Arbeit so wenden, dass { PIECE($to) } oben liegt.
   *[other] Die Arbeit so wenden, dass { PIECE($to) } oben liegen.
 }
# Nur in den Sätzen darunter gesagt.
attach-seam = { $ring ->
    [yes] { $seam-width } neben der Kante steppen, { $stitch }, { $length } rundum. Das Ende drei Stiche über den Anfang nähen.
   *[no] { $seam-width } neben der Kante steppen, { $stitch }, { $length }; an beiden Enden verriegeln.
 }
attach-sew-gathers = { attach-seam }
    .check = In der Naht ist keine Falte mitgefasst, auf der rechten Stoffseite ist keine Kräuselnaht zu sehen.
    .remedy = Diese Handbreit auftrennen, glatt streichen und neu steppen. Eine Kräuselnaht, die unter der Naht hervorsieht, herausziehen.
attach-sew-pleats = { attach-seam }
    .check = Jede Falte liegt, wie sie geheftet war; die Heftnaht ist auf der rechten Stoffseite nicht zu sehen.
    .remedy = Diese Handbreit auftrennen, die Falte neu legen und steppen.
attach-sew-flat = { attach-seam }
    .check = Die Kanten sind bündig geblieben.
    .remedy = Diese Handbreit auftrennen, glatt streichen und neu steppen.
