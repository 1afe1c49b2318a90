### Das Kleidungsstück, wie es aussehen wird, aus seinen Zahlen gezeichnet.

picture-view = { $view ->
    [side] von der Seite gesehen
   *[front] von vorn gesehen
 }
picture-layers = { $layers ->
    [one] eine Lage
   *[other] { $layers } Lagen
 }
picture-alt = { $title } auf einer schlichten Büste, { picture-view }: { $long } lang, { picture-layers }, am Saum etwa { $across } breit.
picture-caption = Ein Eindruck, { picture-view }. Das Stück ist { $long } lang; wie weit es absteht, hängt vom Stoff ab.
