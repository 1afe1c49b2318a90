### Einen geschlossenen Bund zur Hälfte falten und vor dem Annähen am Bruch einen Tunnel für Gummiband steppen.
### $band ist der Bund; $stack seine beiden offenen Kanten, die als eine angenäht werden.

channel-band-title = Den Tunnel steppen: { PIECE($band, form: "bare") }
channel-band-aim = { PIECE($band, at: "start") } ist zur Hälfte gefaltet, mit einem Tunnel von { $channel } am Bruch.

channel-band-fold = Die Naht quer zum Bund, die den Ring geschlossen hat, auseinanderbügeln. { PIECE($band) } der Länge nach links auf links zur Hälfte falten, beide Schnittkanten bündig, und den Bruch bügeln.
    .check = Vom Bruch bis zu den Schnittkanten sind es rundum { $depth }.
    .tolerance = { $off } mehr oder weniger
    .remedy = Aufbügeln und von den Schnittkanten aus neu falten.
channel-band-edge-stitch = { $edge-stitch } neben dem Bruch absteppen, { $stitch }, { $length } rundum. Das Ende drei Stiche über den Anfang nähen.
    .check = Der Bruch ist scharf, die Naht läuft ohne Welle daran entlang.
    .remedy = Die Welle auftrennen und neu steppen, ohne am Bund zu ziehen.
channel-band-row = Ebenso eine zweite Naht steppen, { $row } neben dem Bruch.
    .check = Zwischen beiden Nähten ist der Tunnel rundum { $channel } breit: Das Gummiband liegt flach darin.
    .tolerance = { $off } mehr oder weniger
    .remedy = Wo er schmaler ist, die zweite Naht auftrennen und neu steppen.
