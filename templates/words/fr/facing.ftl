### Finir un bord par une bande tournée vers l’intérieur.
### $edge : le bord fini ; $facing : la bande.

facing-title = Parementer { EDGE($edge) }
    .number = { $seam-width }
facing-aim = Le bord est net et sa marge est à l’intérieur.

## Monter

facing-ends = Replier chaque bout { PIECE($facing, case: "of") } de { $ends } sur l’envers et marquer la pliure au fer.
    .check = Repliée, la bande est aussi longue que { EDGE($edge) }.
    .remedy = Ouvrir les plis au fer et les refaire.
facing-lay-ring = Poser { PIECE($facing) } sur { EDGE($edge) }, endroit contre endroit, couture sur couture, et { pin }.
facing-lay-flat = Poser { PIECE($facing) } sur { EDGE($edge) }, endroit contre endroit, bout sur bout, et { pin }.
facing-sew-ring = Piquer à { $seam-width } du bord, { $length } tout autour, { $stitch }. Finir en repiquant trois points sur le début.
facing-sew-flat = Piquer à { $seam-width } du bord, { $length }, { $stitch }, point d’arrêt aux deux bouts.
# Une marge courbe ne se couche pas à plat une fois retournée.
facing-clip = Le bord est courbe : cranter les deux marges tous les { $clips }, jusqu’à { $clip-short } de la piqûre.
    .check = Les marges se couchent à plat, et aucun point n’est coupé.
    .remedy = Là où un point est coupé, repiquer ce passage un peu plus à l’intérieur.
# La piqûre tient la marge à la bande, pour que la bande ne roule pas vers l’extérieur.
facing-understitch-ring = Coucher les deux marges vers { PIECE($facing) }. Son endroit dessus, sous-piquer { PIECE($facing, form: "short") } à { $understitch } de la couture, à travers les deux marges, { $length } tout autour.
    .check = Les deux marges sont prises sur toute la longueur et la piqûre n’atteint pas le tissu extérieur.
    .remedy = Découdre là où le tissu extérieur est pris et repiquer ce passage.
facing-understitch-flat = Coucher les deux marges vers { PIECE($facing) }. Son endroit dessus, sous-piquer { PIECE($facing, form: "short") } à { $understitch } de la couture, à travers les deux marges, { $length }, point d’arrêt aux deux bouts.
    .check = { facing-understitch-ring.check }
    .remedy = { facing-understitch-ring.remedy }

## Tourner vers l’intérieur

facing-turn = Tourner { PIECE($facing) } vers l’intérieur et repasser le bord de l’intérieur, la couture un cheveu en retrait.
    .check = La parementure ne se voit pas de l’extérieur.
    .remedy = Rouler la couture vers l’intérieur entre les doigts et repasser à nouveau.
facing-catch-ring = À la main, fixer le bord libre { PIECE($facing, case: "of") } par quelques points invisibles à chaque marge de couture qu’il croise.
facing-catch-flat = À la main, fixer le bord libre { PIECE($facing, case: "of") } par quelques points invisibles aux deux bouts et à chaque marge de couture qu’il croise.
