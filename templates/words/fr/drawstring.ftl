### Passer un cordon dans une coulisse ; ses bouts sortent de l’ouverture et se nouent.
### $band est la ceinture, ou la pièce dont le bord a été replié ; $cord le cordon.

drawstring-title = Enfiler le cordon
    .number = { $cut }
drawstring-aim = Un cordon resserre { $casing } de coulisse ; il se noue devant.
# La coulisse est à plat : le cordon entre par un bout et sort par l’autre.
drawstring-aim-flat = Un cordon passe dans { $casing } de coulisse et se noue autour de la taille.

## L’ouverture et le cordon

drawstring-bars = Piquer une petite bride d’arrêt au point zigzag aux deux bouts de l’ouverture de { $gap }.
    .check = L’ouverture ne peut pas se déchirer davantage.
    .remedy = Repiquer la bride d’arrêt.
# $finish : ce qu’un nœud ou un repli prend à chaque bout.
drawstring-cut = Couper le cordon ({ $cord }) à { $cut } : { $casing } pour la coulisse, et deux fois { $ends } pour un bout et { $finish } pour le finir.
    .check = Il mesure { $cut }, posé sans tension à côté du mètre ruban.
drawstring-wrap = Entourer ses deux bouts d’un peu de ruban adhésif en papier, pour qu’ils ne s’effilochent pas en route.

## Dans la coulisse

drawstring-thread = Fixer une épingle à nourrice ou un passe-lacet à un bout et lui faire faire tout le tour de la coulisse jusqu’à l’ouverture.
    .check = Le cordon n’est pas vrillé.
    .remedy = S’il l’est, revenir en arrière d’une main, le détordre et continuer.
drawstring-thread-flat = Fixer une épingle à nourrice ou un passe-lacet à un bout et lui faire traverser la coulisse, d’un bout à l’autre.
    .check = { drawstring-thread.check }
    .remedy = { drawstring-thread.remedy }
# Les bouts sortent de trous travaillés devant.
drawstring-thread-holes = Fixer une épingle à nourrice ou un passe-lacet à un bout, l’entrer par { cord-hole }, lui faire faire tout le tour de la coulisse et le sortir par l’autre trou.
    .check = { drawstring-thread.check }
    .remedy = { drawstring-thread.remedy }
drawstring-even = Poser { PIECE($band) } à plat et égaliser les bouts.
    .check = { $out } pendent de chaque côté.
    .tolerance = { $ends-off } de plus ou de moins
    .remedy = Faire glisser le cordon vers le côté le plus court.
drawstring-bar-behind = Coudre le cordon ({ $cord }) { PIECE($band, case: "to") } au milieu du dos, à mi-tour de l’ouverture, par une petite bride d’arrêt à travers toutes les épaisseurs.
    .check = Il ne peut pas être retiré.
    .remedy = Repiquer la bride d’arrêt.

drawstring-bar-flat = Coudre le cordon ({ $cord }) { PIECE($band, case: "to") } au milieu de la coulisse, par une petite bride d’arrêt au point zigzag à travers toutes les épaisseurs.
    .check = { drawstring-bar-behind.check }
    .remedy = { drawstring-bar-behind.remedy }
drawstring-bar-behind-holes = Coudre le cordon ({ $cord }) { PIECE($band, case: "to") } au milieu du dos, à mi-tour des { cord-holes }, par une petite bride d’arrêt à travers toutes les épaisseurs.
    .check = { drawstring-bar-behind.check }
    .remedy = { drawstring-bar-behind.remedy }

## Les bouts

# Une grande personne le porte.
drawstring-knot = Ôter le ruban adhésif et faire un nœud serré à chaque bout. Couper ce qui dépasse du nœud de plus de { $beyond }, et mettre un peu de colle textile sur la coupe.
    .check = { drawstring-hang.check }
    .tolerance = { drawstring-hang.tolerance }
    .remedy = Défaire le nœud et le refaire plus près du bout ou plus loin.
# Un enfant le porte : un nœud ou une perle au bout s’accroche.
drawstring-fold = Ôter le ruban adhésif, mettre un peu de colle textile sur les deux coupes et laisser sécher. Replier chaque bout deux fois, de { $half-finish } à chaque fois, et le coudre à plat à la main. Ne pas faire de nœud : il s’accroche.
    .check = { drawstring-hang.check }
    .tolerance = { drawstring-hang.tolerance }
    .remedy = Découdre le repli. Couper ce qui est trop long et replier à nouveau.
# Dit seulement comme partie des deux ci-dessus. $waist-known : on sait combien les bouts pendent une fois la taille resserrée.
drawstring-hang =
    .check = { $waist-known ->
        [yes] { $ends } pendent de chaque côté. La taille une fois resserrée, { $drawn } pendent de chaque côté.
       *[no] { $ends } pendent de chaque côté.
     }
    .tolerance = { $ends-off } de plus ou de moins
