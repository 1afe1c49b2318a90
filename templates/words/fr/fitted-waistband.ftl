### Monter une ceinture plate avec une fermeture sur un bord supérieur ouvert.
### $band est la ceinture ; $to le bord où elle va.

fitted-waistband-title = Monter { PIECE($band) }
    .number = { $waist }
fitted-waistband-aim = La taille se ferme à { $waist } et s’ouvre pour les hanches.
# Des liens la ferment : l’étape suivante les coud.
fitted-waistband-aim-ties = { PIECE($band, at: "start") } mesure { $length } et est prête pour ses liens.

## Repères

# Dit seulement dans les messages d’ici. $underlap : un bout de la ceinture dépasse, sous l’autre.
fitted-waistband-from-ends = { $underlap ->
    [yes] à { $seam-width } du bout qui vient dessus et à { $beneath } de l’autre
   *[no] à { $seam-width } des deux bouts
 }
# Quel bout vient dessus, selon la place de l’ouverture.
fitted-waistband-on-top = { $place ->
    [side] Dessus vient le bout du devant.
    [back] Dessus vient le bout de la moitié gauche.
   *[either] Dessus vient le bout du devant au côté gauche, celui de la moitié gauche au milieu du dos.
 }
fitted-waistband-stands-out = { $underlap ->
    [yes] Il dépasse de { $seam-width } au bout qui vient dessus et de { $beneath } à l’autre.
   *[no] Il dépasse de { $seam-width } aux deux bouts.
 }
# $stiffened: l’entoilage est sur la moitié que l’on coud.
fitted-waistband-fold = { $stiffened ->
    [yes] Replier le long bord { PIECE($band, case: "of") }, celui de la moitié sans entoilage, de { $seam-width } sur l’envers et marquer la pliure au fer.
   *[no] Replier un long bord { PIECE($band, case: "of") } de { $seam-width } sur l’envers et marquer la pliure au fer.
 }
fitted-waistband-hold = Tenir { PIECE($band) } contre { EDGE($to) } comme on la coudra, le bord non replié au ras, et épingler une étiquette au bout qui viendra dessus. { fitted-waistband-on-top }
fitted-waistband-mark = { $parts ->
    [8] Marquer les huitièmes { EDGE($to, case: "of") } d’un bout à l’autre, tous les { $part }.{ marks-on-line }
   *[4] Marquer les quarts { EDGE($to, case: "of") } d’un bout à l’autre, tous les { $part }.{ marks-on-line }
 }
# Les repères des plis y sont encore.
fitted-waistband-mark-pleats = { $parts ->
    [8] Marquer les huitièmes { EDGE($to, case: "of") } d’un bout à l’autre, tous les { $part }, d’une autre couleur que les plis.{ marks-on-line }
   *[4] Marquer les quarts { EDGE($to, case: "of") } d’un bout à l’autre, tous les { $part }, d’une autre couleur que les plis.{ marks-on-line }
 }
fitted-waistband-mark-band = Marquer le bord non replié { PIECE($band, case: "of") } { fitted-waistband-from-ends }, et tous les { $part } entre eux.
# Le bord supérieur porte des repères d’une étape précédente.
fitted-waistband-mark-band-alone = Marquer le bord non replié { PIECE($band, case: "of") } { fitted-waistband-from-ends }, et tous les { $part } entre eux. Le bord supérieur a déjà ses repères.

## Monter

fitted-waistband-snip = Le bord coupé { PIECE($skirt, case: "of") } est plus court de { $shorter } que la ligne de couture. Cranter la marge tous les { $snips }, sur { $snip }, pour qu’elle s’ouvre.
    .check = Aucun cran n’est à moins de { $clear } de la ligne de couture.
    .remedy = Là où un cran va trop loin, piquer d’autant plus à l’intérieur.
fitted-waistband-lay = { $face ->
    [right] Poser le bord non replié { PIECE($band, case: "of") } sur { EDGE($to) }, endroit contre endroit, repère sur repère. { fitted-waistband-stands-out } L’y { pin }.
   *[other] Poser le bord non replié { PIECE($band, case: "of") }, endroit dessous, sur l’extérieur { EDGE($to, case: "of") }, repère sur repère. { fitted-waistband-stands-out } L’y { pin }.
 }
    .check = Sur la ligne de couture, il y a { $length } entre les bouts.
    .tolerance = { $edge-off } de plus ou de moins
    .remedy = { $folds ->
        [gathers] Trop long : resserrer les fronces. Trop court : les relâcher.
        [pleats] Trop long : faire quelques plis un peu plus profonds. Trop court : un peu moins profonds.
       *[flat] Répartir la différence entre les repères.
     }
fitted-waistband-sew = Piquer à { $seam-width } du bord, { $length }, { $stitch }, point d’arrêt aux deux bouts.
    .check = Toutes les épaisseurs sont prises.
    .remedy = Repiquer là où une épaisseur a glissé, en dépassant de { $past } de chaque côté.
fitted-waistband-press = Relever { PIECE($band) } et repasser la couture, toute la marge vers la ceinture.

## Fermer les bouts et rabattre

fitted-waistband-half = Plier { PIECE($band) } en deux dans la longueur, endroit contre endroit, la pliure repassée au ras de la ligne de piqûre.
fitted-waistband-ends = Rabattre la jupe vers le bas, hors du chemin. À chaque bout, piquer de la pliure à la ligne de couture, à { $seam-width } du bord, juste à côté de la jupe.
    .check = Les deux bouts sont au ras des bords de l’ouverture.
    .remedy = Découdre le bout et le repiquer à sa place.
fitted-waistband-end-on-top = Rabattre la jupe vers le bas, hors du chemin. Au bout du dessus, piquer de la pliure à la ligne de couture, à { $seam-width } du bord, juste à côté de la jupe.
    .check = Le bout est au ras de l’ouverture.
    .remedy = Découdre le bout et le repiquer à sa place.
fitted-waistband-end-beneath = Au bout du dessous, déplier la marge repassée, les deux longs bords de niveau. Descendre de la pliure à { $seam-width } du bord, tourner à la ligne de couture, l’aiguille dans le tissu, et piquer sur cette ligne jusqu’à la jupe.
    .check = Le bout dépasse l’ouverture de { $overlap }, et son bord inférieur est fermé.
    .remedy = Découdre le bout et le repiquer à sa place.
fitted-waistband-turn = Couper la marge en biais aux coins, à { $corner } de la piqûre. Retourner { PIECE($band) } sur l’endroit, faire ressortir les coins et la repasser.
    .check = La ceinture a { $depth } de hauteur.
    .tolerance = { $fold-off } de plus ou de moins
    .remedy = Repasser à nouveau la pliure là où elle dévie.
fitted-waistband-label = Glisser un bout de l’étiquette de { $seam-width } sous le bord replié, au milieu de la ceinture, le texte visible, et l’y { pin }.
fitted-waistband-inside = Poser le bord replié sur la ligne de piqûre, à l’intérieur, et l’y { pin }. Intérieur dessus, piquer à { $edge-stitch } du repli, { $length }, { $stitch }.
    .check = Le repli est pris sur toute la longueur.
    .remedy = Reprendre à la main ce qui a échappé.

## La fermeture

# $half : la moitié de la croisure.
fitted-waistband-buttonhole = Marquer une boutonnière dans le bout qui vient dessus : au milieu de la hauteur de la ceinture, à partir de { $half } du bout, longue du diamètre du bouton plus son épaisseur. La faire comme la machine fait les boutonnières, après un essai sur une chute. Puis remettre la machine au point droit.
fitted-waistband-cut = Ouvrir la boutonnière au découseur, une épingle en travers à chaque bout.
fitted-waistband-button = Superposer les bouts de { $overlap }. Faire un point à travers la boutonnière, à { $half } du bout du dessous, et y coudre le bouton.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = Recoudre le bouton à sa place.
fitted-waistband-hook = Coudre le crochet à l’intérieur du bout qui vient dessus, à { $hook-in } de son bord. Coudre la barrette à l’extérieur du bout du dessous, à { $bar-in } de son bord.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = Recoudre la barrette à sa place.
fitted-waistband-snaps = Superposer les bouts de { $overlap }. Coudre les moitiés plates de deux boutons-pression à l’intérieur du bout qui vient dessus, à { $snap-in } de son bord, et les autres moitiés là où elles touchent le bout du dessous.
    .check = { fitted-waistband-closed.check }
    .tolerance = { fitted-waistband-closed.tolerance }
    .remedy = Recoudre les moitiés du dessous à leur place.
fitted-waistband-ties = Laisser les deux bouts tels quels : les liens s’y cousent.
# Dit seulement comme partie de ceux ci-dessus.
fitted-waistband-closed =
    .check = Fermée avec une croisure de { $overlap }, la ceinture mesure { $waist }.
    .tolerance = { $waist-off } de plus ou de moins
