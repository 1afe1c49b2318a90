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
# L’ouverture est dans la couture verticale d’une ceinture, en travers de la coulisse.
close-gap-seam = Rapprocher à la main les deux pliures de l’ouverture à petits points, { $gap } en tout, et arrêter le fil à l’intérieur.
    .check = La couture est de nouveau entière, et l’élastique glisse sous le doigt.
    .remedy = Si l’élastique est pris, défaire les points et ne piquer que le tissu.
