### Eine Kante zu einem Tunnel für Gummiband oder Kordel umlegen und feststeppen, mit einer Öffnung.
### $edge ist die Kante, die umgelegt wird; $seam ihre Seitennaht.

folded-casing-title = Den Tunnel umlegen und steppen
    .number = { $depth }
folded-casing-aim = { $flat ->
    [yes] { $holds ->
        [cord] Der Tunnel für die Kordel ist an beiden Enden offen.
       *[elastic] Der Tunnel für das Gummiband ist an beiden Enden offen.
     }
   *[no] { $holds ->
        [cord] Der Tunnel für die Kordel ist an der Öffnung offen.
       *[elastic] Der Tunnel für das Gummiband ist an der Öffnung offen.
     }
 }
folded-casing-aim-holes = Der Tunnel für die Kordel hat zwei Öffnungen: { cord-holes }.

folded-casing-turn-under = { EDGE($edge, at: "start") } { $flat ->
    [yes] von einem Ende zum anderen
   *[no] rundum
 } { $under } nach innen umbügeln.
folded-casing-fold = Noch einmal { $depth } umlegen, bügeln und { pin }.
    .check = { folded-casing-folded.check }
    .tolerance = { folded-casing-folded.tolerance }
    .remedy = { folded-casing-folded.remedy }
# Die Kante braucht keinen ersten Einschlag: Sie ist versäubert, oder ihr Stoff franst nicht aus.
folded-casing-fold-once = { EDGE($edge, at: "start") } { $flat ->
    [yes] von einem Ende zum anderen
   *[no] rundum
 } { $depth } nach innen umlegen, bügeln und { pin }.
    .check = { folded-casing-folded.check }
    .tolerance = { folded-casing-folded.tolerance }
    .remedy = { folded-casing-folded.remedy }
# Nur als Teil der beiden darüber gesagt.
folded-casing-folded =
    .check = Der Tunnel ist überall { $depth } hoch.
    .tolerance = nie weniger, bis { $more } mehr
    .remedy = { $holds ->
        [cord] Wo er abweicht, aufklappen und neu bügeln.
       *[elastic] Wo er abweicht, aufklappen und neu bügeln: In einem ungleichen Tunnel verdreht sich das Gummiband.
     }
folded-casing-gap = Eine Öffnung von { $gap } markieren: von { $beside } bis { $gap-end } rechts von { side-seam }, auf die Innenseite gesehen. An jedem Ende einen Strich machen.
folded-casing-gap-front = Eine Öffnung von { $gap } in der vorderen Mitte markieren, { $quarter } von { side-seam }, nach jeder Seite die Hälfte. An jedem Ende einen Strich machen.
folded-casing-label = Ein Ende des Etiketts neben { side-seam }, abseits der Öffnung, unter den unteren Bruch schieben, die Schrift sichtbar, und { pin }.
folded-casing-label-flat = Ein Ende des Etiketts nahe einem Ende des Tunnels unter den unteren Bruch schieben, die Schrift sichtbar, und { pin }.
# Die Kante ist flach: Es gibt keine Öffnung, der Tunnel ist an seinen beiden Enden offen.
folded-casing-sew-flat = Innenseite oben: { $edge-stitch } über dem unteren Bruch von einem Ende zum anderen steppen, { $stitched }, { $stitch }. An beiden Enden verriegeln.
    .check = Der Tunnel ist an beiden Enden offen und innen { $channel } breit.
    .remedy = Auftrennen, was ein Ende schließt.
folded-casing-sew = Innenseite oben: { $edge-stitch } über dem unteren Bruch steppen, von einem Strich der Öffnung rundum bis zum anderen, { $stitched }, { $stitch }. An beiden Enden verriegeln.
    .check = Die Öffnung ist offen, der Tunnel ist innen { $channel } breit.
    .remedy = Auftrennen, was die Öffnung schließt.
# Die Öffnung wird danach in der Seitennaht aufgetrennt.
folded-casing-sew-round = Innenseite oben: rundum { $edge-stitch } über dem unteren Bruch steppen, { $stitched }, { $stitch }; das Ende drei Stiche über den Anfang nähen.
    .check = Der Bruch ist rundum gefasst, der Tunnel ist innen { $channel } breit.
    .remedy = Wo die Naht vom Bruch abgekommen ist, sie auftrennen und dort neu steppen.
