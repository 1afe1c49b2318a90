### Einen Schrägstreifen um eine Schnur falten und an eine Kante legen, sodass ihre Naht einen Wulst zeigt: Paspel.
### $strip: das Teil, das die Schnur einfasst; $in: die Kante, auf der es liegt.

piping-title = Paspelieren: { EDGE($in) }
    .number = { $thick }
piping-aim = Die folgende Naht zeigt eine Paspel von { $thick } Dicke, aus { $length } { $cord }.

piping-fold = { PIECE($strip) } der Länge nach links auf links zur Hälfte falten und die Schnur ({ $cord }) in den Bruch legen. Die Schnittkanten bündig { pin }.
    .check = Die Schnur liegt überall im Bruch, { $inside } innerhalb der Schnittkanten.
    .remedy = Sie mit dem Fingernagel in den Bruch schieben und neu { pin }.
piping-cover-ring = Den längsten Stich und den Reißverschlussfuß einstellen. Dicht neben der Schnur steppen, { $length } rundum. Die Enden der Schnur so schneiden, dass sie aneinanderstoßen und nicht übereinanderliegen.
    .check = Die Schnur kann nicht verrutschen, und die Naht geht nicht durch sie.
    .remedy = Wo die Naht die Schnur getroffen hat, auftrennen und daneben neu steppen.
piping-cover-flat = Den längsten Stich und den Reißverschlussfuß einstellen. Dicht neben der Schnur steppen, { $length }. Die Schnur { $seam-width } vor beiden Enden abschneiden, damit die Seitennaht sie nicht trifft.
    .check = Die Schnur kann nicht verrutschen, und die Naht geht nicht durch sie.
    .remedy = Wo die Naht die Schnur getroffen hat, auftrennen und daneben neu steppen.
piping-lay = { PIECE($strip) } auf die rechte Stoffseite von { PIECE($piece) } legen, die Schnur nach innen, alle Schnittkanten bündig: { EDGE($in) }. Ohne zu ziehen { pin }. { $ring ->
    [yes] Seitennaht trifft auf Seitennaht.
   *[no] An einem Ende beginnen.
 }
    .check = Sie liegt flach und zieht die Kante nicht zusammen.
    .remedy = Lösen, den Streifen locker legen und neu { pin }.
piping-baste-ring = Mit dem Reißverschlussfuß auf der ersten Reihe steppen, { $length } rundum.
    .check = Die Schnur steht in gleichmäßiger Linie an der Kante.
    .remedy = Wo sie schwankt, auftrennen und dort neu steppen.
piping-baste-flat = Mit dem Reißverschlussfuß auf der ersten Reihe steppen, { $length } von einem Ende zum anderen.
    .check = { piping-baste-ring.check }
    .remedy = { piping-baste-ring.remedy }
piping-next = Für die folgende Naht den Reißverschlussfuß lassen, diese Reihe nach oben legen und eine Fadenbreite näher an der Schnur steppen. Danach Fuß und Stich zurückstellen.
