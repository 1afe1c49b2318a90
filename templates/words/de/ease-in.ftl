### Eine etwas längere Kante einhalten, so dass sie glatt auf einer kürzeren liegt.

ease-in-title = { EDGE($edge, at: "start") } einhalten
    .number = { $cloth } → { $short }
ease-in-aim = { $cloth } Stoff liegen auf { $short }, und keine Falte steht.

# Die Kante ist ein Ring: Das Falten beginnt an seiner Seitennaht.
ease-in-fold-ring = { $parts ->
    [8] { EDGE($edge, at: "start") } dreimal zur Hälfte falten, von { side-seam } aus. Die Brüche auf beiden Stoffseiten markieren: alle { $cloth-part } an der Schnittkante.
   *[4] { EDGE($edge, at: "start") } zweimal zur Hälfte falten, von { side-seam } aus. Die Brüche auf beiden Stoffseiten markieren: alle { $cloth-part } an der Schnittkante.
 }
ease-in-fold-flat = { $parts ->
    [8] { EDGE($edge, at: "start") } dreimal zur Hälfte falten, Ende auf Ende. Die Brüche auf beiden Stoffseiten markieren: alle { $cloth-part } an der Schnittkante.
   *[4] { EDGE($edge, at: "start") } zweimal zur Hälfte falten, Ende auf Ende. Die Brüche auf beiden Stoffseiten markieren: alle { $cloth-part } an der Schnittkante.
 }
ease-in-set = { rows-set-machine }
ease-in-row = Eine Reihe nähen, { $row } von der Schnittkante: { EDGE($edge) }. { rows-runs }
ease-in-pull = { $parts ->
    [8] Die Unterfäden von beiden Enden ein wenig anziehen, bis jedes Achtel an der Reihe { $short-part } misst. Den Stoff entlang der Reihe mit den Fingerspitzen ausstreichen.
   *[4] Die Unterfäden von beiden Enden ein wenig anziehen, bis jedes Viertel an der Reihe { $short-part } misst. Den Stoff entlang der Reihe mit den Fingerspitzen ausstreichen.
 }
    .check = Der Stoff wölbt sich entlang der Reihe ein wenig, und keine Falte steht.
    .remedy = Wo eine Falte steht, dort den Faden lockern und den Stoff nach beiden Seiten ausstreichen.
ease-in-measure-ring = Die eingehaltene Kante rundum an der Reihe messen: { $short }.
    .check = { ease-in-measure.check }
    .tolerance = { ease-in-measure.tolerance }
    .remedy = { ease-in-measure.remedy }
ease-in-measure-flat = Die eingehaltene Kante an der Reihe messen: { $short }.
    .check = { ease-in-measure.check }
    .tolerance = { ease-in-measure.tolerance }
    .remedy = { ease-in-measure.remedy }
# Nur als Teile der beiden oben gesagt.
ease-in-measure =
    .check = { $has-target ->
        [yes] Sie ist { $short } lang, so lang wie { EDGE($target) } auf der Nahtlinie.
       *[no] Sie ist { $short } lang.
     }
    .tolerance = { $ease }
    .remedy = Zu lang: etwas mehr anziehen. Zu kurz: den Faden lockern.
ease-in-knot = { $in-runs ->
    [yes] An beiden Enden jeder Teilstrecke die zwei Fäden miteinander verknoten. Auf { $knot } kürzen.
   *[no] An beiden Enden der Reihe die zwei Fäden miteinander verknoten. Auf { $knot } kürzen.
 }
    .check = Die Kante misst noch { $short }.
    .remedy = Ist ein Knoten gerutscht, den Faden wieder anziehen und näher am Stoff verknoten.
ease-in-set-back = { rows-set-back }
