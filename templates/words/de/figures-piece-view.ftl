### Die Teile eines Schritts vorher und nachher, jede Kante im Muster ihres Zustands.

## Köpfe

figure-piece-before = Vorher:
figure-piece-after = Nachher:
figure-piece-alike = { $copies } gleiche
figure-piece-ring = ein Ring, Längen rundum
figure-piece-flat = flach
# Welche Stoffseite zu sehen ist.
figure-piece-up = { $up ->
    [margins] Nahtzugaben oben
    [either] gleich welche Seite oben
    [wrong] linke Stoffseite oben
   *[right] rechte Stoffseite oben
 }
figure-piece-margins-wide = Nahtzugaben sind breiter gezeichnet, als sie sind.
figure-piece-left-out = An den Wellenlinien ist die Mitte ausgelassen.
figure-piece-further = Was weiter entfernt angenäht ist, ist nicht gezeichnet.

## Beschriftungen

# Wie es um eine Kante steht.
figure-edge-state = { $state ->
    [raw] offen
    [selvedge] Webkante
    [neatened] versäubert
    [hemmed] gesäumt
    [sewn] eingenäht
    [enclosed] eingefasst
    [trimmed] mit Borte
    [gathered] gekräuselt
    [pleated] in Falten
    [sewn-gathered] eingenäht, gekräuselt
   *[sewn-pleated] eingenäht, in Falten
 }
# Eine Beschriftung für beide Kanten eines Teils.
figure-piece-both = oben und unten { figure-edge-state }
figure-piece-deep = { $deep } hoch
figure-piece-layers = { $layers } Lagen
figure-piece-fold = Bruch
figure-piece-seam = { $margin ->
    [none] Naht
    [covered] Naht, Zugabe verdeckt
    [stitched-down] Naht, abgesteppt
    [enclosed] Naht, eingefasst
    [neatened] Naht, Zugabe versäubert
   *[raw] Naht, Zugabe offen
 }
figure-piece-behind = { $where ->
    [inside] { PIECE($piece, form: "bare") } innen
   *[sewn-on] { PIECE($piece, form: "bare") } aufgenäht
 }

## In Worten, für alle, die nichts sehen können

figure-piece-form = { $layers ->
    [one] { $ring ->
        [yes] Ring
       *[no] flach
    }
   *[other] { $ring ->
        [yes] Ring, { $layers } Lagen
       *[no] flach, { $layers } Lagen
    }
 }
figure-piece-edge = { $side ->
    [top] obere Kante { $length }, { figure-edge-state }
   *[bottom] untere Kante { $length }, { figure-edge-state }
 }
figure-piece-told-one = { PIECE($piece, form: "bare") } ({ figure-piece-form }), { $deep } hoch, { $edges }
figure-piece-told = { $when ->
    [before] Vorher: { $pieces }.
   *[after] Nachher: { $pieces }.
 }
figure-piece-caption = { $broken ->
    [yes] { PIECE($pieces, at: "start") } vorher und nachher, Höhen in einem Maßstab, Breiten im Verhältnis. Was sich ändert, ist dicker gezeichnet.
   *[no] { PIECE($pieces, at: "start") } vorher und nachher, maßstäblich. Was sich ändert, ist dicker gezeichnet.
 }
