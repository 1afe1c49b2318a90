### Spitze Keile in Schlitze an einer Unterkante setzen, so dass nur der Saum weiter wird.
### $slit: von der Schnittkante nach oben; $wide: was ein Godet dem Saum hinzufügt.

godets-title = { $many ->
    [one] Ein Godet in { EDGE($edge) } einsetzen
   *[other] { $many } Godets in { EDGE($edge) } einsetzen
 }
    .number = { $wide }
godets-aim = { $many ->
    [one] Das Godet macht den Saum um { $wide } weiter.
   *[other] Jedes Godet macht den Saum um { $wide } weiter.
 }

## Die Schlitze anzeichnen, sichern und schneiden

godets-mark = { $ring ->
    [yes] { EDGE($edge, at: "start") } alle { $every } markieren, { $many } Markierungen insgesamt, die erste { $first } von { side-seam } entfernt. Von jeder eine Linie von { $slit } gerade nach oben ziehen, im rechten Winkel zur Kante.
   *[no] { EDGE($edge, at: "start") } alle { $every } markieren, { $many } Markierungen insgesamt, die erste { $first } von einem Ende entfernt. Von jeder eine Linie von { $slit } gerade nach oben ziehen, im rechten Winkel zur Kante.
 }
    .check = Alle Linien enden auf einer Höhe.
    .tolerance = { $mark-off } mehr oder weniger
    .remedy = Von der Kante aus die Linie entlang neu messen.
godets-hold = Unter das obere Ende jeder Linie links einen Flicken aus demselben Stoff legen, { $patch } im Quadrat. { $beside } neben der Linie bis zu ihrem Ende steppen, einen Stich quer und auf der anderen Seite hinunter, { $short }.
godets-cut = Jede Linie zwischen den beiden Nähten aufschneiden, bis zum letzten Faden vor der Spitze.
    .check = Die Spitze öffnet sich flach, und kein Stich ist durchgeschnitten.
    .remedy = Die Spitze noch einmal umsteppen und näher schneiden.

## Einsetzen

godets-pin = Eine Seite eines Godets auf eine Seite seines Schlitzes legen, rechts auf rechts. Am Saum liegen beide Kanten { $seam-width } tief in der Naht; zur Spitze hin rutscht der Schlitz heraus, bis nur noch seine Naht gefasst ist. Von der Spitze abwärts { pin }.
godets-sew = Von der Spitze abwärts steppen, { $seam-width } von der Kante von { PIECE($godet) } und dicht neben der Naht des Schlitzes, { $stitch }, an der Spitze ein paar Stiche zurück.
    .check = Von rechts ist keine Naht des Schlitzes zu sehen.
    .remedy = Noch einmal eine Spur weiter innen steppen, von der Spitze aus.
godets-other = Das Godet herumklappen und die andere Seite ebenso nähen, wieder von der Spitze abwärts. Die Nahtzugaben zum Rock hin bügeln und den Flicken auf { $patch-left } zurückschneiden.
    .check = An der Spitze ist keine Falte mitgefasst.
    .remedy = Auf beiden Seiten der Spitze { $unpicked } auftrennen und neu nähen.
godets-level = Die Ecken von { PIECE($godet) } hängen { $hangs } unter die Kante des Rocks. Von Naht zu Naht einen Bogen zeichnen, an beiden auf der Höhe dieser Kante, der in der Mitte die untere Kante gerade berührt, und daran entlang schneiden.
    .check = An beiden Nähten endet das Godet auf der Höhe des Rocks.
    .remedy = Abschneiden, was noch darunter hängt.
godets-measure = { EDGE($edge, at: "start") } messen: { $length }.
    .check = Sie ist { $length } lang, und jedes Godet endet auf der Höhe des Rocks.
    .tolerance = { $off } mehr oder weniger
    .remedy = Abschneiden, was unter die Kante des Rocks reicht.
