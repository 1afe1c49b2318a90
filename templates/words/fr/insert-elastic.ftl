### Passer un élastique dans une coulisse et joindre ses bouts en boucle.
### $band est la ceinture, ou la pièce dont le bord a été replié.

insert-elastic-title = Enfiler l’élastique
    .number = { $loop }
insert-elastic-aim = Une boucle de { $loop } resserre { $casing } de coulisse à la taille.

## Essayer et couper

insert-elastic-try = Avant de couper, fermer l’élastique en une boucle de { $loop } avec une épingle à nourrice. L’essayer autour de la taille, s’asseoir et inspirer.
    .check = Il tient et ne serre pas la peau. Deux doigts passent dessous.
    .remedy = L’épingler plus long ou plus court jusqu’à ce que ce soit le cas, et prendre dès lors cette longueur au lieu de { $loop }.
insert-elastic-write = Noter la longueur de boucle retenue, avec la date.
insert-elastic-cut = Couper { $cut } d’élastique, soit { $loop } plus { $lap } pour le recouvrement.
    .check = Il mesure { $cut }, posé au repos à côté du mètre ruban.
    .remedy = Trop long : couper le surplus. Trop court : en couper un neuf, ne pas étirer celui-ci.
insert-elastic-ends = Surjeter à la main les deux bouts coupés, point contre point, le fil passant chaque fois par-dessus le bord, pour qu’ils ne s’effilochent pas.
insert-elastic-line = Tracer un trait droit en travers, à { $lap } d’un bout.
    .check = Du trait à l’autre bout, il y a { $loop } au repos.
    .tolerance = { $lap-off } de plus ou de moins
    .remedy = Tracer le trait à sa place et barrer le premier.
insert-elastic-cross = Tracer une croix sur la même face, à { $cross } de l’autre bout : elle reste visible quand les bouts se superposent.
# La coulisse a plusieurs passages, un élastique dans chacun.
insert-elastic-order = Passer un élastique dans chacun des { $channels } passages, d’abord dans celui de la pliure. { $opened ->
    [seam] Chacun entre par sa propre ouverture dans la couture.
   *[row] Tous entrent par l’ouverture et par celles du dessus, et tous leurs bouts en pendent jusqu’à ce qu’ils soient cousus.
 }
    .check = Aucun passage n’en contient deux.
## Coupé long, essayé dans le vêtement et raccourci

insert-elastic-cut-long = Couper { $cut } d’élastique : { $loop }, { $lap } de chevauchement et { $spare } pour l’essayage.
    .check = Il mesure { $cut } posé sans tension le long du mètre ruban.
    .remedy = Trop court : en couper un autre, ne pas étirer celui-ci.
insert-elastic-pin-end = Laisser pendre { $tail } d’un bout hors de l’ouverture. L’y fixer { PIECE($band, case: "to") } avec une épingle à nourrice, pour qu’il ne glisse pas à l’intérieur.
insert-elastic-thread-long = Fixer une seconde épingle à nourrice ou un passe-lacet dans l’autre bout et le pousser dans la coulisse, tout autour, jusqu’à l’ouverture. Repousser le tissu sur l’élastique à mesure.
    .check = L’élastique est à plat tout autour.
    .remedy = S’il est vrillé, revenir en arrière d’une main, le retourner et continuer.
insert-elastic-thread-long-band = Fixer une seconde épingle à nourrice ou un passe-lacet dans l’autre bout et le pousser dans la coulisse, tout autour, jusqu’à l’ouverture, entre la marge de couture et l’extérieur. Repousser le tissu sur l’élastique à mesure.
    .check = { insert-elastic-thread-long.check }
    .remedy = { insert-elastic-thread-long.remedy }
insert-elastic-lap-to-try = Ôter les deux épingles, ou l’épingle et le passe-lacet, sans lâcher les bouts. Les faire chevaucher jusqu’à un anneau de { $loop } et tenir le tout par une épingle à nourrice fermée.
insert-elastic-try-on = D’abord compter les épingles et chercher celles qui seraient restées ; puis mettre le vêtement, s’asseoir avec et inspirer.
    .check = Il tient et ne serre pas. Deux doigts passent dessous.
    .remedy = Faire chevaucher moins ou plus jusqu’à ce que cela aille, et prendre cet anneau au lieu de { $loop } à partir d’ici.
insert-elastic-mark-lap = Tracer une ligne sur le bout du dessous là où finit celui du dessus, ôter le vêtement et tirer { $out } des deux bouts hors de l’ouverture. Ôter l’épingle du chevauchement.
insert-elastic-shorten = Le bout du dessous continue par-dessous : le couper à { $lap } de la ligne, du côté qui était sous le bout du dessus.
    .check = Du bout coupé à la ligne, il y a { $lap }.
    .tolerance = { $lap-off } de plus ou de moins
    .remedy = Trop long : couper le reste. Trop court : faire chevaucher d’autant moins et piquer deux fois.

# La coulisse est à plat, et une couture la ferme ensuite. $half-lap : ce que la couture prend à chaque bout.
insert-elastic-aim-flat = L’élastique resserre { $casing } de coulisse à { $loop } ; ses bouts sont pris dans la couture.
insert-elastic-cut-flat = Couper { $cut } d’élastique, soit { $loop }, et { $half-lap } à chaque bout pour la couture.
    .check = { insert-elastic-cut.check }
    .remedy = { insert-elastic-cut.remedy }
insert-elastic-mark-flat = Tracer un trait droit en travers, à { $half-lap } de chaque bout.
    .check = D’un trait à l’autre, il y a { $loop } au repos.
    .tolerance = { $lap-off } de plus ou de moins
    .remedy = Tracer le trait à sa place et barrer le premier.

## Dans la coulisse

insert-elastic-thread-flat = Épingler un bout de l’élastique au ras du bord coupé { PIECE($band, case: "of") }. Fixer une épingle à nourrice ou un passe-lacet à l’autre bout et lui faire traverser la coulisse, en repoussant le tissu sur l’élastique au fur et à mesure ; épingler ce bout lui aussi au ras du tissu.
    .check = L’élastique est à plat partout, et ses deux bouts sont au ras du tissu.
    .remedy = S’il est vrillé, revenir en arrière d’une main, le détordre et continuer.
insert-elastic-bar-flat = Piquer à chaque bout deux rangs de zigzag en travers de l’élastique, entre le trait et le bord coupé, à travers toutes les épaisseurs, avec un point d’arrêt à chaque fois. Ôter les épingles.
    .check = Tirer fort : rien ne cède. La couture passera sur les traits.
    .remedy = Repiquer les rangs.
insert-elastic-spread-flat = Répartir l’ampleur sur l’élastique avec les doigts.
    .check = Les deux moitiés de la coulisse ont la même longueur.
    .remedy = En pousser davantage vers le côté le plus court.


insert-elastic-tail = Laisser pendre { $tail } du bout au trait hors de l’ouverture. L’épingler { PIECE($band, case: "to") }, pour qu’il ne glisse pas à l’intérieur.
insert-elastic-thread = Fixer une épingle à nourrice ou un passe-lacet au bout à la croix et lui faire faire le tour de la coulisse jusqu’à l’ouverture, en repoussant le tissu sur l’élastique au fur et à mesure.
    .check = L’élastique est à plat tout autour, le trait et la croix sur la même face.
    .remedy = S’il est vrillé, revenir en arrière d’une main, le détordre et continuer.
# La coulisse est une bande rapportée, la marge de sa couture à l’intérieur.
insert-elastic-thread-band = Fixer une épingle à nourrice ou un passe-lacet au bout à la croix et lui faire faire le tour de la coulisse jusqu’à l’ouverture, entre la marge de couture et l’extérieur, en repoussant le tissu sur l’élastique au fur et à mesure.
    .check = { insert-elastic-thread.check }
    .remedy = { insert-elastic-thread.remedy }
insert-elastic-pull-out = Ôter la première épingle et tirer { $out } des deux bouts hors de l’ouverture. Ôter aussi l’autre épingle ou le passe-lacet.

## Le recouvrement

insert-elastic-lap = Poser le bout à la croix sur le bout au trait, les deux marques dessus, son bord coupé sur le trait. Tenir le recouvrement avec une épingle à nourrice fermée.
    .check = Le bord coupé est sur le trait : le recouvrement mesure alors { $lap } et la boucle { $loop } au repos.
    .tolerance = { $lap-off } de plus ou de moins
    .remedy = Ouvrir l’épingle, ramener le bout sur le trait et refermer l’épingle.
# L’élastique a été essayé dans le vêtement : la ligne marque le chevauchement.
insert-elastic-lap-long = Reposer le bout du dessus sur celui du dessous, son bord coupé sur la ligne. Tenir le chevauchement par une épingle à nourrice fermée.
    .check = Le chevauchement mesure { $lap }, et l’anneau au repos ce qui a été noté.
    .tolerance = { $lap-off } de plus ou de moins
    .remedy = Ouvrir l’épingle, glisser le bout jusqu’à la ligne et refermer l’épingle.
insert-elastic-sew = Ôter l’épingle à nourrice en tenant le recouvrement en place. Y piquer deux rangs de point zigzag, puis un le long de chacun de ses deux bouts, avec un point d’arrêt chaque fois.
    .check = Tirer fort : rien ne cède.
    .remedy = Repiquer le recouvrement encore une fois.
insert-elastic-slip-back = Laisser le recouvrement rentrer dans la coulisse.
insert-elastic-stretch = Poser la taille à plat, pli sur pli. L’étirer à la main jusqu’à { $half-over } de largeur, soit { $over } de tour, et la laisser revenir, trois fois. Ne jamais l’étirer davantage.
    .check = L’ampleur est la même tout autour.
    .remedy = La faire glisser le long de l’élastique avec les doigts.
# Quand un guide ne dit aucune mesure du corps.
insert-elastic-stretch-over = Poser la taille à plat, pli sur pli. L’étirer à la main aussi large que les hanches sur lesquelles elle passe, et la laisser revenir, trois fois. Ne jamais l’étirer davantage.
    .check = L’ampleur est la même tout autour.
    .remedy = La faire glisser le long de l’élastique avec les doigts.
