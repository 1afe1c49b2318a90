### Zwei Träger nähen und innen an der oberen Kante befestigen.

straps-title = Zwei Stück von { PIECE($strap) } an { EDGE($edge) } nähen
straps-aim = Jeder Träger ist { $wide } breit und von Kante zu Kante { $long } lang.
straps-sew = Den Streifen der Länge nach rechts auf rechts zur Hälfte falten. { $seam-width } neben den langen Kanten steppen, { $stitch }, und beide Enden offen lassen.
straps-turn = Eine Sicherheitsnadel in ein Ende stecken und bis zum anderen durchschieben, so dass der Schlauch gewendet wird. Flach bügeln, die Naht an einer Kante.
    .check = Der Träger ist überall { $wide } breit.
    .tolerance = { $hair-off } mehr oder weniger
    .remedy = Die Naht mit den Fingern zur Kante rollen und neu bügeln.
straps-close = Die Öffnung an { EDGE($edge) } schließen oder so zustecken, wie sie schließen wird: Ringsum sind es dann { $round }.
straps-mark = { EDGE($edge, at: "start") } in Viertel teilen und alle { $quarter } markieren, von { side-seam } als einer Seite aus. Von der vorderen Mitte zu beiden Seiten { $half-front } markieren, von der hinteren Mitte { $half-back }.
    .check = Vordere und hintere Markierungen liegen links so weit von der Seite wie rechts.
    .tolerance = { $close-off } mehr oder weniger
    .remedy = Noch einmal von der Mitte aus messen.
straps-pin = Von jedem Trägerende { $under } umschlagen und { $lap } tief innen an der Kante feststecken: ein Ende vorn, das andere hinten, ohne sie zu kreuzen oder zu verdrehen.
straps-try = Das Kleidungsstück anziehen und im Spiegel ansehen.
    .check = Die Träger schneiden nicht ein und rutschen nicht, die Kante hängt waagerecht.
    .remedy = Die hinteren Enden um gleich viel höher oder tiefer stecken.
straps-fasten = Jedes Ende in einem Rechteck festnähen, { $close } innerhalb seiner Kanten und entlang der oberen Kante, { $stitch }, und verriegeln.
    .check = Ein kräftiger Zug bewegt kein Ende.
    .remedy = Das Rechteck noch einmal steppen.
