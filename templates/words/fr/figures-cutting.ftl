### Les dessins de la coupe : les coupons avec leurs bandes ou leurs pièces, et les rubans adhésifs sur la table.
### $cloth : le nom que l’auteur donne au tissu. $piece : l’étiquette d’une pièce, avec sa partie si elle en a.

## Un coupon sur le tissu

figure-cutting-section = Coupon { $section }
figure-cutting-bolt = couper { $length } ({ $cloth })
figure-cutting-lane = { $lane } : { $depth }
# Sous un coupon : une bande dont les noms n’ont de place ni dessus ni à côté.
figure-cutting-lane-names = Bande de coupe { $lane }, { $depth } de haut, depuis la gauche : { $pieces }.
figure-cutting-fold = pliure
figure-cutting-selvedge = lisière
figure-cutting-between = { $width } entre les lisières
figure-cutting-over = { $length } × { $width }

## Ce que le dessin des coupons dit en mots

figure-cutting-caption = { $first ->
    [yes] Comment couper le tissu ({ $cloth }) : coupon { $from } sur { $sections }, à l’échelle. Le tissu hachuré en croix reste.
   *[no] Comment couper le tissu ({ $cloth }) : coupons { $from } à { $to } sur { $sections }, à l’échelle. Le tissu hachuré en croix reste.
 }
# Chaque coupon a une autre échelle.
figure-cutting-caption-scales = { $first ->
    [yes] Comment couper le tissu ({ $cloth }) : coupon { $from } sur { $sections }, chaque coupon à sa propre échelle. Le tissu hachuré en croix reste.
   *[no] Comment couper le tissu ({ $cloth }) : coupons { $from } à { $to } sur { $sections }, chaque coupon à sa propre échelle. Le tissu hachuré en croix reste.
 }
figure-cutting-opened = Le tissu plié est dessiné ouvert, l’épaisseur du dessous en dessous de la pliure.
figure-cutting-panels = Les pièces sont comme sur la table, un côté qui avait une lisière devant soi ; leurs bouts se mesurent depuis la gauche, leurs côtés depuis ce côté proche.
figure-cutting-unproven = C’est le meilleur plan trouvé dans le calcul alloué ; un autre pourrait coûter { $gap } de moins au plus.
# $rows : ses bandes de coupe ou ses pièces.
figure-cutting-alt = Coupon { $section }, { $length } de tissu ({ $cloth }) : { $rows }.
# Dit seulement dans le message ci-dessus.
figure-cutting-alt-panel = { $piece } est de { $near-end } à { $far-end } du bout coupé et de { $near-side } à { $far-side } du côté proche
figure-cutting-alt-lane = { $layer ->
    [flat] la bande de coupe { $lane }, { $depth } de haut, contient { $pieces }
    [fold] la bande de coupe { $lane } sur la pliure, { $depth } de haut, contient { $pieces }
    [upper] la bande de coupe { $lane } dans l’épaisseur du dessus, { $depth } de haut, contient { $pieces }
   *[under] la bande de coupe { $lane } dans l’épaisseur du dessous, { $depth } de haut, contient { $pieces }
 }
figure-cutting-alt-piece = { $piece } { $length }
figure-cutting-alt-nothing = rien

## Rubans adhésifs sur la table

figure-tapes-sections = { $count ->
    [one] Coupon { $sections }
   *[other] Coupons { $sections }
 }
figure-tapes-from-edge = rubans mesurés depuis le bord proche de la table
figure-tapes-from-end = rubans mesurés depuis le bout gauche de la table
figure-tapes-lanes = { COUNT($lanes) ->
    [one] bande { $lanes }
   *[other] bandes { $lanes }
 }
figure-tapes-lanes-deep = { COUNT($lanes) ->
    [one] bande { $lanes }, { $depth } de haut
   *[other] bandes { $lanes }, { $depth } de haut
 }
# D’une bande sur la pliure, la moitié de la hauteur est dans chaque épaisseur.
figure-tapes-half = { $depth } la moitié
figure-tapes-level = bord proche de la table, long bord du tissu au ras
figure-tapes-level-folded = bord proche de la table, pliure au ras
figure-tapes-level-turned = bord proche de la table, bout coupé au ras
figure-tapes-level-end = bout gauche de la table, bout coupé au ras
figure-tapes-number = { $number } :
figure-tapes-caption = Rubans adhésifs sur la table pour le tissu ({ $cloth }), leurs distances à l’échelle. Couper le long du trait épais de chaque ruban, son côté éloigné.
figure-tapes-alt-edge = { $count ->
    [one] Coupon { $sections } : rubans à { $tapes } du bord proche de la table.
   *[other] Coupons { $sections } : rubans à { $tapes } du bord proche de la table.
 }
figure-tapes-alt-end = { $count ->
    [one] Coupon { $sections } : rubans à { $tapes } du bout gauche de la table.
   *[other] Coupons { $sections } : rubans à { $tapes } du bout gauche de la table.
 }
# Dit seulement dans les deux ci-dessus.
figure-tapes-alt-tape = { COUNT($lanes) ->
    [one] { $distance } (bande { $lanes })
   *[other] { $distance } (bandes { $lanes })
 }
