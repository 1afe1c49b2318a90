### Der Schlüssel zu den Abbildungen: jedes Muster und Zeichen einmal, mit seinem Namen.
### Kurz halten: Für einen Namen ist Platz für etwa 20 Zeichen.

## Stoffkanten

figure-legend-edges = Stoffkanten
figure-legend-raw = offen: lose Fäden
figure-legend-selvedge = Webkante
figure-legend-neatened = versäubert: Zickzack
figure-legend-hemmed = gesäumt
figure-legend-trimmed = mit Borte: graues Band
figure-legend-gathered = gekräuselt: Wellen
figure-legend-sewn = in einer Naht
figure-legend-enclosed = eingefasst: Punkte
figure-legend-fold = Bruch: Strich, Punkt

## Stoffseiten

figure-legend-faces = Stoffseiten
figure-legend-right-side = rechte: glatt
figure-legend-wrong-side = linke: schraffiert
figure-legend-left-over = übrig: kreuzweise
figure-legend-behind = dahinter: Punkte

## Im Schnitt

figure-legend-cut = Im Schnitt, von der Seite
figure-legend-stitch = zwei Stoffe, ein Stich
figure-legend-half = schraffiert: linke Seite
figure-legend-gathers = gekräuselter Stoff
figure-legend-overcast = versäuberte Kanten

## Stiche und Dinge

figure-legend-things = Stiche und Dinge
figure-legend-seam = Naht, Steppnaht
figure-legend-longest = größte Stichlänge
figure-legend-elastic = Gummiband
figure-legend-pin = Stecknadel

## Zeichen

figure-legend-signs = Zeichen
figure-legend-changed = rot, dick: dieser Schritt
figure-legend-callout = siehe jenen Satz
figure-legend-mark = Passzeichen
figure-legend-length = eine Länge
figure-legend-left-out = Mitte ausgelassen

figure-legend-alt = Die { $count } Muster und Zeichen der Abbildungen, jedes mit seinem Namen: { $names }.
figure-legend-scale = In Schnitten durch die Arbeit sind Breiten maßstäblich; der Stoff ist dicker gezeichnet, als er ist.
figure-legend-caption = So sind die Abbildungen zu lesen. Neben jeder Farbe steht ein Muster oder ein Wort.
