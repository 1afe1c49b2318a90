### Aufhänger aus Band an eine Kante heften.
### $loops: wie viele an einer Kante.

hang-loops-title = Aufhänger an { EDGE($edge) } heften
    .number = { $tape-each }
hang-loops-aim = { $loops ->
    [one] { $loops } Aufhänger wird in der nächsten Naht mitgefasst.
   *[other] { $loops } Aufhänger werden in der nächsten Naht mitgefasst.
 }

hang-loops-cut = { $all-loops ->
    [one] Vom Band ({ $tape }) { $tape-each } abschneiden.
   *[other] Vom Band ({ $tape }) { $all-loops } Stücke abschneiden, je { $tape-each }.
 }
hang-loops-fold = { $all-loops ->
    [one] Zu einer Schlaufe legen, ohne zu verdrehen, die Enden nebeneinander.
   *[other] Jedes Stück zu einer Schlaufe legen, ohne zu verdrehen, die Enden nebeneinander.
 }
hang-loops-lay-ring = { $loops ->
    [one] Den Aufhänger innen an { EDGE($edge) } in der hinteren Mitte anlegen, die Enden bündig mit der Schnittkante, und dort { pin }.
   *[other] Die Aufhänger innen an { EDGE($edge) } anlegen, den ersten an { side-seam }, dann alle { $apart }, die Enden bündig mit der Schnittkante, und dort { pin }.
 }
    .check = { hang-loops-hang.check }
    .tolerance = { hang-loops-hang.tolerance }
    .remedy = { hang-loops-hang.remedy }
hang-loops-lay-flat = { $loops ->
    [one] Den Aufhänger innen an { EDGE($edge) } in der Mitte anlegen, die Enden bündig mit der Schnittkante, und dort { pin }.
   *[other] Die Aufhänger innen an { EDGE($edge) } anlegen, den ersten { $half-apart } neben einem Ende, dann alle { $apart }, die Enden bündig mit der Schnittkante, und dort { pin }.
 }
    .check = { hang-loops-hang.check }
    .tolerance = { hang-loops-hang.tolerance }
    .remedy = { hang-loops-hang.remedy }
# Nur als Teil der beiden darüber gesagt.
hang-loops-hang =
    .check = { $loops ->
        [one] Der Aufhänger hängt { $hangs } herab und liegt flach.
       *[other] Jeder Aufhänger hängt { $hangs } herab und liegt flach.
     }
    .tolerance = { $hangs-off } mehr oder weniger
    .remedy = Vor dem Nähen die Enden verschieben.
hang-loops-sew = { $loops ->
    [one] Zweimal quer über die Enden steppen, { $row } neben der Kante, { $stitch }. Die Nähte bleiben innerhalb der späteren Naht.
   *[other] Bei jedem zweimal quer über die Enden steppen, { $row } neben der Kante, { $stitch }. Die Nähte bleiben innerhalb der späteren Naht.
 }
