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
# Die Öffnung kann an der Seite oder hinten liegen.
zip-choose = Festlegen, welche Seite unten liegt: an der linken Seite das Rückenteil, in der hinteren Mitte die rechte Hälfte.
# Nur in einem anderen Satz gesagt: welche Keilbahn es ist, wo sie Nummern haben.
zip-number = { $numbered ->
    [yes] { " " }(Nr. { $next })
   *[no] { "" }
 }
zip-fold-out = { $place ->
    [side] Mit der linken Stoffseite nach oben die Nahtzugabe auf der Seite des Rückens{ zip-number } über die Heftnaht zum Vorderteil hin legen. Wieder zurückfalten, so dass ihr Bruch { $near } über die Heftnaht hinaussteht, und bügeln.
    [back] Mit der linken Stoffseite nach oben die Nahtzugabe der rechten Hälfte über die Heftnaht zur linken Hälfte hin legen. Wieder zurückfalten, so dass ihr Bruch { $near } über die Heftnaht hinaussteht, und bügeln.
   *[either] Mit der linken Stoffseite nach oben die Nahtzugabe der unteren Seite über die Heftnaht zur anderen hin legen. Wieder zurückfalten, so dass ihr Bruch { $near } über die Heftnaht hinaussteht, und bügeln.
 }
    .check = Der Bruch steht entlang der ganzen Öffnung { $near } über die Heftnaht hinaus, mit der rechten Stoffseite nach oben, und läuft darunter aus.
    .remedy = Die Nahtzugabe aufklappen und neu bügeln.
zip-press-coils = Den Reißverschluss öffnen. Beide Bänder mit der Spitze des Bügeleisens von innen bügeln, so dass die Zähnchen aufrecht stehen.
    .check = Die Nadel kommt dicht neben den Zähnchen herunter.
    .remedy = Noch einmal bügeln, ohne die Zähnchen lange zu berühren.

## Einnähen

zip-lay-centred = { $bare ->
    [yes] Die Arbeit mit der Innenseite nach oben legen. Den geschlossenen Reißverschluss mit der Oberseite nach unten auf die Nahtzugaben legen, die Zähnchen auf der Heftnaht, der obere Stopper { $stop } unter der Schnittkante. Beide Bänder feststecken.
   *[no] Die Arbeit mit der Innenseite nach oben legen. Den geschlossenen Reißverschluss mit der Oberseite nach unten auf die Nahtzugaben legen, die Zähnchen auf der Heftnaht, der obere Stopper bündig mit der Oberkante. Beide Bänder feststecken.
 }
# Nur in anderen Sätzen gesagt.
zip-below-stop = { $cut-off ->
    [yes] { $below } unter den Riegel
   *[no] { $below } unter den unteren Stopper, der durch den Stoff zu fühlen ist
 }
zip-turn-corner = Die Nadel im Stoff lassen, den Fuß heben, die Arbeit drehen und den Fuß senken.
zip-foot-on = Den Reißverschlussfuß neben der Nadel einsetzen.
    .check = Das Handrad einmal ganz herumdrehen: Die Nadel geht frei am Fuß vorbei.
zip-foot-off = Den Reißverschlussfuß abnehmen und den gewöhnlichen Fuß einsetzen.
    .check = { zip-foot-on.check }
zip-sew-centred = Auf die rechte Seite drehen. Mit dem Reißverschlussfuß an der oberen Kante beginnen und { $beside } neben der Naht hinunter bis { zip-below-stop } steppen. { zip-turn-corner }
zip-sew-round = Quer steppen, ebenso noch einmal drehen und auf der anderen Seite bis zur oberen Kante hinauf steppen, { $stitch }.
    .check = Beide Steppnähte liegen { $beside } neben der Naht, innen ist das Band überall gefasst.
    .tolerance = { $hair-off } mehr oder weniger
    .remedy = Diese Steppnaht auftrennen und entlang einer Kreidelinie neu steppen.
zip-stop-at = { $bare ->
    [yes] { $stop } unter der Schnittkante
   *[no] bündig mit der Oberkante
 }
zip-fold-work = { $place ->
    [side] Die Arbeit auf links wenden. An der Naht falten, das Vorderteil auf das Rückenteil, rechts auf rechts.
    [back] Die Arbeit auf links wenden. An der Naht falten, die linke Hälfte auf die rechte, rechts auf rechts.
   *[either] Die Arbeit auf links wenden. An der Naht falten, die Seite mit dem Übertritt auf die untere, rechts auf rechts.
 }
    .check = Der Bruch der Nahtzugabe steht über die Naht hinaus, mit der rechten Stoffseite nach oben.
    .remedy = Liegt er verdeckt, die Arbeit umdrehen.
zip-lay-beneath = Den geschlossenen Reißverschluss mit der Oberseite nach oben unter den vorstehenden Bruch schieben: die Zähnchen dicht am Bruch, der obere Stopper { zip-stop-at }. Feststecken.
zip-sew-beneath = Mit dem Reißverschlussfuß an der oberen Kante beginnen und { $near-fold } neben dem Bruch bis zu seinem Ende steppen, { $from-edge }, { $stitch }. Nur der Bruch und dieses Band liegen unter der Nadel; die übrige Arbeit liegt jenseits der Naht.
    .check = Der Schieber gleitet frei am Bruch vorbei.
    .remedy = Auftrennen und den Bruch etwas weiter von den Zähnchen weg legen.
zip-lay-lap = Die Arbeit mit der rechten Seite nach oben ausbreiten, den Reißverschluss geschlossen. Das andere Band unter dem Übertritt feststecken.
zip-sew-lap = Auf dem Übertritt an der oberen Kante beginnen und { $lap } neben der Naht hinunter bis { zip-below-stop } steppen. { zip-turn-corner } Quer bis zur Naht steppen, { $stitch }.
    .check = Der Übertritt verdeckt die Zähnchen überall, die Steppnaht ist gerade.
    .tolerance = { $hair-off } mehr oder weniger
    .remedy = Diese Steppnaht auftrennen und entlang einer Kreidelinie neu steppen.
zip-unpick = Die Heftnaht der Öffnung von der rechten Seite aus auftrennen und die Fäden herausziehen.
zip-lay-invisible = { $bare ->
    [yes] Eine Hälfte des offenen Reißverschlusses mit der Oberseite nach unten auf die rechte Stoffseite ihrer Nahtzugabe legen, die Zähnchen auf der Nahtlinie, den oberen Stopper { $stop } unter der Schnittkante. Das Band an die Nahtzugabe stecken.
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
