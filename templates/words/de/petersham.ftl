### Einen Taillenrand mit Ripsband abschließen, das nach innen gewendet wird.

petersham-title = { EDGE($edge, at: "start") } mit Band ({ $ribbon }) abschließen
petersham-aim = Das Band liegt innen und hält die Taille auf { $length }.
petersham-cut = Vom Band ({ $ribbon }) { $cut } abschneiden.
petersham-lay = Das Band auf die rechte Stoffseite legen, auf { EDGE($edge) }, seine untere Kante { $lap } innerhalb der Schnittkante, so dass es darüber hinaussteht.
petersham-ends-ring = Am Anfang { $end } einschlagen, in der hinteren Mitte das Ende auf den Anfang legen und feststecken.
    .check = { petersham-held.check }
    .tolerance = { petersham-held.tolerance }
    .remedy = { petersham-held.remedy }
petersham-ends-flat = An beiden Enden { $end } einschlagen, bündig mit den Enden der Kante, und feststecken.
    .check = { petersham-held.check }
    .tolerance = { petersham-held.tolerance }
    .remedy = { petersham-held.remedy }
# Nur als Teile der beiden darüber gesagt.
petersham-held =
    .check = Das Band ist auf der Kante { $length } lang.
    .tolerance = { $off } mehr oder weniger
    .remedy = { $gathered ->
        [yes] Die Kräuselung enger zusammenziehen oder lockern.
       *[no] Den Unterschied zwischen den Nähten verteilen.
     }
petersham-sew = { $close } innerhalb der unteren Bandkante steppen, { $length }, { $stitch }; an beiden Enden verriegeln.
    .check = Die Nahtzugabe ist überall unter dem Band gefasst.
    .remedy = Wo sie herausgerutscht ist, auftrennen und diese Strecke neu steppen.
petersham-turn = Das Band nach innen wenden und die Taille auf der Steppnaht bügeln, den Stoff eine Spur nach innen gerollt.
    .check = Das Band ist von außen nicht zu sehen.
    .remedy = Die Kante mit den Fingern nach innen rollen und neu bügeln.
petersham-catch = Die Enden des Bandes von Hand festnähen und seine freie Kante an jede Nahtzugabe heften, die sie kreuzt.
