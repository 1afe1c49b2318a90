### Un bord inférieur coupé plus haut devant que derrière.

figure-dipped-hem-head = { PIECE($piece, at: "start") }, bord inférieur
figure-dipped-hem-front = devant
figure-dipped-hem-side = côté
figure-dipped-hem-back = dos
figure-dipped-hem-alt = Le bord inférieur { PIECE($piece, case: "of") } étalé droit, avec au-dessus une ligne à couper : { $front } plus haut devant, { $side } sur les côtés, rien au dos.
figure-dipped-hem-caption = Où le bord est coupé plus haut ; ce qui tombe est hachuré dans les deux sens, et dessiné plus haut qu’il n’est.
