### Replier un bord en coulisse pour un élastique ou un cordon et le piquer, en laissant une ouverture.
### $edge est le bord replié ; $seam sa couture de côté.

folded-casing-title = Replier et piquer la coulisse
    .number = { $depth }
folded-casing-aim = { $flat ->
    [yes] { $holds ->
        [cord] La coulisse du cordon est ouverte aux deux bouts.
       *[elastic] La coulisse de l’élastique est ouverte aux deux bouts.
     }
   *[no] { $holds ->
        [cord] La coulisse du cordon est accessible par l’ouverture.
       *[elastic] La coulisse de l’élastique est accessible par l’ouverture.
     }
 }
folded-casing-aim-holes = La coulisse du cordon s’ouvre par ses deux { cord-holes }.

folded-casing-turn-under = Replier { $flat ->
    [yes] d’un bout à l’autre
   *[no] sur tout le tour
 } { EDGE($edge) } de { $under } vers l’intérieur et marquer la pliure au fer.
folded-casing-fold = Le replier encore de { $depth }, repasser, et { pin }.
    .check = { folded-casing-folded.check }
    .tolerance = { folded-casing-folded.tolerance }
    .remedy = { folded-casing-folded.remedy }
# Le bord n’a pas besoin d’un premier rentré : il est net, ou son tissu ne s’effiloche pas.
folded-casing-fold-once = Replier { $flat ->
    [yes] d’un bout à l’autre
   *[no] sur tout le tour
 } { EDGE($edge) } de { $depth } vers l’intérieur, repasser, et { pin }.
    .check = { folded-casing-folded.check }
    .tolerance = { folded-casing-folded.tolerance }
    .remedy = { folded-casing-folded.remedy }
# Dit seulement comme partie des deux ci-dessus.
folded-casing-folded =
    .check = La coulisse a partout { $depth } de hauteur.
    .tolerance = jamais moins, jusqu’à { $more } de plus
    .remedy = { $holds ->
        [cord] Déplier et repasser à nouveau là où elle dévie.
       *[elastic] Déplier et repasser à nouveau là où elle dévie : l’élastique vrille dans une coulisse inégale.
     }
folded-casing-gap = Marquer une ouverture de { $gap } : de { $beside } à { $gap-end } à droite de { side-seam }, vue de l’intérieur. Tracer un trait à chaque bout.
folded-casing-gap-front = Marquer une ouverture de { $gap } au milieu du devant, à { $quarter } de { side-seam }, une moitié de chaque côté. Tracer un trait à chaque bout.
folded-casing-label = Glisser un bout de l’étiquette sous le repli inférieur à côté de { side-seam }, loin de l’ouverture, le texte visible, et l’y { pin }.
folded-casing-label-flat = Glisser un bout de l’étiquette sous le repli inférieur près d’un bout de la coulisse, le texte visible, et l’y { pin }.
# Le bord est à plat : il n’y a pas d’ouverture, la coulisse est ouverte à ses deux bouts.
folded-casing-sew-flat = Intérieur dessus, piquer à { $edge-stitch } au-dessus du repli inférieur, d’un bout à l’autre, { $stitched }, { $stitch }. Faire un point d’arrêt aux deux bouts.
    .check = La coulisse est ouverte aux deux bouts et a { $channel } de largeur à l’intérieur.
    .remedy = Découdre ce qui ferme un bout.
folded-casing-sew = Intérieur dessus, piquer à { $edge-stitch } au-dessus du repli inférieur, d’un trait de l’ouverture à l’autre en faisant le tour, { $stitched }, { $stitch }. Faire un point d’arrêt aux deux bouts.
    .check = L’ouverture est libre et la coulisse a { $channel } de largeur à l’intérieur.
    .remedy = Découdre ce qui ferme l’ouverture.
# L’ouverture est décousue ensuite dans la couture de côté.
folded-casing-sew-round = Intérieur dessus, piquer à { $edge-stitch } au-dessus du repli inférieur sur tout le tour, { $stitched }, { $stitch } ; finir en repiquant trois points sur le début.
    .check = Le repli est pris tout autour et la coulisse a { $channel } de largeur à l’intérieur.
    .remedy = Découdre là où la piqûre a quitté le repli, et refaire ce tronçon.
