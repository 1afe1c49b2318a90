### Eine Kante auf die rechte Stoffseite umschlagen und eine Borte über die offene Kante nähen.
### $edge: die Kante; $trim: wie die Borte heißt.

edge-with-trim-title = { PIECE($edge) } mit Borte ({ $trim }) besetzen
    .number = { $turn }
edge-with-trim-aim = { COUNT($edge) ->
    [one] { EDGE($edge, at: "start") } ist fertig und kann nicht ausfransen.
   *[other] { EDGE($edge, at: "start") } sind fertig und können nicht ausfransen.
 }

## Vor dem Nähen

# Die Kante ist offen, und ihr Stoff franst aus.
edge-with-trim-hide = Die Borte ({ $trim }) über die offene Kante eines Stoffrests legen.
    .check = Die offene Kante scheint nicht durch.
    .remedy = Scheint sie durch, wie unter durchbrochener Spitze, zuerst { EDGE($edge) } im Zickzack versäubern, 3 mm breit und 2 mm lang, und die Maschine wieder auf Geradstich stellen: Lose Fäden kommen durch die Löcher.

## Auflegen und umschlagen

edge-with-trim-begin = Die Arbeit mit der rechten Stoffseite nach oben legen. Auf den ersten { $stretch } { EDGE($edge) } { $turn } auf die rechte Stoffseite umschlagen.
edge-with-trim-begin-ring = An { side-seam } beginnen: das offene Ende der Borte ({ $trim }) an diesem Bruch entlang legen, ebenfalls rechte Seite oben, ihre äußere Kante bündig.
    .check = Ist eine Kante der Borte ({ $trim }) geschwungen, liegt diese außen und die gerade innen.
edge-with-trim-begin-flat = An einem Ende beginnen: die Borte ({ $trim }) an diesem Bruch entlang legen, ebenfalls rechte Seite oben, ihre äußere Kante bündig mit dem Bruch, ihr offenes Ende mit dem Ende des Stoffs.
    .check = { edge-with-trim-begin-ring.check }
# Die Enden des Stoffs sind schon fertig: Die Enden der Borte werden eingeschlagen.
edge-with-trim-begin-folded = Das Ende der Borte ({ $trim }) { $under } einschlagen. An einem Ende beginnen: die Borte ({ $trim }) an diesem Bruch entlang legen, ebenfalls rechte Seite oben, ihre äußere Kante bündig, ihr eingeschlagenes Ende bündig mit dem Ende des Stoffs.
    .check = { edge-with-trim-begin-ring.check }
edge-with-trim-fold = So weiter: unter der Borte ({ $trim }) { EDGE($edge) } { $turn } auf die rechte Stoffseite umschlagen, beim Nähen immer { $stretch } voraus.
    .check = Die äußere Kante der Borte ({ $trim }) liegt bündig am Bruch.

## Die äußere Kante der Borte nähen

edge-with-trim-sew-ring = { $row } neben dem Bruch steppen, { $stitch }, am Anfang verriegeln. { $stretch } vor dem Anfang anhalten, die Nadel im Stoff.
    .check = Die offene Kante liegt überall unter der Borte.
    .remedy = Wo sie hervorsieht, diese Strecke auftrennen, etwas tiefer umschlagen und neu steppen.
edge-with-trim-sew-flat = { $row } neben dem Bruch steppen, { $stitch }, insgesamt { $length }; an beiden Enden verriegeln. Die Borte ({ $trim }) bündig mit dem Ende des Stoffs abschneiden.
    .check = { edge-with-trim-sew-ring.check }
    .remedy = { edge-with-trim-sew-ring.remedy }
edge-with-trim-sew-folded = { $row } neben dem Bruch steppen, { $stitch }, am Anfang verriegeln. { $stretch } vor dem Ende anhalten, die Nadel im Stoff.
    .check = { edge-with-trim-sew-ring.check }
    .remedy = { edge-with-trim-sew-ring.remedy }

## Die Enden der Borte

edge-with-trim-cut = Die Borte ({ $trim }) { $overlap } hinter ihrem Anfang abschneiden.
edge-with-trim-lap = Das Schnittende { $half } einschlagen und den Bruch { $half } über den Anfang legen.
    .check = Der Bruch liegt gerade quer, kein offenes Ende ist zu sehen.
    .remedy = Reicht es nicht, eine Handbreit auftrennen und die Borte mit weniger Zug neu auflegen.
edge-with-trim-close = Bis zum Bruch weitersteppen und verriegeln: insgesamt { $length }.
    .check = Die Enden der Borte treffen sich an { side-seam }.
edge-with-trim-end-folded = Die Borte ({ $trim }) { $under } hinter dem Ende des Stoffs abschneiden und so viel einschlagen. Bis zum Bruch weitersteppen und verriegeln: insgesamt { $length }.
    .check = Der Bruch ist bündig mit dem Ende des Stoffs, kein offenes Ende ist zu sehen.
    .remedy = Reicht es nicht, eine Handbreit auftrennen und die Borte mit weniger Zug neu auflegen.

## Die innere Kante einer breiten Borte nähen

edge-with-trim-second-row-ring = Eine zweite Naht steppen, { $below } neben der inneren Kante der Borte ({ $trim }), { $stitch }, { $length }. Das Ende drei Stiche über den Anfang nähen.
edge-with-trim-second-row-flat = Eine zweite Naht steppen, { $below } neben der inneren Kante der Borte ({ $trim }), { $stitch }, { $length }; an beiden Enden verriegeln.
edge-with-trim-sew-lap = Das eingeschlagene Ende quer über die Borte ({ $trim }) feststeppen, { $below } neben dem Bruch; an beiden Enden verriegeln.
edge-with-trim-sew-ends = Beide eingeschlagenen Enden quer über die Borte ({ $trim }) feststeppen, { $below } neben den Brüchen; an beiden Enden verriegeln.

## Die Borte an die offene Kante nähen, dann beide zusammen umschlagen

# Die linke Stoffseite liegt oben, die rechte Seite der Borte auch: Umgeschlagen ist die Borte zu sehen.
edge-with-trim-along-ring = Die Arbeit mit der linken Stoffseite nach oben legen. An { side-seam } beginnen: die Borte ({ $trim }), rechte Seite oben, an { EDGE($edge) } anlegen. Ihre äußere Kante liegt bündig mit der offenen Kante.
    .check = Ist eine Kante der Borte ({ $trim }) geschwungen, liegt diese von der offenen Kante weg.
edge-with-trim-along-flat = Die Arbeit mit der linken Stoffseite nach oben legen. An einem Ende beginnen: die Borte ({ $trim }), rechte Seite oben, an { EDGE($edge) } anlegen. Ihre äußere Kante liegt bündig mit der offenen Kante, ihr offenes Ende mit dem Ende des Stoffs.
    .check = { edge-with-trim-along-ring.check }
edge-with-trim-along-folded = Die Arbeit mit der linken Stoffseite nach oben legen. Das Ende der Borte ({ $trim }) { $under } einschlagen. An einem Ende beginnen: die Borte, rechte Seite oben, an { EDGE($edge) } anlegen. Ihre äußere Kante liegt bündig mit der offenen Kante, ihr Bruch mit dem Ende des Stoffs.
    .check = { edge-with-trim-along-ring.check }
edge-with-trim-along-sew-ring = { $row } neben der offenen Kante steppen, { $stitch }, am Anfang verriegeln. { $stretch } vor dem Ende anhalten, die Nadel im Stoff.
    .check = { edge-with-trim-along-sew-flat.check }
    .remedy = { edge-with-trim-along-sew-flat.remedy }
edge-with-trim-along-sew-flat = { $row } neben der offenen Kante steppen, { $stitch }, insgesamt { $length }; an beiden Enden verriegeln. Die Borte ({ $trim }) bündig mit dem Ende des Stoffs abschneiden.
    .check = Die Kante der Borte ({ $trim }) liegt überall bündig auf der offenen Kante, keine von beiden ist gedehnt.
    .remedy = Wo sie verrutscht sind, diese Strecke auftrennen und neu steppen.
# Mehrere gleiche: Die Borte läuft von einem zum nächsten.
edge-with-trim-along-sew-chain = { $row } neben der offenen Kante steppen, { $stitch }, je { $length }. Am Ende weder die Borte ({ $trim }) noch die Fäden abschneiden: das nächste Teil dicht dahinter anlegen und weitersteppen.
    .check = { edge-with-trim-along-sew-flat.check }
    .remedy = { edge-with-trim-along-sew-flat.remedy }
edge-with-trim-apart = Die Kette aus { $copies } Teilen auseinanderschneiden, die Borte ({ $trim }) bündig mit den Enden des Stoffs.
edge-with-trim-turn-both = Borte ({ $trim }) und Stoff zusammen { $turn } auf die rechte Stoffseite umschlagen, beim Nähen immer { $stretch } voraus.
    .check = Die offene Kante liegt innen, zwischen Stoff und Borte ({ $trim }). Die erste Naht ist von links nicht zu sehen.
    .remedy = Wo die Naht am Bruch hervorsieht, etwas tiefer umschlagen.
edge-with-trim-topstitch-ring = Rechte Stoffseite oben: { $below } neben der oberen Kante der Borte ({ $trim }) absteppen, { $stitch }, { $length }. Das Ende drei Stiche über den Anfang nähen.
    .check = Jeder Stich hält Borte ({ $trim }) und Stoff.
    .remedy = Wo er die Borte ({ $trim }) verfehlt hat, diese Strecke neu steppen.
edge-with-trim-topstitch-flat = Rechte Stoffseite oben: { $below } neben der oberen Kante der Borte ({ $trim }) absteppen, { $stitch }, { $length }; an beiden Enden verriegeln.
    .check = { edge-with-trim-topstitch-ring.check }
    .remedy = { edge-with-trim-topstitch-ring.remedy }
