### Fermer une ouverture à son bord supérieur fini par une agrafe ou des boutons-pression, là où aucune ceinture ne le fait.
### $edge est le bord supérieur ouvert ; $overlaps : ses bouts se croisent, de $overlap.

fastening-title = Fermer l’ouverture à la taille
fastening-aim = La taille se ferme à { $waist } et s’ouvre pour les hanches.
# Une ceinture ferme le haut : ceci ferme le reste de l’ouverture en dessous.
fastening-title-under = Fermer l’ouverture sous la ceinture
fastening-aim-under = L’ouverture ne bâille pas sous la ceinture.

fastening-lay = { $overlaps ->
    [yes] Fermer l’ouverture, ses bouts croisés de { $overlap } et au même niveau en haut, et les tenir avec une épingle.
   *[no] Fermer l’ouverture, ses bouts côte à côte et au même niveau en haut, et les tenir avec une épingle.
 }
    .check = Fermé, { EDGE($edge) } mesure { $waist } de tour.
    .tolerance = { $off } de plus ou de moins
    .remedy = Déplacer les bouts jusqu’à ce que ce soit le cas.
# Dits seulement dans d’autres messages. $marked : chaque place a une marque.
fastening-at = { $marked ->
    [yes] à chaque marque
   *[no] à { $below } sous le bord supérieur
 }
fastening-lay-under = { $overlaps ->
    [yes] Fermer la ceinture. Croiser de { $overlap } les bords de l’ouverture en dessous et les tenir avec des épingles.
   *[no] Fermer la ceinture. Poser côte à côte les bords de l’ouverture en dessous et les tenir avec des épingles.
 }
    .check = L’ouverture est plate, et ses bords finissent au même niveau.
    .tolerance = { $off } de plus ou de moins
    .remedy = Monter ou descendre un bord jusqu’à ce que ce soit le cas.
# Plusieurs : la première en haut, les autres en dessous.
fastening-mark = Marquer l’emplacement de { $count } attaches : la première à { $below } sous le bord supérieur, les suivantes tous les { $apart } le long de l’ouverture.
    .check = Il y a { $count } marques, sur les deux bouts.
fastening-mark-under = { $count ->
    [one] Marquer l’emplacement de l’attache, à { $apart } sous la ceinture.
   *[other] Marquer l’emplacement de { $count } attaches : la première à { $apart } sous la ceinture, les suivantes tous les { $apart } le long de l’ouverture.
 }
    .check = Il y a une marque pour chacune sur les deux bords.
fastening-hook = Coudre le crochet à l’intérieur du bout qui vient dessus, { fastening-at }, sa pointe à { $hook-in } du bout. Coudre autour des deux trous et en travers de la pointe, sans qu’un point se voie à l’extérieur.
    .check = Il ne bouge pas quand on tire.
    .remedy = Coudre encore une fois tout autour.
fastening-bar = Coudre la barrette à l’extérieur du bout du dessous, à { $bar-in } de son bord, là où le crochet la rencontre.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Recoudre la barrette à sa place.
fastening-eye = Coudre l’œillet à l’intérieur de l’autre bout, là où le crochet le rencontre, de sorte qu’il dépasse à peine.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Recoudre l’œillet à sa place.
fastening-snap-on-top = Coudre la moitié plate d’un bouton-pression à l’intérieur du bout qui vient dessus, { fastening-at } et à { $snap-in } du bout : quatre points dans chaque trou.
    .check = Aucun point ne se voit à l’extérieur, et elle ne bouge pas quand on tire.
    .remedy = La recoudre en ne prenant que l’épaisseur intérieure.
fastening-snap-beneath = La presser sur le bout du dessous, marquer l’endroit de son centre et y coudre l’autre moitié.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Recoudre la moitié du dessous à sa place.
# Dit seulement comme partie de ceux ci-dessus.
fastening-closed =
    .check = { $under ->
        [yes] Fermée, l’ouverture est plate et ses bords finissent au même niveau.
       *[no] Fermée, la taille mesure { $waist } de tour et ses bouts sont au même niveau.
     }
    .tolerance = { $off } de plus ou de moins

## Boutons

fastening-buttonhole = Marquer une boutonnière de { $buttonhole } dans le bout qui vient dessus, { fastening-at } : perpendiculaire au bord, à partir de { $half } de celui-ci. Là où il n’y a qu’une épaisseur, épingler derrière un carré de tissu ferme de { $patch } de côté. La faire comme la machine fait les boutonnières, mais d’abord une sur une chute de même épaisseur.
    .check = Le bouton passe dans celle de la chute et n’en sort pas de lui-même.
    .remedy = La faire un peu plus longue ou plus courte, et essayer encore.
fastening-cut = Ouvrir la boutonnière au découseur, une épingle en travers à chacun de ses bouts.
fastening-button = Refermer l’ouverture. Piquer une épingle dans la boutonnière, à { $beyond } de son bout extérieur, et marquer là le bout du dessous, à { $button-in } de son bord. Coudre le bouton sur la marque, avec une courte tige de fil dessous.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Recoudre le bouton à sa place.
fastening-loop = Au bord du bout qui vient dessus, { fastening-at }, passer quatre fois un fil solide en aller et retour sur { $button }, assez lâche pour que le bouton passe tout juste. Le recouvrir d’un bout à l’autre de points de boutonnière serrés.
    .check = Le bouton passe et ne sort pas de lui-même.
    .remedy = La refaire, plus serrée ou plus lâche.
fastening-loop-button = Fermer l’ouverture, tendre la bride et marquer l’autre bout au milieu de la bride. Coudre le bouton sur la marque, avec une courte tige de fil dessous.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Recoudre le bouton à sa place.
