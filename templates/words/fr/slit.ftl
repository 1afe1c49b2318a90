### Finir la partie d’une couture ouverte en bas : fente, ou fente avec sous-patte.

slit-title = Finir la fente { PIECE($pieces, case: "of") }
    .number = { $long }
slit-title-vent = Finir la fente à sous-patte { PIECE($pieces, case: "of") }
    .number = { $long }
slit-aim = La fente est longue de { $long } au-dessus de l’ourlet et ses bords sont plats.
slit-aim-vent = La fente est longue de { $long } au-dessus de l’ourlet et se croise de { $margin }.
slit-press = Rabattre au fer les deux marges le long de l’ouverture, puis le long de la couture au-dessus, { $margin } chacune.
    .check = Les deux plis prolongent la ligne de couture.
    .remedy = Repasser à nouveau le long de la règle.
slit-sew = Endroit dessus, piquer à { $beside } de l’ouverture, de l’ourlet jusqu’à son bout, pivoter sur l’aiguille, piquer en travers et redescendre de l’autre côté, { $stitch }, point d’arrêt aux deux bouts.
    .check = Les deux piqûres prennent la marge sur toute la longueur.
    .remedy = Découdre là où une marge s’est échappée et repiquer ce passage.
slit-bar = Faire une bride de { $bar } en travers du bout de l’ouverture, quatre piqûres l’une sur l’autre.
slit-press-vent = Coucher au fer les deux marges du même côté, { $margin } de large, la gauche dessus une fois portée. Le long de l’ouverture, replier la marge du dessus sur elle-même dans la ligne de couture ; celle du dessous reste dehors.
    .check = Fermés, les deux côtés se croisent de { $margin } et tombent à même hauteur.
    .tolerance = { $close-off } de plus ou de moins à l’ourlet
    .remedy = Laisser pendre le côté plus long et repasser son pli.
slit-hold-vent = Piquer la marge repliée à { $beside } de son bord, l’ouverture étalée, du bord inférieur au bout de l’ouverture, { $now }, { $stitch }.
slit-across-vent = Endroit dessus, tracer une ligne en biais en travers du bout de l’ouverture, longue de { $margin }, et piquer dessus à travers les deux marges, aller et retour.
    .check = À l’intérieur, les deux marges sont prises.
    .remedy = Piquer un second rang à côté du premier.
