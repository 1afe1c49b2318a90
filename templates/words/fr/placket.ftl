### Ouvrir le bord supérieur par une fente bordée, pour que la taille n’ait pas à passer les hanches.
### $edge est le bord supérieur ; $strip la bande qui borde la fente.

placket-title = Ouvrir { EDGE($edge) } par une fente bordée
    .number = { $slit }
# L’ouverture a été laissée dans une couture : rien n’est coupé.
placket-title-seam = Border l’ouverture { EDGE($edge, case: "of") }
    .number = { $slit }
placket-aim = La fente de { $slit } laisse la taille passer les hanches ; elle croise de { $overlap }.

## La fente

placket-mark = Tracer une ligne droite de { $slit } vers le bas depuis { EDGE($edge) }, au milieu du dos ou sur le côté gauche, à { $clear } ou plus de toute couture.
placket-stay = Au point de { $short } mm, piquer un rang qui soutient la fente. Commencer au bord supérieur à { $stay } de la ligne, et s’en approcher peu à peu, jusqu’à une pointe en bas. Faire un point en travers de la pointe et remonter l’autre côté de la même façon.
    .check = En haut, chaque rang est à { $stay } de la ligne ; en bas, ils se rejoignent en pointe.
    .tolerance = { $stay-off } de plus ou de moins
    .remedy = Repiquer ce côté à côté du premier rang. Un rang trop près de la ligne se coupe.
# La fente continue à travers une couture.
placket-fasten = À environ { $to-seam } du haut, la ligne croise une couture. Des deux côtés de la ligne, à { $stay } d’elle, piquer trois points en avant et en arrière sur cette couture ; si elle est cousue à la main, y arrêter ses fils à la main.
    .check = Tirée de part et d’autre de la ligne, la couture tient des deux côtés.
    .remedy = L’arrêter encore une fois avant de couper.
placket-cut = Couper le long de la ligne jusqu’à un fil de la pointe.
    .check = La coupe s’arrête avant les points.
    .remedy = Si un point est coupé, piquer une nouvelle pointe juste en dessous.
# Dans une couture laissée ouverte.
placket-clip = Au bas de l’ouverture, entailler les deux marges tout droit jusqu’au dernier point de la couture. De là vers le haut, recouper les deux marges à { $seam-width }.
    .check = Les entailles s’arrêtent à un fil du point, et la couture en dessous est entière.
    .remedy = Si le point est coupé, repiquer les derniers { $past } de la couture.

## La bande

placket-spread = Étaler la fente en ligne droite. Poser { PIECE($strip) } dessous, endroit contre endroit. Aux deux bouts, leurs bords sont bord à bord ; au bas de la fente, celle-ci est à { $in-at-foot } en retrait du bord { PIECE($strip, case: "of", form: "short") }. { pin-start }.
placket-sew = La fente dessus, piquer à { $seam-width } du bord { PIECE($strip, case: "of") }, juste à côté du rang qui soutient la fente, { $both-sides }, { $stitch }.
    .check = Au bas, { $foot } de la fente sont pris et aucun pli n’est dans la couture.
    .remedy = Découdre { $past } au bas, lisser et repiquer.
placket-spread-seam = Étaler l’ouverture en ligne droite. Poser { PIECE($strip) } dessous, endroit contre endroit, tous les bords au même niveau, les deux bouts au ras du bord supérieur. { pin-start }.
placket-sew-seam = L’ouverture dessus, piquer à { $seam-width } des bords, sur la ligne de la couture, { $both-sides }, { $stitch }.
    .check = Au bas, la piqûre rejoint le dernier point de la couture, sans aucun pli.
    .remedy = Découdre { $past } au bas, lisser et repiquer.
placket-press = Repasser la marge vers { PIECE($strip) }.
placket-fold = Replier au fer { $seam-width } de son bord libre sur l’envers. Rabattre { PIECE($strip) } par-dessus la couture vers l’intérieur, le repli sur la ligne de piqûre, et { pin }.
placket-stitch = Intérieur dessus, piquer à { $edge-stitch } de ce repli, { $both-sides }.
    .check = { PIECE($strip, at: "start") } a { $overlap } de largeur sur toute la longueur.
    .tolerance = { $wide-off } de plus ou de moins
    .remedy = Déplacer le repli sur la ligne de piqûre et repiquer.

## La croisure

placket-turn-in = Plier { PIECE($strip) } vers l’intérieur le long du côté qui vient dessus ; sur le côté gauche, c’est le devant. Du côté de dessous, elle dépasse de { $overlap }. { pin-start } en haut.
placket-foot = Plier la fente endroit contre endroit, de sorte que les deux moitiés { PIECE($strip, case: "of") } se superposent. Piquer leur bas en biais, { $slant }, à travers { PIECE($strip, form: "short") } seule.
    .check = Fermés, les côtés croisent de { $overlap } ; ouvert, le bord supérieur mesure { $across }.
    .tolerance = { $across-off } de plus ou de moins
    .remedy = Reprendre la différence dans les fronces ou les plis, ou dans la couture la plus proche.
