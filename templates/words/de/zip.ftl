### Einen Reißverschluss in die Öffnung einer Naht einnähen.
### $way: centred, lapped oder invisible. $from-edge: wie lang die Öffnung von der jetzigen Kante aus ist; $opening: fertig.

zip-title = Einen Reißverschluss in { PIECE($pieces) } einnähen
    .number = { $opening }
zip-aim = { $way ->
    [centred] Die Öffnung von { $opening } schließt sich mit dem Reißverschluss ({ $zip }) in der Mitte.
    [lapped] Die Öffnung von { $opening } schließt sich mit dem Reißverschluss ({ $zip }), { $lap } breit verdeckt.
   *[invisible] Die Öffnung von { $opening } schließt sich mit dem Reißverschluss ({ $zip }) und sieht wie die Naht aus.
 }
zip-shorten = Den Reißverschluss schließen. { $opening } unter seinem oberen Ende von Hand einen Riegel nähen, zehn feste Stiche über beide Zähnchenreihen, und den Reißverschluss { $below } darunter abschneiden.

## Vorbereiten

zip-baste = Die Öffnung heften, also vorläufig auf der Nahtlinie zunähen: { $margin } neben den Kanten, { $from-edge } von oben, mit Stichen von { $basting } mm und ohne zu verriegeln.
zip-press-open = Beide Nahtzugaben auseinanderbügeln, entlang der Öffnung und eine Handbreit darunter.
zip-fold-out = Die Nahtzugabe der Seite, die unten liegen wird, wieder so herausfalten, dass ihr Bruch { $near } über die Heftnaht hinaussteht, und bügeln. { zip-beneath }
# Nur in einem anderen Satz gesagt: welche Seite unten liegt.
zip-beneath = { $place ->
    [side] Unten liegt das Rückenteil.
    [back] Unten liegt die rechte Hälfte.
   *[either] Unten liegt an der linken Seite das Rückenteil, in der hinteren Mitte die rechte Hälfte.
 }
zip-press-coils = Den Reißverschluss öffnen. Beide Bänder mit der Spitze des Bügeleisens von innen bügeln, so dass die Zähnchen aufrecht stehen.
    .check = Die Nadel kommt dicht neben den Zähnchen herunter.
    .remedy = Noch einmal bügeln, ohne die Zähnchen lange zu berühren.

## Einnähen

zip-lay-centred = { $bare ->
    [yes] Die Arbeit mit der Innenseite nach oben legen. Den geschlossenen Reißverschluss mit der Oberseite nach unten auf die Nahtzugaben legen, die Zähnchen auf der Heftnaht, der obere Stopper { $to-come } unter der Schnittkante. Beide Bänder feststecken.
   *[no] Die Arbeit mit der Innenseite nach oben legen. Den geschlossenen Reißverschluss mit der Oberseite nach unten auf die Nahtzugaben legen, die Zähnchen auf der Heftnaht, der obere Stopper bündig mit der Oberkante. Beide Bänder feststecken.
 }
# Nur in anderen Sätzen gesagt.
zip-below-stop = { $cut-off ->
    [yes] { $below } unter den Riegel
   *[no] { $below } unter den unteren Stopper des Reißverschlusses, der durch den Stoff zu fühlen ist
 }
zip-turn-corner = Die Nadel im Stoff lassen, den Fuß heben, die Arbeit drehen und den Fuß senken.
zip-foot-on = Den Reißverschlussfuß neben der Nadel einsetzen.
    .check = Das Handrad einmal ganz herumdrehen: Die Nadel geht frei am Fuß vorbei.
zip-foot-off = Den Reißverschlussfuß abnehmen und den gewöhnlichen Fuß einsetzen.
    .check = { zip-foot-on.check }
zip-sew-centred = Auf die rechte Seite drehen. Mit dem Reißverschlussfuß { $beside } neben der Naht bis { zip-below-stop } steppen. { zip-turn-corner } Quer steppen, noch einmal drehen und auf der anderen Seite hinauf steppen, { $stitch }.
    .check = Beide Steppnähte liegen { $beside } neben der Naht, innen ist das Band überall gefasst.
    .tolerance = 1 mm mehr oder weniger
    .remedy = Diese Steppnaht auftrennen und entlang einer Kreidelinie neu steppen.
zip-stop-at = { $bare ->
    [yes] { $to-come } unter der Schnittkante
   *[no] bündig mit der Oberkante
 }
zip-sew-beneath = Die Arbeit auf links wenden. Die Seite mit dem Übertritt auf die untere legen, rechts auf rechts wie beim Nähen der Naht, so dass der Bruch mit der rechten Stoffseite nach oben vorsteht. Den geschlossenen Reißverschluss mit der Oberseite nach oben darunterschieben, die Zähnchen dicht neben dem Bruch, den oberen Stopper { zip-stop-at }. Feststecken. Mit dem Reißverschlussfuß { $near-fold } neben dem Bruch steppen, { $from-edge }, { $stitch }: Nur der Bruch und dieses Band liegen unter der Nadel, der übrige Rock liegt jenseits des Bruchs.
    .check = Der Schieber gleitet frei am Bruch vorbei.
    .remedy = Auftrennen und den Bruch etwas weiter von den Zähnchen weg legen.
zip-sew-lap = Die Arbeit mit der rechten Seite nach oben ausbreiten, den Reißverschluss geschlossen. Das andere Band unter dem Übertritt feststecken. { $lap } neben der Naht von oben bis { zip-below-stop } steppen. { zip-turn-corner } Quer bis zur Naht steppen, { $stitch }.
    .check = Der Übertritt verdeckt die Zähnchen überall, die Steppnaht ist gerade.
    .tolerance = 1 mm mehr oder weniger
    .remedy = Diese Steppnaht auftrennen und entlang einer Kreidelinie neu steppen.
zip-unpick = Die Heftnaht der Öffnung von der rechten Seite aus auftrennen und die Fäden herausziehen.
zip-lay-invisible = { $bare ->
    [yes] Eine Hälfte des offenen Reißverschlusses mit der Oberseite nach unten auf die rechte Stoffseite ihrer Nahtzugabe legen, die Zähnchen auf der Nahtlinie, den oberen Stopper { $to-come } unter der Schnittkante. Das Band an die Nahtzugabe stecken.
   *[no] Eine Hälfte des offenen Reißverschlusses mit der Oberseite nach unten auf die rechte Stoffseite ihrer Nahtzugabe legen, die Zähnchen auf der Nahtlinie, den oberen Stopper bündig mit der Oberkante. Das Band an die Nahtzugabe stecken.
 }
zip-lay-other = Die andere Hälfte ebenso auf die andere Nahtzugabe legen und feststecken.
    .check = Der Reißverschluss ist nicht verdreht: Geschlossen liegt er innen flach.
    .remedy = Eine Hälfte abnehmen und umdrehen.
zip-sew-invisible = Mit dem Reißverschlussfuß dicht neben den Zähnchen jede Hälfte an ihre Nahtzugabe steppen, von oben bis zum Ende der Öffnung, { $from-edge }, { $stitch }; an beiden Enden verriegeln.
    .check = Geschlossen ist von rechts kein Band zu sehen; etwa { $tail } des Reißverschlusses hängen unten frei.
    .remedy = Einen Faden näher an den Zähnchen noch einmal steppen.
zip-close-foot = Den Reißverschluss schließen, sein freies Ende zur Seite halten und die Naht mit dem Reißverschlussfuß bis an die beiden Steppnähte schließen.
    .check = Am Ende der Öffnung bleibt kein Loch.
    .remedy = Von Hand drei Stiche darüber nähen.
zip-try = Den Reißverschluss dreimal öffnen und schließen.
    .check = Er läuft frei und liegt flach.
    .remedy = Wo er hakt, liegt eine Steppnaht zu nah an den Zähnchen: dort auftrennen und weiter entfernt steppen.
