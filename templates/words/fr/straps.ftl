### Coudre deux bretelles et les fixer à l’intérieur du bord supérieur.

straps-title = Coudre deux exemplaires { PIECE($strap, case: "of") } à { EDGE($edge) }
straps-aim = Chaque bretelle a { $wide } de large et { $long } de bord à bord.
straps-sew = Plier la bande en deux dans la longueur, endroit contre endroit. Piquer à { $seam-width } des longs bords, { $stitch }, et laisser les deux bouts ouverts.
straps-turn = Fermer une épingle à nourrice dans un bout et la pousser jusqu’à l’autre, pour retourner le tube. Le repasser à plat, la couture le long d’un bord.
    .check = La bretelle a { $wide } de large partout.
    .tolerance = { $hair-off } de plus ou de moins
    .remedy = Rouler la couture au bord entre les doigts et repasser.
straps-close = Fermer l’ouverture { EDGE($edge, case: "of") }, ou l’épingler comme elle se fermera : le tour est alors de { $round }.
straps-mark = Marquer les quarts { EDGE($edge, case: "of") }, tous les { $quarter }, à partir de { side-seam } prise comme un côté. Du milieu du devant, marquer { $half-front } des deux côtés, du milieu du dos { $half-back }.
    .check = Les repères du devant et du dos sont aussi loin du côté à gauche qu’à droite.
    .tolerance = { $close-off } de plus ou de moins
    .remedy = Mesurer à nouveau depuis le milieu.
straps-pin = Replier { $under } de chaque bout de bretelle et l’épingler à l’intérieur du bord, sur { $lap } : un bout devant, l’autre derrière, sans croiser ni vriller.
straps-try = Enfiler le vêtement et le regarder dans un miroir.
    .check = Les bretelles ne serrent ni ne glissent, et le bord est d’aplomb.
    .remedy = Monter ou descendre d’autant les deux bouts du dos, et les épingler à nouveau.
straps-fasten = Piquer chaque bout en rectangle, à { $close } de ses bords et le long du bord supérieur, { $stitch }, point d’arrêt.
    .check = Une forte traction ne déplace aucun bout.
    .remedy = Repiquer le rectangle.
