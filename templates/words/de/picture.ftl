### Das Kleidungsstück, wie es aussehen wird, nach seinen Zahlen auf einer schlichten Büste gezeichnet.

picture-view = { $view ->
    [side] von der Seite
    [left] von der linken Seite der tragenden Person
    [back] von hinten
    [peeled] mit zurückgeschlagenen Lagen
   *[front] von vorn
 }
picture-caption = { $view ->
    [side] Von der Seite.
    [left] Von der linken Seite der tragenden Person, wo es geschlossen wird.
    [back] Von hinten.
    [peeled] Mit zurückgeschlagenen Lagen.
   *[front] Ein Eindruck von vorn: Die Längen stimmen; wie weit das Stück absteht, hängt vom Stoff ab.
 }
# Unter der Bildzeile, wo ein Modell des Stoffes findet, dass ein weiter Saum absteht und so über das steigt, was er verdecken soll.
picture-shows = So ausgestellt wie gezeichnet, endet { PIECE($outer, form: "short") } etwa { $lower } über { PIECE($inner, form: "short") }; nach den Längen allein würde es { $longer } darunter enden. Wenn es nicht hervorschauen soll, höchstens { $cut } statt { $now } hoch zuschneiden: { PIECE($inner, form: "short") }.

## In Worten

picture-alt = { $title } auf einer schlichten Büste, { picture-view }: { $long } lang, am Saum etwa { $across } breit. { picture-made } { picture-closed }
# Aufgesetzte Taschen und Träger.
picture-not-drawn = Nicht gezeichnet: { PIECE($pieces, form: "bare") }.
picture-made = { $count ->
    [one] Von oben nach unten: { $layers }.
   *[other] Von außen nach innen: { $layers }.
 }
picture-layer = { $alike ->
    [one] { $tiers }
   *[other] { $alike } gleiche Lagen, jede: { $tiers }
 }
picture-tier-plain = { PIECE($piece, form: "bare") } ({ $deep } hoch)
picture-tier-gathered = { PIECE($piece, form: "bare") } ({ $deep } hoch, { $full } : 1 gekräuselt)
picture-tier-pleated = { PIECE($piece, form: "bare") } ({ $deep } hoch, in Falten gelegt)
picture-closed = { $closed ->
    [elastic] Gummiband zieht die Taille zusammen.
    [cord] Eine Kordel zieht die Taille zusammen, ihre Enden hängen herab.
    [ties] { $at-left ->
        [yes] Es ist an der linken Seite offen und wird dort gebunden.
       *[no] Es ist hinten offen und wird dort gebunden.
    }
    [button] { $at-left ->
        [yes] Einen Schlitz an der linken Seite schließt ein Knopf.
       *[no] Einen Schlitz hinten schließt ein Knopf.
    }
    [zip] { $at-left ->
        [yes] Ein Reißverschluss an der linken Seite schließt es.
       *[no] Ein Reißverschluss hinten schließt es.
    }
    [slit] { $at-left ->
        [yes] Ein Schlitz an der linken Seite lässt es über die Hüfte.
       *[no] Ein Schlitz hinten lässt es über die Hüfte.
    }
   *[band] Die Taille bleibt so weit, wie sie ist.
 }
