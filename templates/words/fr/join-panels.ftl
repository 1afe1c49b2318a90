### Coudre les exemplaires d’une pièce côte à côte en une longueur à plat.

join-panels-title = Assembler les lés { PIECE($piece, case: "of") }
    .number = { $seam-width }
join-panels-aim = { $panels } lés deviennent une longueur à plat ; ses deux côtés extérieurs restent ouverts.
join-panels-lay = Poser chaque lé sur le suivant, { faces-together } et haut sur haut, mais pas le dernier sur le premier. { pin-start } le long des côtés, { $length } chacun.
    .check = Tous les bords du haut sont au même bout, et deux côtés restent : ceux de l’extérieur.
    .remedy = Retirer celui qui est à l’envers et le retourner.
join-panels-sew = Coudre { $length }, à { $seam-width } du bord, { $stitch }, avec quelques points arrière aux deux bouts. Coucher à l’ongle les deux marges du même côté, dans le même sens à chaque couture.
join-panels-measure = Poser { PIECE($piece) } à plat et mesurer le bord inférieur d’un côté à l’autre : { $whole }.
    .check = Il mesure { $whole }, les deux côtés extérieurs encore sans ourlet.
    .tolerance = { $off } de plus ou de moins
    .remedy = Trop long : recoudre une couture un peu plus large ; trop court : en découdre une et la coudre plus étroite.
