### Piquer des lignes le long d’une coulisse, pour plusieurs rangs d’élastique.
### $piece : la ceinture, ou la pièce dont le bord a été replié ; $band : lequel des deux.

divide-casing-title = Partager la coulisse en { $channels } passages
    .number = { $channel }
divide-casing-aim = { $channels } passages sont l’un sous l’autre, chacun de { $channel } de largeur, pour un rang d’élastique chacun.

divide-casing-mark = { $band ->
    [yes] { $rows ->
        [one] Tracer une ligne tout autour de la coulisse sur l’endroit, à { $channel } sous la pliure.
       *[other] Tracer { $rows } lignes tout autour de la coulisse sur l’endroit : la première à { $channel } sous la pliure, chaque suivante { $channel } plus bas.
     }
   *[no] { $rows ->
        [one] Tracer une ligne tout autour de la coulisse sur l’intérieur, à { $channel } sous la pliure.
       *[other] Tracer { $rows } lignes tout autour de la coulisse sur l’intérieur : la première à { $channel } sous la pliure, chaque suivante { $channel } plus bas.
     }
 }
    .check = D’une ligne à l’autre, et de la dernière à la piqûre de la coulisse, il y a { $channel }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Effacer la ligne mal placée et la retracer.
# L’ouverture est dans la piqûre de la coulisse, et chaque nouvelle piqûre laisse la même longueur ouverte.
divide-casing-sew-gap = Piquer sur chaque ligne d’un bout de l’ouverture à l’autre en faisant le tour, { $sewn }, { $stitch }, en laissant une ouverture de { $gap } juste au-dessus de la première. Faire un point d’arrêt aux deux bouts.
    .check = Une chute de l’élastique glisse dans chaque passage, et les ouvertures sont l’une au-dessus de l’autre.
    .remedy = Découdre la piqûre là où la chute se coince, et la refaire sur sa ligne.
# L’ouverture est une fente en travers de la coulisse, dans une couture : les piqûres passent dessus.
divide-casing-sew = Piquer sur chaque ligne tout autour, { $sewn }, { $stitch }, en travers de la couture ouverte aussi. Finir en repiquant trois points sur le début.
    .check = Une chute de l’élastique glisse dans chaque passage, et chacun a sa propre ouverture dans la couture.
    .remedy = Découdre la piqûre là où la chute se coince, et la refaire sur sa ligne.
