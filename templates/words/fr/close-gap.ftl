### Fermer l’ouverture d’une coulisse à la machine.

close-gap-title = Fermer l’ouverture
    .number = { $gap }
close-gap-aim = La coulisse est fermée tout autour.

# La piqûre d’une ceinture se voit sur l’endroit, celle d’une coulisse repliée sur l’envers.
close-gap-sew = { $band ->
    [yes] Endroit dessus, étirer la coulisse à plat à la seule ouverture. Fermer les { $gap }, { $stitch }, dans le prolongement de la première piqûre, en la dépassant de { $past } aux deux bouts.
   *[no] Intérieur dessus, étirer la coulisse à plat à la seule ouverture. Fermer les { $gap }, { $stitch }, dans le prolongement de la première piqûre, en la dépassant de { $past } aux deux bouts.
 }
    .check = La piqûre est continue et l’élastique n’est pas pris : il glisse sous le doigt.
    .remedy = Si l’élastique est pris, découdre la piqûre et la refaire plus près du repli.
# Plusieurs piqûres, chacune avec son ouverture.
close-gap-sew-rows = { $band ->
    [yes] Endroit dessus, fermer les ouvertures des { $rows } piqûres, d’abord celle de la pliure. Étirer la coulisse à plat à la seule ouverture : { $gap } chacune, { $stitch }, dans le prolongement de la piqûre, en la dépassant de { $past } aux deux bouts.
   *[no] Intérieur dessus, fermer les ouvertures des { $rows } piqûres, d’abord celle de la pliure. Étirer la coulisse à plat à la seule ouverture : { $gap } chacune, { $stitch }, dans le prolongement de la piqûre, en la dépassant de { $past } aux deux bouts.
 }
    .check = Chaque piqûre est continue, et chaque élastique glisse sous le doigt.
    .remedy = Si un élastique est pris, découdre cette piqûre et la refaire à côté de lui.
# L’ouverture est dans la couture verticale d’une ceinture, en travers de la coulisse.
close-gap-seam = Rapprocher à la main les deux pliures de l’ouverture à petits points, { $gap } en tout, et arrêter le fil à l’intérieur.
    .check = La couture est de nouveau entière, et l’élastique glisse sous le doigt.
    .remedy = Si l’élastique est pris, défaire les points et ne piquer que le tissu.

## L’ouverture d’une couture

close-gap-aim-seam = La couture { PIECE($pieces, case: "of") } est fermée d’un bout à l’autre.
close-gap-sew-seam = Mettre sur l’envers { PIECE($pieces) } et poser les deux marges bord à bord à l’ouverture. Fermer les { $gap } à { $seam-width } des bords, { $stitch }, dans le prolongement de la couture, en la dépassant de { $past } aux deux bouts.
    .check = Vue de l’endroit, la couture est continue.
    .remedy = Là où elle dévie, découdre ce tronçon et le refaire sur la ligne.
