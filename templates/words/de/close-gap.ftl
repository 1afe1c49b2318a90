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
# Die Öffnung liegt in der Naht quer zum Bund, über dem Tunnel.
close-gap-seam = Die beiden Bruchkanten der Öffnung von Hand mit kleinen Stichen zusammenziehen, insgesamt { $gap }, und den Faden innen vernähen.
    .check = Die Naht ist wieder ganz, das Gummiband gleitet unter dem Finger.
    .remedy = Ist das Gummiband mitgefasst, die Stiche auftrennen und nur den Stoff fassen.
