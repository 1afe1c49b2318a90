### Zuschneiden: die Liste der Teile und jeder Schritt vom Ballen bis zum letzten Teil.
### $cloth: wie der Stoff in der Vorlage heißt. $mark: was auf dem Zettel eines Teils steht, etwa 2b.

## Die Liste

cut-whole = ganz
cut-joins = { $joins ->
    [one] { $joins } Verbindungsnaht
   *[other] { $joins } Verbindungsnähte
 }
# Mehrere Stücke zusammen.
cut-joins-in-all = { $joins ->
    [one] insgesamt { $joins } Verbindungsnaht
   *[other] insgesamt { $joins } Verbindungsnähte
 }
cut-finished = { $length } × { $depth }
cut-finished-folded = { $length } × { $depth }, gefaltet
cut-finished-gores = { $gores } Keilbahnen, { $depth } hoch

## Vor dem ersten Schnitt

cutting-title = Zuschneiden: { $cloth }
    .number = { $length }
cutting-aim = { $sections ->
    [one] { $sections } Abschnitt. Die Zuschnittmaße enthalten alle Zugaben: nichts zugeben.
   *[other] { $sections } Abschnitte. Die Zuschnittmaße enthalten alle Zugaben: nichts zugeben.
 }

# $trims: Borten, Bänder und Kordeln, die aufgenäht werden.
cutting-wash-trims = Vor dem Abmessen waschen und trocknen, wie später das Kleidungsstück: { $trims }. Was später einläuft, zieht die Kante zusammen.
    .check = { COUNT($trims) ->
        [one] Alles ist ganz trocken und liegt flach.
       *[other] Alles ist ganz trocken und liegt flach.
     }
    .remedy = Mit einem Punkt durch ein Tuch bügeln, was sich eingerollt hat, und abkühlen lassen.
# Steht nur in den folgenden Sätzen. Punkte der Pflegeetiketten: ISO 3758.
cutting-dots = { $dots ->
    [1] einem Punkt, 110 °C, ohne Dampf
    [2] zwei Punkten, 150 °C
   *[3] drei Punkten, 200 °C, mit Dampf
 }
cutting-wash = Den Stoff ({ $cloth }) vor dem Zuschneiden waschen und trocknen: Er läuft etwa { $shrinks } ein. Mit { cutting-dots } bügeln.
    .check = Er ist ganz trocken und liegt flach.
    .remedy = Länger trocknen und der Länge nach noch einmal bügeln.
# Es ist kein Einlaufen angegeben, und die Faser läuft bekanntlich ein.
cutting-wash-unknown = Den Stoff ({ $cloth }) vor dem Zuschneiden waschen und trocknen, wie später das Kleidungsstück: Neuer Stoff läuft ein, und wie viel, ist nicht angegeben. Mit { cutting-dots } bügeln.
    .check = { cutting-wash.check }
    .remedy = { cutting-wash.remedy }
# Steht nur in den folgenden Sätzen.
cutting-straighten = { $made ->
    [net] Das Ende begradigen, an dem begonnen wird: quer entlang einer Lochreihe schneiden.
    [woven] Das Ende begradigen, an dem begonnen wird: einen quer laufenden Faden herausziehen und entlang der Lücke schneiden.
   *[close] Das Ende begradigen, an dem begonnen wird: eine Linie im rechten Winkel zur Längskante ziehen und daran entlangschneiden.
 }
cutting-selvedges = Die Webkanten des Stoffs ({ $cloth }) abschneiden. { cutting-straighten }
    .check = Es bleiben mindestens { $length } Länge.
    .remedy = Ist er zu kurz, vor dem ersten Schnitt das Fehlende kaufen.
# Der Plan braucht fast die ganze Breite.
cutting-selvedges-wide = { cutting-selvedges }
    .check = Es bleiben mindestens { $width } Breite und { $length } Länge.
    .remedy = { $eked ->
        [yes] Ist er bis zu { $hair } schmaler, { $shorter } so lang schneiden, wie er breit ist, und { $longer } um alles länger, was ihnen fehlt. Ist er noch schmaler, breiter kaufen. Ist er zu kurz, vor dem ersten Schnitt das Fehlende kaufen.
       *[no] Ist er schmaler als { $width }, breiter kaufen oder den Plan für die eigene Breite neu machen lassen. Ist er zu kurz, vor dem ersten Schnitt das Fehlende kaufen.
     }
# Einige Teile haben eine Kante an der Webkante.
cutting-selvedges-kept = Die Webkanten des Stoffs ({ $cloth }) nicht abschneiden: manche sind Kanten von Teilen. { cutting-straighten }
    .check = { cutting-selvedges.check }
    .remedy = { cutting-selvedges.remedy }
cutting-selvedges-kept-wide = { cutting-selvedges-kept }
    .check = { cutting-selvedges-wide.check }
    .remedy = { cutting-selvedges-wide.remedy }
# Wo eine frühere Etappe des Zuschnitts auf diesem Stoff geendet hat. $kept (yes oder no): ob die Webkanten dran bleiben.
cutting-goes-on = { $kept ->
    [yes] Mit dem Stoff ({ $cloth }) dort weitermachen, wo die vorige Etappe geendet hat: Dieses Ende ist gerade. Die Webkanten bleiben dran.
   *[no] Mit dem Stoff ({ $cloth }) dort weitermachen, wo die vorige Etappe geendet hat: Dieses Ende ist gerade. Die Webkanten abschneiden, wo sie noch dran sind.
 }
    .check = { cutting-selvedges-wide.check }
    .remedy = { cutting-selvedges-wide.remedy }
cutting-fold = Den Stoff ({ $cloth }) der Länge nach rechts auf rechts falten, so dass die beiden langen Kanten aufeinanderliegen.
    .check = Beide Lagen liegen flach, der Bruch ist gerade.
    .remedy = Aufklappen, das Ende neu begradigen und noch einmal falten.
# Die Stoffseiten sind gleich.
cutting-fold-alike = Den Stoff ({ $cloth }) der Länge nach falten, so dass die beiden langen Kanten aufeinanderliegen.
    .check = { cutting-fold.check }
    .remedy = { cutting-fold.remedy }

## Ein Abschnitt

# Nur in den Sätzen darunter gesagt. $net: Kreide fällt hindurch.
cutting-line-put = { $net ->
    [yes] eine Reihe Stecknadeln stecken
   *[no] mit Kreide eine Linie ziehen
 }
cutting-chalk = { $made ->
    [net] Eine Reihe Stecknadeln gerade quer über den Stoff ({ $cloth }) stecken, entlang der Löcher, { $length } vom Schnittende: Kreide fällt hindurch.
   *[close] Mit Kreide eine Linie gerade quer über den Stoff ({ $cloth }) ziehen, { $length } vom Schnittende.
 }
    .check = Beide Enden der Linie sind { $length } vom Schnittende entfernt.
    .tolerance = { $off }
    .remedy = { $made ->
        [net] Vor dem Schneiden die Nadeln neu stecken.
       *[close] Vor dem Schneiden die Linie ausreiben und neu ziehen.
     }
cutting-section = Entlang der Linie schneiden: Das ist Abschnitt { $number } von { $sections }.
cutting-section-only = Entlang der Linie schneiden: Das ist der einzige Abschnitt.
# Andere Abschnitte dieses Stoffs behalten ihre.
cutting-selvedges-here = Von diesem Abschnitt die Webkanten abschneiden: kein Teil daraus behält eine.
# $taped: ob Klebestreifen auf dem Tisch liegen, die eine eigene Zeichnung haben.
cutting-tags = Für jedes Teil einen Zettel schreiben, so wie es in der Zeichnung des Abschnitts heißt. Jeden anstecken, sobald das Teil zugeschnitten ist: nahe der Kante, die dort oben ist{ $taped ->
    [yes] { " " }(nicht in der Zeichnung der Klebestreifen)
   *[no] { "" }
 }, seiner Oberkante, auf die linke Stoffseite: die mattere. Wo beide gleich aussehen, jetzt festlegen.
    .check = { $tags ->
        [one] { $tags } Zettel. Er wird abgenommen, wenn das Teil genäht wird.
       *[other] { $tags } Zettel. Jeder wird abgenommen, wenn sein Teil genäht wird.
     }
# Die Stoffseiten sind gleich.
cutting-tags-alike = Für jedes Teil einen Zettel schreiben, so wie es in der Zeichnung des Abschnitts heißt. Jeden anstecken, sobald das Teil zugeschnitten ist: nahe der Kante, die dort oben ist{ $taped ->
    [yes] { " " }(nicht in der Zeichnung der Klebestreifen)
   *[no] { "" }
 }, seiner Oberkante. Dieser Stoff hat keine rechte Stoffseite: Die Seite mit dem Zettel ist von jetzt an die linke.
    .check = { cutting-tags.check }
# Wie, steht beim ersten Abschnitt des Stoffs.
cutting-tags-again = Auch die Zettel dieses Abschnitts schreiben und jeden ebenso wie vorhin anstecken, sobald sein Teil zugeschnitten ist.
    .check = { cutting-tags.check }
# Rechtecke, aus denen später Teile geschnitten werden.
cutting-tags-cut-again = Wird später noch einmal zugeschnitten: { PIECE($pieces) }. Dort sagt der Zettel nur, welches Teil es ist; welche Kante oben ist, sagt der Schritt, der es zuschneidet.

## Streifenbahnen, über Klebestreifen auf dem Tisch

# $tapes: die Abstände der Klebestreifen.
cutting-tapes-along = { COUNT($tapes) ->
    [one] Einen Klebestreifen der Länge nach auf den Tisch kleben. Seine abgewandte Kante liegt { $tapes } von der vorderen Tischkante.
   *[other] Klebestreifen der Länge nach auf den Tisch kleben. Ihre abgewandten Kanten liegen { $tapes } von der vorderen Tischkante.
 }
    .check = { $beyond ->
        [yes] Jeder Klebestreifen läuft über den ganzen Tisch und an beiden Enden hinunter, wo er zu sehen ist, wenn der Stoff den Rest verdeckt. Der letzte hat an beiden Enden seinen Abstand.
       *[no] Jeder Klebestreifen reicht an beiden Enden eine Handbreit über den Abschnitt hinaus, und der letzte hat an beiden seinen Abstand.
     }
    .tolerance = { $tape-off }
    .remedy = Neu messen, immer von derselben Kante, nie von Klebestreifen zu Klebestreifen. Ist der Tisch zu klein, auf dem Boden arbeiten: Dort ist ein weiterer Klebestreifen die vordere Kante.
# Auf dem Tisch kleben noch Streifen für einen früheren Abschnitt.
cutting-tapes-along-anew = { cutting-tapes-along } Klebestreifen an anderen Stellen entfernen.
    .check = { cutting-tapes-along.check }
    .tolerance = { cutting-tapes-along.tolerance }
    .remedy = { cutting-tapes-along.remedy }
cutting-tapes-across = { COUNT($tapes) ->
    [one] Einen Klebestreifen quer auf den Tisch kleben. Seine abgewandte Kante liegt { $tapes } vom linken Tischende.
   *[other] Klebestreifen quer auf den Tisch kleben. Ihre abgewandten Kanten liegen { $tapes } vom linken Tischende.
 }
    .check = { cutting-tapes-along.check }
    .tolerance = { cutting-tapes-along.tolerance }
    .remedy = Neu messen, immer von demselben Ende, nie von Klebestreifen zu Klebestreifen. Ist der Tisch zu klein, auf dem Boden arbeiten: Dort ist ein weiterer Klebestreifen das linke Ende.
cutting-tapes-across-anew = { cutting-tapes-across } Klebestreifen an anderen Stellen entfernen.
    .check = { cutting-tapes-along.check }
    .tolerance = { cutting-tapes-along.tolerance }
    .remedy = { cutting-tapes-across.remedy }
# Ein früherer Abschnitt hat dieselben Klebestreifen.
cutting-tapes-stay = Die Klebestreifen liegen lassen, { $tapes } { $from ->
    [end] vom linken Tischende
   *[edge] von der vorderen Tischkante
 }.
    .check = Keiner hat sich gelöst.
cutting-draw-along = Den Stoff ({ $cloth }) gerade und ohne Zug über die Klebestreifen ziehen, so dass eine Seite, die eine Webkante hatte, bündig an der vorderen Tischkante liegt. Mit Gewichten beschweren.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Die vorderste Streifenbahn behält ihre Webkante.
cutting-draw-along-kept = Den Stoff ({ $cloth }) gerade und ohne Zug über die Klebestreifen ziehen, so dass eine Webkante bündig an der vorderen Tischkante liegt. Mit Gewichten beschweren.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
cutting-draw-along-folded = Den Stoff ({ $cloth }) gerade und ohne Zug über die Klebestreifen ziehen, so dass der Bruch bündig an der vorderen Tischkante liegt. Mit Gewichten beschweren.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Von gefaltetem Stoff wird nur geschnitten, was an den Webkanten liegt.
cutting-draw-no-tapes = Den Stoff ({ $cloth }) gerade und ohne Zug auf den Tisch legen, so dass der Bruch bündig an der vorderen Tischkante liegt. Mit Gewichten beschweren.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Streifenbahnen über die Breite des Stoffs.
cutting-draw-turned = Den Stoff ({ $cloth }) um ein Viertel drehen und gerade und ohne Zug über die Klebestreifen ziehen, so dass sein Schnittende bündig an der vorderen Tischkante liegt. Mit Gewichten beschweren.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
cutting-draw-across = Den Stoff ({ $cloth }) den Tisch entlang gerade und ohne Zug über die Klebestreifen ziehen, so dass sein Schnittende bündig am linken Tischende liegt. Mit Gewichten beschweren.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Die anderen Abschnitte dieses Stoffs werden gefaltet geschnitten.
cutting-draw-across-open = Den Bruch aufklappen: Dieser Abschnitt wird in einer Lage geschnitten. { cutting-draw-across }
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
cutting-draw-turned-open = Den Bruch aufklappen: Dieser Abschnitt wird in einer Lage geschnitten. { cutting-draw-turned }
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Nur als Teil der vier darüber gesagt.
cutting-draw =
    .check = Er liegt flach und rutscht nicht, wenn man ihn anstößt.
    .remedy = Die Gewichte abnehmen, neu gerade ziehen und mehr Gewichte auflegen.
# Nur in den Sätzen darunter gesagt.
cutting-lane-count = { $lanes ->
    [one] { $lanes } Streifenbahn
   *[other] { $lanes } Streifenbahnen
 }
cutting-slit = { COUNT($tapes) ->
    [one] Entlang der abgewandten Kante des Klebestreifens schneiden: { cutting-lane-count }. Wo der Stoff ihn verdeckt, von Ende zu Ende { cutting-line-put }.
   *[other] Entlang der abgewandten Kante jedes Klebestreifens schneiden: { cutting-lane-count }. Wo der Stoff einen verdeckt, von Ende zu Ende { cutting-line-put }.
 }
# Der Abschnitt ist länger als der Tisch.
cutting-slit-beyond = { cutting-slit } Am Ende des Tischs die nächste Strecke nachziehen und entlang derselben Klebestreifen weiterschneiden.
# Streifenbahnen an der abgewandten Webkante, bei gefaltetem Stoff an beiden, die dort aufeinanderliegen.
cutting-slit-selvedge = { $folded ->
    [yes] Die beiden Webkanten aufeinanderstecken. { $depth } von ihnen entfernt, von Ende zu Ende, { cutting-line-put } und durch beide Lagen daran entlang schneiden: Streifenbahnen { $lanes }.
   *[no] { $depth } von der abgewandten Webkante entfernt, von Ende zu Ende, { cutting-line-put } und daran entlang schneiden: Streifenbahn { $lanes }.
 }
    .check = Sie ist an beiden Enden und in der Mitte { $depth } von der Webkante entfernt.
    .tolerance = { $off }
    .remedy = Vor dem Schneiden noch einmal von der Webkante aus messen.
# $pieces: Kennzeichen von Teilen.
cutting-selvedge-stays = Die Webkante an { $pieces } lassen: sie ist die { $edge ->
    [top] obere
   *[bottom] untere
 } Kante, so wie sie ist.
# Streifenbahnen, die am Bruch übereinanderliegen.
cutting-slit-fold = Auch entlang des Bruchs schneiden: Dort hängen die Streifenbahnen { $lanes } zusammen.
# $layer: bei gefaltetem Stoff, wo die Streifenbahn liegt; fold: Sie enthält den Bruch, ihre Höhe ist die aufgeklappte.
cutting-lane-whole = { $layer ->
    [flat] Streifenbahn { $lane }, { $depth } hoch, ist { $piece }, ungeschnitten.
    [fold] Streifenbahn { $lane }, die den Bruch enthält, aufklappen. Sie ist { $depth } hoch: Das ist { $piece }, ungeschnitten.
    [upper] Streifenbahn { $lane }, die obere Lage, { $depth } hoch, ist { $piece }, ungeschnitten.
   *[under] Streifenbahn { $lane }, die untere Lage, { $depth } hoch, ist { $piece }, ungeschnitten.
 }
# Several lanes of one layer, each a piece as it comes off the table.
cutting-lanes-whole = Diese Streifenbahnen mit Zetteln kennzeichnen, sie bleiben ungeschnitten: { $lanes }.
# Said only inside the message above.
cutting-lane-named = Streifenbahn { $lane } ist { $piece }
cutting-lane = { $layer ->
    [flat] Von Streifenbahn { $lane }, { $depth } hoch, von einem Ende an rechtwinklig abschneiden: { $cuts }.
    [fold] Streifenbahn { $lane }, die den Bruch enthält, aufklappen. Sie ist { $depth } hoch: davon { $cuts } abschneiden.
    [upper] Von Streifenbahn { $lane }, der oberen Lage, { $depth } hoch, { $cuts } abschneiden.
   *[under] Von Streifenbahn { $lane }, der unteren Lage, { $depth } hoch, { $cuts } abschneiden.
 }
# Ein kurzer Abschnitt, der ein Streifen ist: Ein Lineal genügt, kein Klebestreifen wird gelegt.
cutting-strip-off = Am Schnittende von Abschnitt { $number } entlang { $length } messen, dort rechtwinklig { cutting-line-put } und an ihr entlang schneiden: Das ist { $piece }.
    .check = Es ist an beiden langen Kanten { $length } lang.
    .tolerance = { $off }
    .remedy = Das Ende rechtwinklig nachschneiden.
cutting-lane-over = { $layer ->
    [flat] Streifenbahn { $lane }, { $depth } hoch, bleibt übrig.
    [fold] Streifenbahn { $lane }, die den Bruch enthält, bleibt übrig.
    [upper] Streifenbahn { $lane }, die obere Lage, { $depth } hoch, bleibt übrig.
   *[under] Streifenbahn { $lane }, die untere Lage, { $depth } hoch, bleibt übrig.
 }
# Nur in den drei darüber gesagt.
cutting-length-for = { $length } für { $piece }

## Bahnen, die frei liegen

cutting-lay = Den Stoff ({ $cloth }) flach auf den Tisch legen, linke Stoffseite oben, ein Schnittende links und eine Seite, die eine Webkante hatte, vorn: die vordere Seite. Mit Gewichten beschweren.
    .check = Er liegt ohne Falte und ohne Zug.
cutting-lay-alike = Den Stoff ({ $cloth }) flach auf den Tisch legen, gleich welche Stoffseite oben, ein Schnittende links und eine Seite, die eine Webkante hatte, vorn: die vordere Seite. Mit Gewichten beschweren.
    .check = { cutting-lay.check }
# Nur in den beiden darunter gesagt.
cutting-measure-on = Wo der Tisch endet, quer { cutting-line-put } und aufschreiben, wie weit sie vom Schnittende entfernt ist: dann den Stoff nachziehen und von dieser Linie aus weitermessen.
cutting-lay-beyond = { cutting-lay } { cutting-measure-on }
    .check = { cutting-lay.check }
cutting-lay-alike-beyond = { cutting-lay-alike } { cutting-measure-on }
    .check = { cutting-lay.check }
cutting-panel = { $net ->
    [yes] { $mark } am Lineal entlang mit Stecknadeln abstecken:
   *[no] { $mark } mit Kreide und Lineal anzeichnen:
 } { $near-end } bis { $far-end } vom Schnittende, { $near-side } bis { $far-side } von der vorderen Seite.
    .check = Es ist an beiden Seiten { $length } lang und an beiden Enden { $width } breit.
    .tolerance = { $off }
    .remedy = Neu messen, immer vom Ende und von der Seite aus, nie von Bahn zu Bahn.
cutting-round = Jede Bahn mit der Stoffschere entlang ihrer Linien ausschneiden, die äußerste zuerst.
    .check = { $panels ->
        [one] { $panels } Bahn ausgeschnitten. Kein gerader Schnitt von Seite zu Seite trennt alle.
       *[other] { $panels } Bahnen ausgeschnitten. Kein gerader Schnitt von Seite zu Seite trennt alle.
     }
cutting-part-end = { COUNT($marks) ->
    [one] Entlang der Linie { $at } vom Schnittende gerade durchschneiden: { $marks } ist abgetrennt.
   *[other] Entlang der Linie { $at } vom Schnittende gerade durchschneiden: { $marks } sind abgetrennt.
 }
cutting-part-side = { COUNT($marks) ->
    [one] Entlang der Linie { $at } von der vorderen Seite gerade durchschneiden: { $marks } ist abgetrennt.
   *[other] Entlang der Linie { $at } von der vorderen Seite gerade durchschneiden: { $marks } sind abgetrennt.
 }
cutting-over-end = Entlang der Linie { $at } vom Schnittende gerade durchschneiden: Was neben { $marks } liegt, bleibt übrig.
cutting-over-side = Entlang der Linie { $at } von der vorderen Seite gerade durchschneiden: Was neben { $marks } liegt, bleibt übrig.
cutting-over-end-all = Entlang der Linie { $at } vom Schnittende gerade durchschneiden: Was neben den Bahnen liegt, bleibt übrig.
cutting-over-side-all = Entlang der Linie { $at } von der vorderen Seite gerade durchschneiden: Was neben den Bahnen liegt, bleibt übrig.
cutting-trim = Entlang der Linien abschneiden, was neben { $marks } übrig bleibt.

## Nach dem letzten Schnitt

# Nothing that is left is large enough for other work.
cutting-keep-small = Was vom Stoff ({ $cloth }) übrig ist, aufheben, bis das Kleidungsstück fertig ist: Daran werden Stiche und Bügeleisen ausprobiert, und zum Ausbessern ist es auch da.
cutting-keep = Was vom Stoff ({ $cloth }) groß genug ist, für später aufheben, jedes Stück mit seiner Größe auf einem Zettel.
    .check = Es sind { $sizes }. Die kleineren aufheben, bis das Kleidungsstück fertig ist, zum Ausprobieren von Stichen und zum Ausbessern.
# Nur im Satz darüber gesagt.
cutting-size = { $length } × { $width }
cutting-sizes = { $number } von { $length } × { $width }
