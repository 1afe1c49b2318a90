### Coudre des pinces dans un bord supérieur pour qu’il se resserre à la taille.
### $intake : ce que prend une pince ; $half : sa moitié ; $long : du bord coupé à la pointe ; $leg : le long d’un côté.

darts-title = { $count ->
    [one] Coudre { $count } pince dans { EDGE($edge) }
   *[other] Coudre { $count } pinces dans { EDGE($edge) }
 }
    .number = { $cloth } → { $length }
darts-aim = { $count ->
    [one] Sur la ligne de couture : { $cloth } - { $length } = { $taken } : c’est ce que prend { $count } pince.
   *[other] Sur la ligne de couture : { $cloth } - { $length } = { $taken } : c’est ce que prennent { $count } pinces, { $intake } chacune.
 }

## Tracer

darts-mark = { $ring ->
    [yes] Sur l’envers, marquer les milieux des pinces le long { EDGE($edge, case: "of") }, tous les { $every }, { $count } en tout, le premier à { $first } de { side-seam }.
   *[no] Sur l’envers, marquer les milieux des pinces le long { EDGE($edge, case: "of") }, tous les { $every }, { $count } en tout, le premier à { $first } d’un bout.
 }
    .check = { $ring ->
        [yes] Le dernier repère est à { $first } de la couture, de l’autre côté.
       *[no] Le dernier repère est à { $first } de l’autre bout.
     }
    .tolerance = { $mark-off } de plus ou de moins
    .remedy = Répartir ce qui reste entre tous les repères.
darts-legs = De chaque repère, tracer une ligne de { $long } droit vers le bas, à angle droit avec le bord : son bout est la pointe. Sur le bord, marquer { $half } des deux côtés du milieu et tracer de là, à la règle, les deux côtés jusqu’à la pointe.
    .check = Les deux côtés mesurent { $leg }.
    .tolerance = { $mark-off } de plus ou de moins
    .remedy = La ligne du milieu penche : la remettre à angle droit avec le bord et retracer les côtés.

## Coudre

darts-fold = Plier chaque pince sur sa ligne du milieu, endroit contre endroit, un côté sur l’autre. Épingler en travers du tracé.
darts-sew = Coudre chaque pince depuis le bord le long de son tracé, { $leg }, { $stitch }, avec quelques points arrière au bord. Faire courir les trois derniers points sur le pli même.
    .check = Au bord, les points sont à { $half } du pli.
    .tolerance = { $hair-off } de plus ou de moins
    .remedy = Découdre la moitié supérieure et la recoudre sur le tracé.
darts-knot = Laisser { $tail } de fil à chaque pointe et nouer deux fois contre le tissu ; pas de points arrière à cet endroit.
darts-press = Repasser chaque pince à plat telle qu’elle est cousue, puis coucher son pli vers le milieu le plus proche, devant ou dos. Couper au ras du bord ce qui dépasse.
    .check = Sur l’endroit, aucun creux ne se voit aux pointes.
    .remedy = Recoudre les derniers { $last } en finissant plus doucement.
darts-measure = { $open ->
    [yes] Mesurer { EDGE($edge) } à la coupe, d’un bout à l’autre avec les deux marges de la couture ouverte : { $lies }.
   *[no] Mesurer { EDGE($edge) } à la coupe : { $lies }.
 }
    .check = La longueur est de { $lies }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Trop long : coudre chaque pince un rien à l’extérieur du tracé, en mourant à la pointe. Trop court : un rien à l’intérieur.
