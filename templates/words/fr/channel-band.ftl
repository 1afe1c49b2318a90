### Plier en deux une ceinture fermée et piquer le long de sa pliure une coulisse pour l’élastique, avant de la monter.
### $band est la ceinture ; $stack ses deux bords vifs, montés comme un seul.

channel-band-title = Piquer la coulisse { PIECE($band, case: "of") }
channel-band-aim = { PIECE($band, at: "start") } : pliée en deux, avec une coulisse de { $channel } le long de la pliure.

channel-band-fold = Ouvrir au fer la couture verticale qui a fermé le rond { PIECE($band, case: "of") }. Plier la ceinture en deux dans la longueur, envers contre envers, les deux bords coupés bord à bord, et marquer la pliure au fer.
    .check = De la pliure aux bords coupés, il y a { $depth } tout autour.
    .tolerance = { $off } de plus ou de moins
    .remedy = Ouvrir au fer et replier à partir des bords coupés.
channel-band-edge-stitch = Piquer à { $edge-stitch } de la pliure, { $stitch }, { $length } tout autour. Finir en repiquant trois points sur le début.
    .check = La pliure est nette et la piqûre la suit sans vague.
    .remedy = Découdre la vague et la repiquer sans tirer sur la ceinture.
channel-band-row = Piquer de même une seconde ligne à { $row } de la pliure.
    .check = Entre les deux piqûres, la coulisse a { $channel } de largeur tout autour : l’élastique y est à plat.
    .tolerance = { $off } de plus ou de moins
    .remedy = Là où elle est plus étroite, découdre la seconde ligne et la refaire.
