### Teile in einem Bad färben. Das Merkblatt, das der Farbe beiliegt, geht jedem Satz hier vor.
### $dye: wie die Farbe heißt.

dye-title = { PIECE($pieces) } färben
dye-aim = { PIECE($pieces, at: "start") } in einem gleichmäßigen Farbton.
dye-caution-powder = Das Merkblatt des Farbherstellers und die örtlichen Vorschriften für den Umgang mit Farbe und das Weggießen des Bades befolgen. Farbpulver nicht einatmen. Maske und Handschuhe tragen; das Pulver anfeuchten, bevor es stauben kann. Keinen Topf, Löffel oder Messbecher nehmen, der für Lebensmittel benutzt wird.
dye-caution-bath = Ein Färbebad verbrüht. Nassen Stoff mit einer Zange heben, Kinder fernhalten, den Raum lüften.

## Vor dem Bad

# $grams: Farbpulver. $cloth: wie viel der trockene Stoff wiegt.
dye-weigh = { $grams }{ "\u00A0" }g Farbe ({ $dye }) abwiegen. Trockengewicht von { PIECE($pieces) }, insgesamt: { $cloth }.
    .check = Die Waage zeigt { $grams }{ "\u00A0" }g.
dye-wet = { PIECE($pieces) } waschen und den Stoff nass lassen.
    .check = Er ist ganz durchnässt und sinkt.
    .remedy = Trockene Stellen bleiben blass: länger einweichen.
dye-try = Zuerst von jedem Stoff einen nassen Stoffrest in einer Tasse des Bades färben und trocknen lassen.
    .check = Der trockene Stoffrest hat den gewünschten Farbton. Nasser Stoff sieht dunkler aus.
    .remedy = Zu dunkel: Wasser zugeben. Zu blass: mehr Pulver zu einem Brei anfeuchten und zugeben.

## Im Bad

dye-bath = Das Pulver zu einem Brei anfeuchten und das Bad nach dem Merkblatt ansetzen, mit so viel Wasser, dass sich der Stoff frei bewegt.
dye-turn = Den Stoff hineingeben, das Bad langsam auf die Temperatur des Merkblatts bringen und den Stoff dabei ständig wenden.
    .check = Keine Falte liegt still, im Stoff ist keine Luft gefangen.
    .remedy = Untertauchen und die Falten auseinanderziehen.
dye-rinse = Nach dem Merkblatt im Bad abkühlen lassen, dann ausspülen.
    .check = Das Wasser läuft klar ab.
    .remedy = Noch einmal spülen.
dye-dry = An der Luft trocknen, nicht in der Sonne, und die ersten Male allein waschen.
## Eine Borte, bevor sie angenäht wird

dye-title-trim = Die Borte färben: { $trim }
dye-aim-trim = { $length } Borte ({ $trim }) in einem gleichmäßigen Farbton, bevor sie angenäht wird.
dye-weigh-trim = { $length } Borte ({ $trim }) in einem Stück abwickeln und { $grams }{ "\u00A0" }g Farbe ({ $dye }) abwiegen: Die Borte wiegt trocken { $cloth }.
    .check = Die Waage zeigt { $grams }{ "\u00A0" }g.
dye-wet-trim = Die Borte ({ $trim }) über Hand und Ellbogen locker zu einem Strang wickeln und an vier Stellen lose abbinden. Waschen und nass lassen.
    .check = Sie ist ganz durchnässt und sinkt.
    .remedy = Wo fest abgebunden ist, bleibt die Borte blass: lockern.
dye-try-trim = Zuerst ein nasses Ende der Borte ({ $trim }) in einer Tasse des Bades färben und trocknen lassen.
    .check = Das trockene Ende hat den gewünschten Farbton. Nass sieht sie dunkler aus.
    .remedy = Zu dunkel: Wasser zugeben. Zu blass: mehr Pulver zu einem Brei anfeuchten und zugeben.
dye-bath-trim = Das Pulver zu einem Brei anfeuchten und das Bad nach dem Merkblatt ansetzen, mit so viel Wasser, dass sich der Strang frei bewegt.
dye-turn-trim = Den Strang hineingeben, das Bad langsam auf die Temperatur des Merkblatts bringen und den Strang dabei ständig wenden.
    .check = Kein Teil liegt still oder ragt aus dem Bad.
    .remedy = Untertauchen und auseinanderziehen.
dye-rinse-trim = Nach dem Merkblatt im Bad abkühlen lassen, dann spülen.
    .check = Das Wasser läuft klar: So färbt die Borte den Stoff in der Wäsche nicht.
    .remedy = Noch einmal spülen.
dye-dry-trim = An der Luft trocknen, nicht in der Sonne, flach um ein Brett gewickelt, damit sie nicht knittert.
    .check = Sie kann eingelaufen sein: nachmessen, es sind noch mindestens { $needed }: so viel wird angenäht.
    .remedy = Zu kurz: den Rest in einem eigenen Bad mit denselben Gewichten färben.
