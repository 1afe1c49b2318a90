### Rouler un bord de tissu fin en un ourlet de quelques millimètres.
### $edge : le bord ourlé.

rolled-hem-title = Faire l’ourlet roulotté { PIECE($edge, case: "of") }
    .number = { $roll }
rolled-hem-aim = Un ourlet très étroit tient le bord.

## Au pied ourleur

rolled-hem-fit-foot = Monter un pied ourleur de { $roll }. L’essayer sur une chute du même tissu.
rolled-hem-thin-seams = Là où une couture arrive { EDGE($edge, case: "to") }, couper en biais les coins de ses marges, pour qu’elles passent dans le pied.
rolled-hem-begin-ring = Envers dessus, à côté de { side-seam }, plier deux fois de { $roll } les premiers { $first } { EDGE($edge, case: "of") }. Mettre le repli sous le pied et y piquer l’aiguille.
rolled-hem-begin-flat = Envers dessus, à un bout, plier deux fois de { $roll } les premiers { $first } { EDGE($edge, case: "of") }. Mettre le repli sous le pied et y piquer l’aiguille.
rolled-hem-sew-foot-ring = Piquer le long du repli. Puis engager le bord brut dans la volute du pied et continuer, { $stitch }, le bord tenu relevé devant le pied. S’arrêter à { $first } du début et sortir le bord de la volute. Plier le reste à la main et repiquer trois points sur le début : { $length } en tout.
rolled-hem-sew-foot-flat = Piquer le long du repli. Puis engager le bord brut dans la volute du pied et continuer, { $length } en tout, { $stitch }, le bord tenu relevé devant le pied.
rolled-hem-foot-off = Remettre le pied-de-biche habituel.

## À la main

rolled-hem-crease = Piquer ou marquer une ligne à { $twice } { EDGE($edge, case: "of") }, puis couper les fils qui dépassent.
rolled-hem-roll = Envers dessus, rouler le bord entre le pouce et l’index à { $roll }, une longueur de main à la fois.
rolled-hem-sew-hand = Fixer le roulotté au point invisible, un point tous les { $every }, { $length } : un fil du tissu, puis à travers le roulotté. Arrêter le fil dans le roulotté aux deux bouts.

## À la surjeteuse

rolled-hem-set-overlocker = Régler la surjeteuse pour un bord roulotté : doigt mailleur ôté, { $stitch }, boucleur inférieur serré. L’essayer sur une chute.
rolled-hem-sew-overlocker-ring = Endroit dessus, surjeter { EDGE($edge) }, { $length } ; ne laisser au couteau que les fils qui dépassent. Dépasser le début de { $past }, puis sortir du bord.
rolled-hem-sew-overlocker-flat = Endroit dessus, surjeter { EDGE($edge) }, { $length } ; ne laisser au couteau que les fils qui dépassent. Sortir du bord aux deux bouts.
rolled-hem-chain = Laisser une chaînette de { $tail } au début et à la fin. Enfiler chacune sur une aiguille à bout rond, la glisser sous les points et couper le reste.
    .check = Aucune chaînette ne pend.
rolled-hem-set-back = Remettre la surjeteuse comme pour surfiler.

## Regarder

rolled-hem-look = Regarder tout le long { EDGE($edge, case: "of") }.
    .check = Le roulotté a { $roll } de largeur et aucun bord brut n’en dépasse.
    .tolerance = { $off } de plus ou de moins
    .remedy = Découdre une largeur de main des deux côtés de l’endroit, rouler à nouveau et recoudre.
rolled-hem-look-overlocker = { rolled-hem-look }
    .check = { rolled-hem-look.check }
    .tolerance = { rolled-hem-look.tolerance }
    .remedy = Couper ce qui dépasse, et repasser ce passage à la surjeteuse sans le couteau.
