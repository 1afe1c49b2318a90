### Poser une fermeture à glissière dans l’ouverture d’une couture.
### $way : centred, lapped ou invisible. $from-edge : longueur de l’ouverture depuis le bord actuel ; $opening : une fois finie.

zip-title = Poser une fermeture à glissière dans { PIECE($pieces) }
    .number = { $opening }
zip-aim = { $way ->
    [centred] L’ouverture de { $opening } se ferme par la fermeture ({ $zip }), au milieu.
    [lapped] L’ouverture de { $opening } se ferme par la fermeture ({ $zip }), sous un rabat de { $lap }.
   *[invisible] L’ouverture de { $opening } se ferme par la fermeture ({ $zip }) et ressemble à la couture.
 }
zip-shorten = Fermer la fermeture. À { $opening } sous son extrémité supérieure, faire une bride à la main, dix points serrés par-dessus les deux rangées de dents, et couper la fermeture { $below } plus bas.

## Préparer

zip-baste = Bâtir l’ouverture, c’est-à-dire la fermer pour un temps, à points de { $basting } mm sur la ligne de couture, à { $margin } des bords, sur { $from-edge } depuis le haut, sans point d’arrêt.
zip-press-open = Ouvrir au fer les deux marges, le long de l’ouverture et une largeur de main plus bas.
# L’ouverture peut être au côté ou au dos.
zip-choose = Décider quel côté vient dessous : le dos pour une ouverture au côté gauche, la moitié droite pour une ouverture au milieu du dos.
# Dit seulement dans une autre phrase : de quel lé il s’agit, là où ils sont numérotés.
zip-number = { $numbered ->
    [yes] { " " }(nº { $next })
   *[no] { "" }
 }
zip-fold-out = { $place ->
    [side] L’envers vers le haut, rabattre la marge du côté du dos{ zip-number } par-dessus le bâti, vers le devant. La replier sur elle-même de façon que son pli dépasse le bâti de { $near }, et repasser ce pli.
    [back] L’envers vers le haut, rabattre la marge de la moitié droite par-dessus le bâti, vers la moitié gauche. La replier sur elle-même de façon que son pli dépasse le bâti de { $near }, et repasser ce pli.
   *[either] L’envers vers le haut, rabattre la marge du côté de dessous par-dessus le bâti, vers l’autre côté. La replier sur elle-même de façon que son pli dépasse le bâti de { $near }, et repasser ce pli.
 }
    .check = Le pli dépasse le bâti de { $near } tout le long de l’ouverture, endroit dessus, et se perd en dessous.
    .remedy = Déplier la marge et la repasser à nouveau.
zip-press-coils = Ouvrir la fermeture. De la pointe du fer, repasser les deux rubans sur l’envers pour que les dents se dressent.
    .check = L’aiguille descend tout contre les dents.
    .remedy = Repasser à nouveau, sans s’attarder sur les dents.

## Coudre

zip-lay-centred = { $bare ->
    [yes] Tourner l’intérieur vers le haut. Poser la fermeture fermée, face contre les marges, les dents sur le bâti et l’arrêt du haut à { $stop } sous le bord coupé. Épingler les deux rubans.
   *[no] Tourner l’intérieur vers le haut. Poser la fermeture fermée, face contre les marges, les dents sur le bâti et l’arrêt du haut au ras du bord. Épingler les deux rubans.
 }
# Dit seulement dans d’autres phrases.
zip-below-stop = { $cut-off ->
    [yes] { $below } sous la bride
   *[no] { $below } sous l’arrêt du bas, que l’on sent à travers le tissu
 }
zip-turn-corner = Laisser l’aiguille dans le tissu, lever le pied, tourner l’ouvrage et baisser le pied.
zip-foot-on = Monter le pied pour fermeture à côté de l’aiguille.
    .check = Tourner le volant à la main d’un tour entier : l’aiguille passe sans toucher le pied.
zip-foot-off = Ôter le pied pour fermeture et remettre le pied ordinaire.
    .check = { zip-foot-on.check }
zip-sew-centred = Tourner l’endroit vers le haut. Avec le pied pour fermeture, commencer au bord supérieur et piquer à { $beside } de la couture, vers le bas, jusqu’à { zip-below-stop }. { zip-turn-corner }
zip-sew-round = Piquer en travers, tourner encore de même et remonter de l’autre côté jusqu’au bord supérieur, { $stitch }.
    .check = Les deux piqûres sont à { $beside } de la couture et prennent le ruban sur toute la longueur.
    .tolerance = { $hair-off } de plus ou de moins
    .remedy = Découdre cette piqûre et la refaire le long d’un trait de craie.
zip-stop-at = { $bare ->
    [yes] à { $stop } sous le bord coupé
   *[no] au ras du bord
 }
zip-fold-work = { $place ->
    [side] Mettre l’ouvrage à l’envers. Le plier sur la couture, le devant sur le dos, endroit contre endroit.
    [back] Mettre l’ouvrage à l’envers. Le plier sur la couture, la moitié gauche sur la moitié droite, endroit contre endroit.
   *[either] Mettre l’ouvrage à l’envers. Le plier sur la couture, le côté qui recouvre sur celui de dessous, endroit contre endroit.
 }
    .check = Le pli de la marge dépasse la couture, endroit dessus.
    .remedy = S’il est caché, retourner l’ouvrage.
zip-lay-beneath = Glisser la fermeture fermée, endroit dessus, sous le pli qui dépasse : les dents tout contre le pli, l’arrêt du haut { zip-stop-at }. L’épingler.
zip-sew-beneath = Avec le pied pour fermeture, commencer au bord supérieur et piquer à { $near-fold } du pli jusqu’à son bout, { $from-edge }, { $stitch }. Seuls le pli et ce ruban passent sous l’aiguille ; le reste de l’ouvrage est au-delà de la couture.
    .check = Le curseur passe librement le long du pli.
    .remedy = Découdre et éloigner un peu le pli des dents.
zip-lay-lap = Étaler l’ouvrage, endroit dessus, la fermeture fermée. Épingler l’autre ruban sous le rabat.
zip-sew-lap = Sur le rabat, commencer au bord supérieur et piquer à { $lap } de la couture, vers le bas, jusqu’à { zip-below-stop }. { zip-turn-corner } Piquer en travers jusqu’à la couture, { $stitch }.
    .check = Le rabat couvre les dents sur toute la longueur et sa piqûre est droite.
    .tolerance = { $hair-off } de plus ou de moins
    .remedy = Découdre cette piqûre et la refaire le long d’un trait de craie.
zip-unpick = Défaire le bâti de l’ouverture par l’endroit et retirer les fils.
zip-lay-invisible = { $bare ->
    [yes] Poser une moitié de la fermeture ouverte, face contre l’endroit de sa marge, les dents sur la ligne de couture, l’arrêt du haut à { $stop } sous le bord coupé. Épingler le ruban à la marge.
   *[no] Poser une moitié de la fermeture ouverte, face contre l’endroit de sa marge, les dents sur la ligne de couture, l’arrêt du haut au ras du bord. Épingler le ruban à la marge.
 }
zip-lay-other = Poser l’autre moitié de même sur l’autre marge et l’épingler.
    .check = La fermeture n’est pas vrillée : fermée, elle est à plat à l’intérieur.
    .remedy = Ôter une moitié et la retourner.
zip-sew-invisible = Avec le pied pour fermeture tout contre les dents, piquer chaque moitié sur sa marge, du haut jusqu’au bout de l’ouverture, { $from-edge }, { $stitch }, point d’arrêt aux deux bouts.
    .check = Fermée, aucun ruban ne se voit sur l’endroit ; environ { $tail } de fermeture restent libres en bas.
    .remedy = Repiquer un fil plus près des dents.
zip-close-foot = Fermer la fermeture, écarter son bout libre et terminer la couture jusqu’aux deux piqûres avec le pied pour fermeture.
    .check = Il ne reste aucun trou au bout de l’ouverture.
    .remedy = Faire trois points à la main par-dessus.
zip-try = Ouvrir et fermer la fermeture trois fois.
    .check = Elle glisse librement et reste à plat.
    .remedy = Là où elle accroche, une piqûre est trop près des dents : la découdre et piquer plus loin.
