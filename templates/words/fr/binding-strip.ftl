### Border un bord d’une bande pliée, coupée dans du tissu.
### $strip : la bande ; $edge : le bord qu’elle borde.

binding-strip-title = Border { EDGE($edge) } avec { PIECE($strip) }
    .number = { $shows }
binding-strip-aim = Les bords bruts sont enfermés dans la bande.

## Monter

binding-strip-press = Replier un long bord { PIECE($strip, case: "of") } de { $turn } sur l’envers et marquer la pliure au fer.
binding-strip-ends = Replier chaque bout { PIECE($strip, case: "of") } de { $ends } sur l’envers et marquer la pliure au fer.
    .check = Repliée, la bande est aussi longue que { EDGE($edge) }.
    .remedy = Ouvrir les plis au fer et les refaire.
binding-strip-lay = Poser son autre long bord sur { EDGE($edge) }, endroit contre endroit, bord à bord, et { pin }.
binding-strip-sew-ring = Piquer à { $seam-width } du bord, { $length } tout autour, { $stitch }. Finir en repiquant trois points sur le début.
binding-strip-sew-flat = Piquer à { $seam-width } du bord, { $length }, { $stitch }, point d’arrêt aux deux bouts.

## Rabattre

binding-strip-fold = Relever { PIECE($strip) }, la rabattre autour du bord sur l’envers jusqu’à ce que son repli couvre tout juste la ligne de piqûre. La { pin } depuis l’endroit.
    .check = { $shows } { PIECE($strip, case: "of") } se voient sur l’endroit sur toute la longueur.
    .tolerance = { $off } de plus ou de moins
    .remedy = Là où le repli n’atteint pas la ligne de piqûre, recouper un peu la marge et rabattre à nouveau.
binding-strip-stitch-down-ring = Depuis l’endroit, piquer { PIECE($strip) } à { $edge-stitch } de la couture, { $length } tout autour. Finir en repiquant trois points sur le début.
    .check = Derrière, le repli est pris sur toute la longueur.
    .remedy = Reprendre à la main, au point invisible, ce qui a échappé.
binding-strip-stitch-down-flat = Depuis l’endroit, piquer { PIECE($strip) } à { $edge-stitch } de la couture, { $length }, point d’arrêt aux deux bouts.
    .check = { binding-strip-stitch-down-ring.check }
    .remedy = { binding-strip-stitch-down-ring.remedy }
