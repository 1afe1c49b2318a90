### Ein Band durch die Borte an einer Kante ziehen.

ribbon-threading-title = Band durch die Borte von { PIECE($edge) } ziehen
ribbon-threading-aim = Das Band liegt in der Borte.

ribbon-threading-cut = Vom Band ({ $ribbon }) { $ribbon-length } abschneiden.
ribbon-threading-seal = Beide Enden vor dem Ausfransen schützen: mit Textilkleber betupfen und trocknen lassen, oder einschlagen und festnähen.
# Die Enden werden übereinandergenäht.
ribbon-threading-thread = In eine stumpfe Nadel oder Durchziehnadel fädeln und entlang { EDGE($edge, case: "dative") } abwechselnd über und unter durch die Löcher ziehen; an { side-seam } beginnen.
    .check = Das Band ist nicht verdreht, kein Loch ist ausgelassen.
    .remedy = Bis zu der Stelle zurückziehen und von dort weitermachen.
ribbon-threading-thread-bow = In eine stumpfe Nadel oder Durchziehnadel fädeln und entlang { EDGE($edge, case: "dative") } abwechselnd über und unter durch die Löcher ziehen; in der vorderen Mitte beginnen.
    .check = { ribbon-threading-thread.check }
    .remedy = { ribbon-threading-thread.remedy }
ribbon-threading-sew = Die Enden hinter der Borte { $overlap } übereinanderlegen und von Hand zusammennähen.
    .check = Die Borte liegt flach und wird nicht zusammengezogen.
    .remedy = Die Enden auftrennen und das Band lockern.
ribbon-threading-bow = Die Enden gleich lang ziehen und eine Schleife binden; vor dem Binden hängen an jedem Ende { $ends } heraus.
    .check = { ribbon-threading-sew.check }
    .remedy = Vor dem Binden das Band lockern.
