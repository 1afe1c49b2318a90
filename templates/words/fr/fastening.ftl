### Fermer une ouverture à son bord supérieur fini par une agrafe ou des boutons-pression, là où aucune ceinture ne le fait.
### $edge est le bord supérieur ouvert ; $overlaps : ses bouts se croisent, de $overlap.

fastening-title = Fermer l’ouverture à la taille
fastening-aim = La taille se ferme à { $waist } et s’ouvre pour les hanches.

fastening-lay = { $overlaps ->
    [yes] Fermer l’ouverture, ses bouts croisés de { $overlap } et au même niveau en haut, et les tenir avec une épingle.
   *[no] Fermer l’ouverture, ses bouts côte à côte et au même niveau en haut, et les tenir avec une épingle.
 }
    .check = Fermé, { EDGE($edge) } mesure { $waist } de tour.
    .tolerance = { $waist-off } de plus ou de moins
    .remedy = Déplacer les bouts jusqu’à ce que ce soit le cas.
# Plusieurs : la première en haut, les autres en dessous.
fastening-mark = Marquer l’emplacement de { $count } attaches : la première à { $below } sous le bord supérieur, les suivantes tous les { $apart } le long de l’ouverture.
    .check = Il y a { $count } marques, sur les deux bouts.
fastening-hook = Coudre le crochet à l’intérieur du bout qui vient dessus, à { $below } sous le bord supérieur, sa pointe à { $hook-in } du bout. Coudre autour des deux trous et en travers de la pointe, sans qu’un point se voie à l’extérieur.
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
fastening-snap-on-top = Coudre la moitié plate d’un bouton-pression à l’intérieur du bout qui vient dessus, à { $below } sous le bord supérieur et à { $snap-in } du bout : quatre points dans chaque trou.
    .check = Aucun point ne se voit à l’extérieur, et elle ne bouge pas quand on tire.
    .remedy = La recoudre en ne prenant que l’épaisseur intérieure.
fastening-snap-beneath = La presser sur le bout du dessous, marquer l’endroit de son centre et y coudre l’autre moitié.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Recoudre la moitié du dessous à sa place.
# Dit seulement comme partie de ceux ci-dessus.
fastening-closed =
    .check = Fermée, la taille mesure { $waist } de tour et ses bouts sont au même niveau.
    .tolerance = { $waist-off } de plus ou de moins
