### Un bord supérieur avant la mise de niveau : la ligne à couper, et de combien elle est sous le bord à chaque repère.

figure-levelled-edge = { PIECE($edge, at: "start") }, le bord supérieur
figure-levelled-side = côté
figure-levelled-front = devant
figure-levelled-back = dos
figure-levelled-drawn = { $edges ->
    [one] Ce qui est repris est dessiné plus profond qu’il ne l’est.
   *[other] Ce qui est repris est dessiné plus profond qu’il ne l’est. Faire de même à chacun des { $edges } bords supérieurs.
 }
figure-levelled-alt = Le bord supérieur { PIECE($edge, case: "of") } avec une ligne à couper en dessous : { $front } devant, { $side } sur les côtés, { $back } derrière. La ligne est douce, et horizontale devant et derrière.
figure-levelled-caption = Où le bord est coupé plus bas.
