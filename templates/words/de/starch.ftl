### Ein Teil mit Stärke steifen, fertig gekauft oder aus Maisstärke gekocht, mit Pinsel, Sprüher oder durch Tauchen.
### $starch: wie die Stärke oder die Maisstärke heißt.

starch-title = { PIECE($pieces) } stärken
    .number = { $liquid }
starch-aim = { COUNT($pieces) ->
    [one] { PIECE($pieces, at: "start") } steht ab.
   *[other] { PIECE($pieces, at: "start") } stehen ab.
 }
starch-caution-hot = Heiße Stärke verbrüht und haftet an der Haut: die kalte Mischung in das heiße Wasser gießen, mit einem langen Löffel rühren und Kinder fernhalten.
starch-caution-spray = Sprühstärke ist entzündbar: im Freien oder in einem gut gelüfteten Raum sprühen, fern von Flammen, Zündflammen, Zigaretten und heißen Bügeleisen, und den Sprühnebel nicht einatmen.
starch-caution-flame = Ein Tüllrock brennt schnell, gestärkt oder nicht. An der Luft trocknen: kein heißer Trockner, und kein Herd, keine Zündflamme, kein Heizgerät, keine Kerze und kein offenes Feuer in der Nähe. Auch beim Tragen davon fernhalten.
starch-caution-warm-air = Ein Tüllrock brennt schnell, gestärkt oder nicht. Warme Luft kommt nur aus einem Haartrockner in der Hand, auf der kleinsten Stufe, { $air-far } entfernt und nie allein gelassen: kein Heizgerät, kein Herd, keine Zündflamme, keine Kerze und kein offenes Feuer in der Nähe. Auch beim Tragen davon fernhalten. Örtliche Brandschutzregeln gehen dieser Anleitung vor.

## Die Stärke ansetzen

starch-ready = In einer Schüssel { $liquid } Stärke ({ $starch }) gebrauchsfertig bereitstellen; muss sie verdünnt werden, wie auf dem Etikett angegeben.
starch-ready-spray = { $liquid } Stärke ({ $starch }) gebrauchsfertig ansetzen, wie auf dem Etikett angegeben, und in eine Sprühflasche füllen. Aus der Dose ist sie gebrauchsfertig.
starch-paste = { $cornflour } Stärke ({ $starch }) in { $cold } kaltes Wasser rühren. Ein gestrichener Esslöffel fasst 15{ "\u00A0" }ml.
    .check = Es bleibt kein Klumpen.
starch-cook = { $hot } Wasser zum Kochen bringen und von der Hitze nehmen. Die Mischung langsam hineingießen und rühren, bis sie klar wird.
    .check = Sie ist klar und ohne Klumpen.
    .remedy = Noch weiß: noch einmal erhitzen und rühren. Klumpen: durch ein Tuch gießen.
starch-cool = Abkühlen lassen, bis sie handwarm ist.
starch-try = Auf einem Stoffrest ausprobieren und trocknen lassen.
    .check = Er ist so steif wie gewünscht und hat keine weißen Flecken.
    .remedy = Zu steif oder weiß: Wasser zugeben. Zu weich: noch einmal auftragen, wenn die erste Schicht trocken ist.

## Auftragen

# Steht zuerst, bevor die Stärke angesetzt wird.
# $last: Es folgt kein Schritt, der von einem bunten Faden aus misst.
starch-pins = { $last ->
    [yes] Stecknadeln und Nadeln zählen, bevor der Stoff nass wird. Die bunten Fäden und alle Markierungen entfernen: die Kreide ausbürsten, den Stift mit Wasser herauslösen.
   *[no] Stecknadeln und Nadeln zählen, bevor der Stoff nass wird. Alle Markierungen entfernen: die Kreide ausbürsten, den Stift mit Wasser herauslösen.
 }
    .check = Es liegen so viele in der Dose wie am Anfang, und keine Markierung ist zu sehen.
    .remedy = An jeder Naht entlangfühlen, bis die letzte gefunden ist: In steifem Stoff spürt sie niemand, und sie rostet. Stärke hält eine Markierung für immer fest.
starch-hang = Das Kleidungsstück kopfüber am Saum aufhängen oder im Freien über eine Leine legen, darunter ein altes Laken.
starch-brush = { PIECE($pieces) } mit der Stärke bestreichen, eine Lage nach der anderen. Alles Übrige aus dem Weg halten.
    .check = Der Stoff ist durchfeuchtet, es laufen keine Tropfen.
    .remedy = Nasse Stellen mit einem trockenen Tuch abtupfen: Sie trocknen weiß.
starch-spray = { PIECE($pieces) } aus { $far } Abstand mit der Stärke besprühen, eine Lage nach der anderen. Alles Übrige aus dem Weg halten.
    .check = { starch-brush.check }
    .remedy = { starch-brush.remedy }
starch-dip = { PIECE($pieces) } in eine Schüssel mit der Stärke tauchen, eine Lage nach der anderen, bis der Stoff durchnässt ist. Mit den Händen ausdrücken, nicht wringen. Alles Übrige aus der Schüssel halten.
    .check = { starch-brush.check }
    .remedy = { starch-brush.remedy }
starch-hang-wet = Das Kleidungsstück kopfüber am Saum aufhängen oder im Freien über eine Leine legen, darunter ein altes Laken, das die Tropfen auffängt.
starch-dry = Die Lagen auseinanderschütteln und an der Luft trocknen lassen, fern von Hitze.
    .check = Keine zwei Lagen kleben zusammen.
    .remedy = Anfeuchten und auseinanderziehen.
starch-form = Das feuchte Kleidungsstück aufrecht auf eine Schneiderpuppe oder über einen umgedrehten Korb auf einem Ständer ziehen und die Lagen rundum auseinanderziehen.
    .check = Jede Lage steht von der darunter ab.
    .remedy = Wo zwei kleben, anfeuchten und auseinanderziehen.
starch-warm-air = Mit einem Haartrockner in der Hand von unten warme Luft zwischen die Lagen blasen, immer rundum, bis der Stoff nicht mehr nass ist.
    .check = Der Stoff fühlt sich nie heiß an.
    .remedy = Den Haartrockner weiter weghalten.
starch-overnight = Über Nacht ohne Wärme auf der Puppe lassen.
    .check = Am Morgen ist es durchgetrocknet und behält beim Abnehmen die Form.
    .remedy = Noch feucht oder weich: länger stehen lassen oder ein zweites Mal stärken.
