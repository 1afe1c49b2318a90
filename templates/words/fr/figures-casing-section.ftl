### Une ceinture qui devient coulisse, en coupe dans ses trois états ; l’intérieur du vêtement est dessus.

figure-casing-laid-on = 1. Posée à l’intérieur, piquée
figure-casing-folded-up = 2. Relevée, à l’opposé de la jupe
figure-casing-folded-over = 3. Rabattue sur l’extérieur, surpiquée
figure-casing-inside = intérieur
figure-casing-outside = extérieur
# Deux lignes à côté de la coulisse.
figure-casing-held = { $holds ->
    [cord] cordon
   *[elastic] élastique
 }
figure-casing-later = plus tard
figure-casing-deep = { $depth } de haut
figure-casing-gap = { $holds ->
    [cord] Laisser l’ouverture de { $gap } au milieu du devant : le cordon y sortira plus tard.
   *[elastic] Laisser l’ouverture de { $gap } à côté de la couture de côté : l’élastique y entrera plus tard.
 }
figure-casing-skirt = jupe : { $plies }
figure-casing-top = { PIECE($band, form: "bare") }, haut du vêtement
figure-casing-rows = Les deux piqûres sont dessinées plus écartées.
figure-casing-laid-on-alt = Coupe { PIECE($band, case: "of") }, intérieur dessus : posée à l’intérieur de la jupe, endroit dessous, bords bruts bord à bord, piquée à { $seam-width } du bord.
figure-casing-folded-up-alt = Coupe { PIECE($band, case: "of") }, intérieur dessus : relevée, à l’opposé de la jupe, la marge de { $seam-width } dessous.
figure-casing-folded-over-alt = { $holds ->
    [cord] Coupe { PIECE($band, case: "of") }, intérieur dessus : rabattue par le haut sur l’extérieur, { $depth } de haut, son repli de { $seam-width } couvrant la première piqûre, et surpiquée ; le cordon vient plus tard, entre la marge et l’extérieur.
   *[elastic] Coupe { PIECE($band, case: "of") }, intérieur dessus : rabattue par le haut sur l’extérieur, { $depth } de haut, son repli de { $seam-width } couvrant la première piqûre, et surpiquée ; l’élastique vient plus tard, entre la marge et l’extérieur.
 }
figure-casing-caption = La ceinture en coupe : piquée, relevée, rabattue.{ figure-hatched }
