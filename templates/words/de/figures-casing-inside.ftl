### Ein Tunnel flach gesehen: seine Kanäle, oder sein Gummiband zum Knöpfen.

figure-channels-head = Der Tunnel mit seinen Nähten
figure-channels-note = Die Höhe ist maßstäblich, die Länge nicht.
figure-channels-alt = Der Tunnel flach gesehen, der Bruch oben: { PIECE($piece) }; { $channels } Kanäle von { $channel }, { $rows ->
    [one] eine neue Naht
   *[other] { $rows } neue Nähte
 } dazwischen{ $open ->
    [yes] , und in jeder Naht eine Öffnung von { $gap }
   *[no] {""}
 }.
figure-channels-caption = { $channels } Kanäle von je { $channel }.
figure-buttoned-head = Die Innenseite an der Öffnung
figure-buttoned-note = Was im Tunnel liegt, ist gepunktet. Nicht maßstäblich.
figure-buttoned-alt = Die Innenseite des Tunnels an seiner Öffnung: { PIECE($piece) }; ein Ende des Gummibands ist innen festgenäht, das andere kommt heraus und ist { $reach } neben der Öffnung angeknöpft.
figure-buttoned-caption = Ein Ende ist fest, das andere am Knopf: rundum { $first }, ausgelassen { $out }.
