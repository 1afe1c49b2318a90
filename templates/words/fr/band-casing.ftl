### Monter une bande pliée sur le bord supérieur : elle enferme la couture et loge un élastique ou un cordon.
### $band est la ceinture ; $to le bord où elle va ; $seam la couture de côté de la jupe, $band-seam celle de la ceinture.

band-casing-title = Monter { PIECE($band) }
    .number = { $depth }
band-casing-aim = { $holds ->
    [cord] Le bord supérieur est enfermé et la coulisse du cordon est accessible par l’ouverture.
   *[elastic] Le bord supérieur est enfermé et la coulisse de l’élastique est accessible par l’ouverture.
 }
band-casing-aim-holes = Le bord supérieur est enfermé, et la coulisse du cordon s’ouvre par ses deux { cord-holes }.

# Dits seulement dans les messages ci-dessous. Le premier suit « de ».
band-casing-top = { COUNT($to) ->
    [one] { EDGE($to, case: "of") }
   *[other] du bord supérieur de la jupe
 }
band-casing-seam = { $band-seam ->
    [bright] la couture de côté au fil vif
   *[plain] la couture de côté
 }

## Repères

band-casing-fold = Replier un long bord { PIECE($band, case: "of") } de { $seam-width } sur l’envers et marquer la pliure au fer.
# La moitié aux trous vient à l’extérieur.
band-casing-fold-holes = Replier de { $seam-width } sur l’envers le long bord { PIECE($band, case: "of") } le plus proche des { cord-holes } et marquer la pliure au fer.
band-casing-mark = { $parts ->
    [8] Marquer les huitièmes { band-casing-top } sur les deux faces, tous les { $part }, le premier repère à { side-seam }.{ marks-on-line }
   *[4] Marquer les quarts { band-casing-top } sur les deux faces, tous les { $part }, le premier repère à { side-seam }.{ marks-on-line }
 }
# Les repères des plis y sont encore.
band-casing-mark-pleats = { $parts ->
    [8] Marquer les huitièmes { band-casing-top } sur les deux faces, d’une autre couleur que les plis, tous les { $part }, le premier repère à { side-seam }.{ marks-on-line }
   *[4] Marquer les quarts { band-casing-top } sur les deux faces, d’une autre couleur que les plis, tous les { $part }, le premier repère à { side-seam }.{ marks-on-line }
 }
band-casing-mark-band = Marquer de même le bord non replié { PIECE($band, case: "of") }, le premier repère à { band-casing-seam }.
# Ce qui diffère du plan : le bord supérieur, $top, et la ceinture, $length, n’ont pas la même longueur.
band-casing-mark-band-own = { $parts ->
    [8] Marquer les huitièmes du bord non replié { PIECE($band, case: "of") }, pris sur sa propre longueur, tous les { $part }, le premier repère à { band-casing-seam }.
   *[4] Marquer les quarts du bord non replié { PIECE($band, case: "of") }, pris sur sa propre longueur, tous les { $part }, le premier repère à { band-casing-seam }.
 }
# Le bord supérieur porte des repères d’une étape précédente.
band-casing-mark-band-alone = { $parts ->
    [8] Marquer les huitièmes du bord non replié { PIECE($band, case: "of") }, tous les { $part }, le premier repère à { band-casing-seam }. Le bord supérieur a déjà ses repères.
   *[4] Marquer les quarts du bord non replié { PIECE($band, case: "of") }, tous les { $part }, le premier repère à { band-casing-seam }. Le bord supérieur a déjà ses repères.
 }

## Poser

band-casing-turn = Mettre la jupe à l’envers, le bord supérieur en haut.
band-casing-label = Poser l’étiquette à l’intérieur, sur { PIECE($inner) } à côté de { side-seam }, le texte visible, un bout au ras du bord supérieur : la couture de la bande prend ce bout. L’y { pin }.
# Quelle face de la jupe est à l’intérieur : l’envers de sa seule épaisseur ou de la plus intérieure, ...
band-casing-slip = Enfiler par-dessus { PIECE($band) }, envers dehors : l’endroit de la ceinture contre l’envers { PIECE($inner, case: "of") }.
    .check = Le bord non replié est au ras du bord supérieur, et la pliure repassée pend vers le bas.
# ... l’endroit d’une doublure qui se porte côté jambes, ...
band-casing-slip-lining = Enfiler par-dessus { PIECE($band) }, envers dehors : l’endroit de la ceinture contre l’endroit { PIECE($inner, case: "of") }, qui est dehors à présent.
    .check = { band-casing-slip.check }
# ... ou un tissu aux deux faces pareilles.
band-casing-slip-either = Enfiler par-dessus { PIECE($band) }, envers dehors : l’endroit de la ceinture contre l’intérieur { PIECE($inner, case: "of") }.
    .check = { band-casing-slip.check }
band-casing-front = Tourner la ceinture sur la jupe jusqu’à ce que le milieu entre les deux { cord-holes } tombe sur le repère qui est le milieu du devant.
band-casing-pin = { pin-start } { band-casing-seam } de la ceinture au premier repère, puis les autres repères, puis tous les { $spacing }.
    .check = { $alike ->
        [yes] La ceinture est posée sans pli ; les deux bords mesurent { $length }.
       *[no] La ceinture mesure { $length } et le bord supérieur { $top } ; ce qui est plus long est réparti entre les repères, sans pli.
     }
    .tolerance = { $off } de plus ou de moins
    .remedy = Répartir la différence entre les repères. Si elle est plus grande, repiquer la couture de côté de la ceinture à la bonne mesure.

## Piquer et rabattre

band-casing-sew = { $gathered ->
    [yes] Tourner l’ouvrage pour que les fronces soient dessus ; on pique alors depuis l’intérieur du rond. Piquer à { $seam-width } du bord, { $stitch }, { $length } tout autour. Finir en repiquant trois points sur le début.
   *[no] Piquer à { $seam-width } du bord, { $stitch }, { $length } tout autour. Finir en repiquant trois points sur le début.
 }
    .check = Toutes les épaisseurs sont prises.
    .remedy = Repiquer là où une épaisseur a glissé, en dépassant de { $past } de chaque côté.
band-casing-fold-up = Remettre la jupe à l’endroit. Relever la ceinture à l’opposé de la jupe, toute la marge à l’intérieur, et repasser la couture.
band-casing-cover = Rabattre le bord replié sur l’extérieur jusqu’à ce qu’il couvre la ligne de piqûre de { $cover }, et l’y { pin }.
    .check = La ceinture a { $depth } de hauteur tout autour.
    .tolerance = { $fold-off } de plus ou de moins
    .remedy = Déplacer le repli jusqu’à ce qu’il couvre partout la ligne de piqûre. Si la ceinture reste trop basse, elle a été coupée trop étroite : en couper une neuve de { $cut-depth } de hauteur.
band-casing-gap = Marquer une ouverture de { $gap } : de { $beside } à { $gap-end } à droite de { band-casing-seam } de la ceinture, vue sur l’endroit. Tracer un trait à chaque bout.
band-casing-gap-front = Marquer une ouverture de { $gap } au milieu du devant, à { $quarter } de { band-casing-seam } de la ceinture, une moitié de chaque côté. Tracer un trait à chaque bout.
band-casing-topstitch = Endroit dessus, surpiquer à { $edge-stitch } du repli inférieur, d’un trait de l’ouverture à l’autre en faisant le tour, { $stitch }, { $stitched }. Faire un point d’arrêt aux deux bouts.
    .check = L’ouverture est libre et la coulisse a { $channel } de largeur à l’intérieur.
    .tolerance = { $fold-off } de plus ou de moins
    .remedy = Découdre ce qui ferme l’ouverture.
band-casing-topstitch-round = Endroit dessus, surpiquer à { $edge-stitch } du repli inférieur sur tout le tour, { $stitch }, { $stitched } ; finir en repiquant trois points sur le début.
    .check = Le repli est pris tout autour et la coulisse a { $channel } de largeur à l’intérieur.
    .tolerance = { $fold-off } de plus ou de moins
    .remedy = Découdre là où la piqûre a quitté le repli, et refaire ce tronçon.
