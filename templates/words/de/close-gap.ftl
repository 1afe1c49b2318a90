### Die Öffnung eines Tunnels schließen.

close-gap-title = Die Öffnung schließen
    .number = { $gap }
close-gap-aim = Der Tunnel ist rundum geschlossen.

# Die Naht eines Bunds ist auf der rechten Stoffseite zu sehen, die eines umgelegten Tunnels auf der linken.
close-gap-sew = { $band ->
    [yes] Rechte Stoffseite oben: den Tunnel nur an der Öffnung flach ziehen. Die { $gap } zusteppen, { $stitch }, in einer Linie mit der ersten Naht und an beiden Enden { $past } darüber hinaus.
   *[no] Innenseite oben: den Tunnel nur an der Öffnung flach ziehen. Die { $gap } zusteppen, { $stitch }, in einer Linie mit der ersten Naht und an beiden Enden { $past } darüber hinaus.
 }
    .check = Die Naht ist ohne Lücke, das Gummiband ist nicht mitgefasst: Es gleitet unter dem Finger.
    .remedy = Ist das Gummiband mitgefasst, die Naht auftrennen und näher am Bruch neu steppen.
# Mehrere Nähte, jede mit ihrer Öffnung.
close-gap-sew-rows = { $band ->
    [yes] Rechte Stoffseite oben: die Öffnungen der { $rows } Nähte zusteppen, zuerst die am Bruch. Den Tunnel nur an der Öffnung flach ziehen: je { $gap }, { $stitch }, in einer Linie mit der Naht und an beiden Enden { $past } darüber hinaus.
   *[no] Innenseite oben: die Öffnungen der { $rows } Nähte zusteppen, zuerst die am Bruch. Den Tunnel nur an der Öffnung flach ziehen: je { $gap }, { $stitch }, in einer Linie mit der Naht und an beiden Enden { $past } darüber hinaus.
 }
    .check = Jede Naht ist ohne Lücke, und jedes Gummiband gleitet unter dem Finger.
    .remedy = Ist ein Gummiband mitgefasst, diese Naht auftrennen und daran vorbei neu steppen.
# Die Öffnung liegt in der Naht quer zum Bund, über dem Tunnel.
close-gap-seam = Die beiden Bruchkanten der Öffnung von Hand mit kleinen Stichen zusammenziehen, insgesamt { $gap }, und den Faden innen vernähen.
    .check = Die Naht ist wieder ganz, das Gummiband gleitet unter dem Finger.
    .remedy = Ist das Gummiband mitgefasst, die Stiche auftrennen und nur den Stoff fassen.

## Die Öffnung in einer Naht

close-gap-aim-seam = Die Naht ist ganz geschlossen: { PIECE($pieces) }.
close-gap-sew-seam = Auf links wenden und die beiden Nahtzugaben an der Öffnung bündig legen: { PIECE($pieces) }. Die { $gap } zusteppen, { $seam-width } neben den Kanten, { $stitch }, in einer Linie mit der Naht und an beiden Enden { $past } darüber hinaus.
    .check = Von rechts gesehen ist die Naht ohne Lücke.
    .remedy = Wo sie springt, die Stelle auftrennen und auf der Linie neu steppen.
