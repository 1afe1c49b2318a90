### Relever un bord sur l’endroit et coudre un galon par-dessus le bord brut.
### $edge : le bord fini ; $trim : le nom du galon.

edge-with-trim-title = Garnir { PIECE($edge) } du galon ({ $trim })
    .number = { $turn }
edge-with-trim-aim = { COUNT($edge) ->
    [one] { EDGE($edge, at: "start") } est fini et ne peut pas s’effilocher.
   *[other] { EDGE($edge, at: "start") } sont finis et ne peuvent pas s’effilocher.
 }

## Avant de coudre

# Le bord est brut, et son tissu s’effiloche.
edge-with-trim-hide = Poser le galon ({ $trim }) sur le bord brut d’une chute.
    .check = Le bord brut ne se voit pas au travers.
    .remedy = S’il se voit, comme sous une dentelle ajourée, d’abord surfiler { EDGE($edge) } au zigzag, 3 mm de large et 2 mm de long, et remettre la machine au point droit : les fils bruts sortent par les trous.

## Poser et replier

edge-with-trim-begin = Poser l’ouvrage endroit dessus. Replier les premiers { $stretch } : { EDGE($edge) }, de { $turn } sur l’endroit.
edge-with-trim-begin-ring = Commencer à { side-seam } : poser le bout brut du galon ({ $trim }) le long de cette pliure, endroit dessus aussi, son bord extérieur au ras de la pliure.
    .check = Si le galon ({ $trim }) a un bord façonné, celui-ci est vers l’extérieur, et le bord droit vers l’intérieur.
edge-with-trim-begin-flat = Commencer à un bout : poser le galon ({ $trim }) le long de cette pliure, endroit dessus aussi, son bord extérieur au ras de la pliure et son bout brut au ras du bout du tissu.
    .check = { edge-with-trim-begin-ring.check }
# Les bouts du tissu sont déjà finis : ceux du galon se replient.
edge-with-trim-begin-folded = Replier { $under } du bout du galon ({ $trim }). Commencer à un bout : poser le galon le long de cette pliure, endroit dessus aussi, son bord extérieur au ras de la pliure et son repli au ras du bout du tissu.
    .check = { edge-with-trim-begin-ring.check }
edge-with-trim-fold = Continuer à replier { EDGE($edge) } de { $turn } sur l’endroit, sous le galon ({ $trim }), par passages de { $stretch } à mesure que l’on pique.
    .check = Le bord extérieur du galon ({ $trim }) est au ras de la pliure.

## Piquer le bord extérieur du galon

edge-with-trim-sew-ring = Piquer à { $row } de la pliure, { $stitch }, point d’arrêt au début. S’arrêter à { $stretch } du début, l’aiguille piquée.
    .check = Le bord brut est partout caché sous le galon.
    .remedy = Là où il dépasse, découdre ce passage, replier un peu plus profond et repiquer.
edge-with-trim-sew-flat = Piquer à { $row } de la pliure, { $stitch }, { $length } en tout, point d’arrêt aux deux bouts. Couper le galon ({ $trim }) au ras du bout du tissu.
    .check = { edge-with-trim-sew-ring.check }
    .remedy = { edge-with-trim-sew-ring.remedy }
edge-with-trim-sew-folded = Piquer à { $row } de la pliure, { $stitch }, point d’arrêt au début. S’arrêter à { $stretch } de la fin, l’aiguille piquée.
    .check = { edge-with-trim-sew-ring.check }
    .remedy = { edge-with-trim-sew-ring.remedy }

## Finir les bouts du galon

edge-with-trim-cut = Couper le galon ({ $trim }) à { $overlap } au-delà de son début.
edge-with-trim-lap = Replier { $half } du bout coupé, et poser le repli de { $half } sur le début.
    .check = Le repli est droit en travers, et aucun bout brut ne se voit.
    .remedy = S’il est trop court, découdre une largeur de main et reposer le galon en le tirant moins.
edge-with-trim-close = Piquer jusqu’au repli, avec un point d’arrêt : { $length } en tout.
    .check = Le raccord du galon est à { side-seam }.
edge-with-trim-end-folded = Couper le galon ({ $trim }) à { $under } au-delà du bout du tissu et replier d’autant. Piquer jusqu’au repli, avec un point d’arrêt : { $length } en tout.
    .check = Le repli est au ras du bout du tissu, et aucun bout brut ne se voit.
    .remedy = S’il est trop court, découdre une largeur de main et reposer le galon en le tirant moins.

## Piquer le bord intérieur d’un galon large

edge-with-trim-second-row-ring = Piquer une seconde fois à { $below } du bord intérieur du galon ({ $trim }), { $stitch }, { $length }. Finir en repiquant trois points sur le début.
edge-with-trim-second-row-flat = Piquer une seconde fois à { $below } du bord intérieur du galon ({ $trim }), { $stitch }, { $length }, point d’arrêt aux deux bouts.
edge-with-trim-sew-lap = Piquer le bout replié en travers du galon ({ $trim }), à { $below } de son repli, point d’arrêt aux deux bouts.
edge-with-trim-sew-ends = Piquer les deux bouts repliés en travers du galon ({ $trim }), à { $below } de leurs replis, point d’arrêt aux deux bouts.

## Piquer le galon le long du bord vif, puis relever les deux ensemble

# L’envers est dessus, l’endroit du galon aussi : relevé, le galon se voit.
edge-with-trim-along-ring = Poser l’ouvrage envers dessus. Commencer à { side-seam } : poser le galon ({ $trim }) le long { EDGE($edge, case: "of") }, endroit dessus. Son bord extérieur est au ras du bord vif.
    .check = Si un bord du galon ({ $trim }) est festonné, ce bord est à l’opposé du bord vif.
edge-with-trim-along-flat = Poser l’ouvrage envers dessus. Commencer à un bout : poser le galon ({ $trim }) le long { EDGE($edge, case: "of") }, endroit dessus. Son bord extérieur est au ras du bord vif, son bout vif au ras du bout du tissu.
    .check = { edge-with-trim-along-ring.check }
edge-with-trim-along-folded = Poser l’ouvrage envers dessus. Replier { $under } du bout du galon ({ $trim }). Commencer à un bout : poser le galon le long { EDGE($edge, case: "of") }, endroit dessus. Son bord extérieur est au ras du bord vif, son repli au ras du bout du tissu.
    .check = { edge-with-trim-along-ring.check }
edge-with-trim-along-sew-ring = Piquer à { $row } du bord vif, { $stitch }, point d’arrêt au début. S’arrêter { $stretch } avant la fin, l’aiguille plantée.
    .check = { edge-with-trim-along-sew-flat.check }
    .remedy = { edge-with-trim-along-sew-flat.remedy }
edge-with-trim-along-sew-flat = Piquer à { $row } du bord vif, { $stitch }, { $length } en tout, point d’arrêt aux deux bouts. Couper le galon ({ $trim }) au ras du bout du tissu.
    .check = Le bord du galon ({ $trim }) est partout au ras du bord vif, et aucun des deux n’est étiré.
    .remedy = Là où ils ont glissé, découdre ce passage et le repiquer.
# Plusieurs pareils : le galon passe de l’un au suivant.
edge-with-trim-along-sew-chain = Piquer à { $row } du bord vif, { $stitch }, { $length } chacun. À la fin, ne couper ni le galon ({ $trim }) ni les fils : poser le suivant tout contre et continuer à piquer.
    .check = { edge-with-trim-along-sew-flat.check }
    .remedy = { edge-with-trim-along-sew-flat.remedy }
edge-with-trim-apart = Séparer la chaîne en ses { $copies } éléments, le galon ({ $trim }) coupé au ras des bouts du tissu.
edge-with-trim-turn-both = Relever ensemble le galon ({ $trim }) et le tissu de { $turn } sur l’endroit, par longueurs de { $stretch }, à mesure que l’on pique.
    .check = Le bord vif est à l’intérieur, entre le tissu et le galon ({ $trim }). La première piqûre ne se voit pas de l’envers.
    .remedy = Là où la piqûre dépasse à la pliure, relever un peu plus.
edge-with-trim-topstitch-ring = Endroit dessus, surpiquer à { $below } du bord supérieur du galon ({ $trim }), { $stitch }, { $length }. Finir en repiquant trois points sur le début.
    .check = Chaque point tient le galon ({ $trim }) et le tissu.
    .remedy = Là où il a manqué le galon ({ $trim }), repiquer ce passage.
edge-with-trim-topstitch-flat = Endroit dessus, surpiquer à { $below } du bord supérieur du galon ({ $trim }), { $stitch }, { $length }, point d’arrêt aux deux bouts.
    .check = { edge-with-trim-topstitch-ring.check }
    .remedy = { edge-with-trim-topstitch-ring.remedy }
