### Couper une longue bande en biais dans un carré.
### $lines : combien de largeurs de bande tiennent côte à côte dans le carré.

bias-strip-title = Couper { PIECE($piece) } en biais
bias-strip-aim = Un carré de { $side } donne { $gives } de biais large de { $width }, raccordé à 45 degrés.
bias-strip-cut-across = Tracer sur le carré { PIECE($piece, case: "of") } une ligne d’un coin à l’autre, longue de { $diagonal }, et couper dessus.
    .check = Les deux moitiés sont pareilles, chacune avec un angle droit.
    .remedy = Recouper le carré jusqu’à ce que ses côtés soient égaux, et couper à nouveau.
bias-strip-first-seam = Poser les moitiés endroit contre endroit, deux côtés droits l’un sur l’autre. Les pointes dépassent de { $seam-width } aux deux bouts. Piquer à { $seam-width } de ces côtés, { $stitch }, et ouvrir les marges au fer.
    .check = Ouvert, c’est un quadrilatère penché dont les longs bords sont en biais.
    .remedy = Si c’est un triangle, découdre et joindre deux autres côtés droits.
bias-strip-lines = Sur l’envers, tracer des lignes le long du bord en biais, tous les { $width } : { $lines } bandes. Couper ce qui reste après la dernière ligne.
    .check = Chaque bande a { $width } de large.
    .tolerance = { $off } de plus ou de moins
    .remedy = Retracer la ligne depuis le bord.
bias-strip-tube = Réunir les deux autres côtés droits en tube, endroit contre endroit, décalés d’une bande. La première ligne rejoint le bord.
bias-strip-second-seam = Épingler ligne sur ligne à { $seam-width } du bord et piquer là, { $stitch }. Ouvrir les marges au fer.
    .check = Une bande dépasse à chaque bout.
    .remedy = Si aucune ne dépasse, le tube a été fermé sans décalage : découdre et décaler d’une ligne.
bias-strip-cut = Commencer à la bande qui dépasse et couper sur la ligne, tour après tour, jusqu’au bout.
    .check = C’est une seule bande de { $gives }.
    .remedy = Là où les ciseaux ont quitté la ligne, continuer sur la suivante.
bias-strip-trim = La couper à { $length }, les deux bouts d’équerre.
