### Nähte durch einen Tunnel steppen, für mehrere Reihen Gummiband.
### $piece: der Bund, oder das Teil, dessen Kante umgelegt wurde; $band: welches von beiden.

divide-casing-title = Den Tunnel in { $channels } Kanäle teilen
    .number = { $channel }
divide-casing-aim = { $channels } Kanäle liegen untereinander, jeder { $channel } breit, für je eine Reihe Gummiband.

divide-casing-mark = { $band ->
    [yes] { $rows ->
        [one] Auf der rechten Stoffseite rundum eine Linie auf den Tunnel zeichnen, { $channel } unter dem Bruch.
       *[other] Auf der rechten Stoffseite rundum { $rows } Linien auf den Tunnel zeichnen: die erste { $channel } unter dem Bruch, jede nächste { $channel } tiefer.
     }
   *[no] { $rows ->
        [one] Auf der Innenseite rundum eine Linie auf den Tunnel zeichnen, { $channel } unter dem Bruch.
       *[other] Auf der Innenseite rundum { $rows } Linien auf den Tunnel zeichnen: die erste { $channel } unter dem Bruch, jede nächste { $channel } tiefer.
     }
 }
    .check = Von jeder Linie zur nächsten und von der letzten bis zur Naht des Tunnels sind es { $channel }.
    .tolerance = { $off } mehr oder weniger
    .remedy = Die falsche Linie wegwischen und neu zeichnen.
# Die Öffnung liegt in der Naht des Tunnels, und jede neue Naht lässt dasselbe Stück offen.
divide-casing-sew-gap = Jede Linie von einem Ende der Öffnung rundum bis zum anderen absteppen, { $sewn }, { $stitch }, sodass genau über der ersten eine Öffnung von { $gap } bleibt. An beiden Enden verriegeln.
    .check = Ein Rest des Gummibands gleitet durch jeden Kanal, und die Öffnungen liegen übereinander.
    .remedy = Die Naht auftrennen, wo der Rest hängen bleibt, und auf ihrer Linie neu steppen.
# Die Öffnung ist ein Schlitz quer über den Tunnel, in einer Naht: Die Nähte laufen darüber.
divide-casing-sew = Jede Linie rundum absteppen, { $sewn }, { $stitch }, auch über die geöffnete Quernaht. Das Ende drei Stiche über den Anfang nähen.
    .check = Ein Rest des Gummibands gleitet durch jeden Kanal, und jeder hat seine eigene Öffnung in der Quernaht.
    .remedy = Die Naht auftrennen, wo der Rest hängen bleibt, und auf ihrer Linie neu steppen.
