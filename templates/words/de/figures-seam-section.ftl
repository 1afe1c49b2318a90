### Nähte im Schnitt: genäht, versäubert, umgelegt und abgesteppt.
### $above und $below: die Stofflagen der oberen und der unteren Seite, jede gesagt als `figure-plies`.

# Ein Teil, in einer Lage oder in mehreren.
figure-plies = { $count ->
    [1] { $piece }
   *[other] { $count } × { $piece }
 }

## Wie sie genäht wird

figure-seam-machine = An der Maschine
figure-seam-opened = Aufgeklappt, Nahtzugabe oben
# $faced: ob der Stoff eine rechte und eine linke Seite hat.
figure-seam-alt = { $faced ->
    [yes] Naht im Schnitt: { $above } oben, { $below } unten, rechts auf rechts, { $seam-width } neben den offenen Kanten genäht. Aufgeklappt stehen beide Nahtzugaben auf der linken Stoffseite.
   *[no] Naht im Schnitt: { $above } oben, { $below } unten, Kanten bündig, { $seam-width } neben den offenen Kanten genäht. Aufgeklappt stehen beide Nahtzugaben auf der linken Stoffseite.
 }
figure-seam-caption = Die Naht im Schnitt, { $seam-width } breit.{ figure-hatched }

## Versäubert

figure-margin-standing = Nahtzugabe, hochstehend
figure-margin-stitch = { $by ->
    [overlocker] Overlockstich
    [zigzag] Zickzackstich
   *[shears] gezackte Kante
 }
figure-margin-alt = { $by ->
    [overlocker] Naht im Schnitt, die Nahtzugabe von { $seam-width } steht hoch, alle Lagen von einem Overlockstich gefasst.
    [zigzag] Naht im Schnitt, die Nahtzugabe von { $seam-width } steht hoch, alle Lagen von einem Zickzackstich gefasst.
   *[shears] Naht im Schnitt, die Nahtzugabe von { $seam-width } steht hoch, alle Lagen zusammen mit der Zackenschere beschnitten.
 }
figure-margin-caption = { $by ->
    [overlocker] Die Nahtzugabe, der Overlockstich um alle Schnittkanten.{ figure-hatched }
    [zigzag] Die Nahtzugabe, der Zickzackstich um alle Schnittkanten.{ figure-hatched }
   *[shears] Die Nahtzugabe, alle Schnittkanten gezackt.{ figure-hatched }
 }
figure-margin-edge-alt = { $by ->
    [overlocker] Kante von { PIECE($piece) } im Schnitt, { $length } lang: Overlockstich um die Schnittkante.
    [zigzag] Kante von { PIECE($piece) } im Schnitt, { $length } lang: Zickzackstich um die Schnittkante.
   *[shears] Kante von { PIECE($piece) } im Schnitt, { $length } lang, mit der Zackenschere beschnitten.
 }
figure-margin-edge-caption = { $by ->
    [overlocker] Die Schnittkante mit ihrem Overlockstich.
    [zigzag] Die Schnittkante mit ihrem Zickzackstich.
   *[shears] Die gezackte Kante.
 }

## Umgelegt und abgesteppt

figure-turned-margin-seen = Rechte Stoffseite oben, Nahtzugabe darunter
figure-turned-margin-seam = frühere Naht
figure-turned-margin-edge = versäuberte Kante
# $onto: die Teile, unter denen die Nahtzugabe liegt. $plies: durch wie viele Lagen genäht wird.
figure-turned-margin-alt = { $way ->
    [up] Naht im Schnitt, rechte Stoffseite oben: Die Nahtzugabe von { $seam-width } liegt darunter, nach oben, zu { PIECE($onto) } hin, { $from-seam } neben der Naht durch alle { $plies } Stofflagen abgesteppt.
   *[down] Naht im Schnitt, rechte Stoffseite oben: Die Nahtzugabe von { $seam-width } liegt darunter, nach unten, zu { PIECE($onto) } hin, { $from-seam } neben der Naht durch alle { $plies } Stofflagen abgesteppt.
 }
figure-turned-margin-caption = Die Nahtzugabe liegt unter { PIECE($onto) } und ist festgesteppt.{ figure-hatched }
