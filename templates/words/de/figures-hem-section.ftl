### Fertige Kanten im Schnitt: zweimal eingeschlagen und gesteppt, oder unter einer Borte umgeschlagen.

## Zweimal eingeschlagen

figure-turned-before = Vorher: flach, linke Stoffseite oben
figure-turned-after = Nachher: umgeschlagen und genäht
figure-turned-alt-machine = Kante von { PIECE($piece) } im Schnitt: { $first }, dann { $second } auf die linke Stoffseite umgeschlagen und entlang des inneren Bruchs gesteppt.
figure-turned-alt-hand = Kante von { PIECE($piece) } im Schnitt: { $first }, dann { $second } auf die linke Stoffseite umgeschlagen und von Hand genäht.
# Kein erster Einschlag: Die Kante wurde versäubert.
figure-turned-alt-once = Kante von { PIECE($piece) } im Schnitt: { $second } auf die linke Stoffseite umgeschlagen und genäht.
figure-turned-caption = Die Kante im Schnitt, vor und nach dem Umschlagen.{ figure-hatched }

## Unter einer Borte

figure-trimmed-width = { $trim }, { $width }
figure-trimmed-fold = Bruch, bündig mit der Borte
figure-trimmed-alt-one-row = Kante im Schnitt, rechte Stoffseite oben: { PIECE($piece) } ist { $turn } auf die rechte Stoffseite umgeschlagen, darüber die Borte ({ $trim }), { $width } breit, bündig mit dem Bruch, { $row } neben dem Bruch gesteppt.
figure-trimmed-alt-two-rows = Kante im Schnitt, rechte Stoffseite oben: { PIECE($piece) } ist { $turn } auf die rechte Stoffseite umgeschlagen, darüber die Borte ({ $trim }), { $width } breit, bündig mit dem Bruch, { $row } neben dem Bruch und noch einmal { $below } neben der inneren Kante der Borte gesteppt.
figure-trimmed-caption = Die Kante im Schnitt: Die Borte verdeckt die umgeschlagene Kante.{ figure-hatched }
figure-trimmed-alt-together = Kante im Schnitt, rechte Stoffseite oben: Die Borte ({ $trim }), { $width } breit, wurde { $row } neben der offenen Kante angesteppt, dann beide { $turn } umgeschlagen und { $below } neben der oberen Kante der Borte abgesteppt: { PIECE($piece) }.
figure-trimmed-caption-together = Die Kante im Schnitt: Die offene Kante liegt innen, die Borte um den Bruch.{ figure-hatched }
