### Passer un élastique dans une coulisse et joindre ses bouts en boucle.
### $band est la ceinture, ou la pièce dont le bord a été replié.

insert-elastic-title = Enfiler l’élastique
insert-elastic-aim = Une boucle de { $loop } resserre { $casing } de coulisse à la taille.

## Essayer et couper

insert-elastic-try = Avant de couper, fermer l’élastique en une boucle de { $loop } avec une épingle à nourrice. L’essayer autour de la taille, s’asseoir et inspirer.
    .check = Il tient et ne serre pas la peau. Deux doigts passent dessous.
    .remedy = L’épingler plus long ou plus court jusqu’à ce que ce soit le cas, et prendre dès lors cette longueur au lieu de { $loop }.
insert-elastic-write = Noter la longueur de boucle retenue, avec la date.
insert-elastic-cut = Couper { $cut } d’élastique : soit { $loop } et { $lap } pour le recouvrement.
    .check = Il mesure { $cut }, posé au repos à côté du mètre ruban.
    .remedy = Trop long : couper le surplus. Trop court : en couper un neuf, ne pas étirer celui-ci.
insert-elastic-ends = Surjeter à la main les deux bouts coupés pour qu’ils ne s’effilochent pas, ou y mettre un peu de colle textile et laisser sécher.
insert-elastic-line = Tracer un trait droit en travers, à { $lap } d’un bout.
    .check = Du trait à l’autre bout, il y a { $loop } au repos.
    .tolerance = { $lap-off } de plus ou de moins
    .remedy = Tracer le trait à sa place et barrer le premier.
insert-elastic-cross = Tracer une croix sur la même face, à { $cross } de l’autre bout : elle reste visible quand les bouts se superposent.

## Dans la coulisse

insert-elastic-tail = Laisser pendre { $tail } du bout au trait hors de l’ouverture. L’épingler { PIECE($band, case: "to") }, pour qu’il ne glisse pas à l’intérieur.
insert-elastic-thread = Fixer une épingle à nourrice ou un passe-lacet au bout à la croix et lui faire faire le tour de la coulisse jusqu’à l’ouverture, en repoussant le tissu sur l’élastique au fur et à mesure.
    .check = L’élastique est à plat tout autour, le trait et la croix sur la même face.
    .remedy = S’il est vrillé, revenir en arrière d’une main, le détordre et continuer.
# La coulisse est une bande rapportée, la marge de sa couture à l’intérieur.
insert-elastic-thread-band = Fixer une épingle à nourrice ou un passe-lacet au bout à la croix et lui faire faire le tour de la coulisse jusqu’à l’ouverture, entre la marge de couture et l’extérieur, en repoussant le tissu sur l’élastique au fur et à mesure.
    .check = { insert-elastic-thread.check }
    .remedy = { insert-elastic-thread.remedy }
insert-elastic-pull-out = Ôter la première épingle et tirer { $out } des deux bouts hors de l’ouverture.

## Le recouvrement

insert-elastic-lap = Poser le bout à la croix sur le bout au trait, les deux marques dessus, son bord coupé sur le trait. Tenir le recouvrement avec une épingle à nourrice fermée.
    .check = Le bord coupé est sur le trait : le recouvrement mesure alors { $lap } et la boucle { $loop } au repos.
    .tolerance = { $lap-off } de plus ou de moins
    .remedy = Ouvrir l’épingle, ramener le bout sur le trait et refermer l’épingle.
insert-elastic-sew = Ôter l’épingle à nourrice en tenant le recouvrement en place. Y piquer deux rangs de point zigzag, puis un le long de chacun de ses deux bouts, avec un point d’arrêt chaque fois.
    .check = Tirer fort : rien ne cède.
    .remedy = Repiquer le recouvrement encore une fois.
insert-elastic-slip-back = Laisser le recouvrement rentrer dans la coulisse.
insert-elastic-stretch = Poser la taille à plat, pli sur pli. L’étirer à la main jusqu’à { $half-over } de largeur, soit { $over } de tour, et la laisser revenir, trois fois. Ne jamais l’étirer davantage.
    .check = L’ampleur est la même tout autour.
    .remedy = La faire glisser le long de l’élastique avec les doigts.
