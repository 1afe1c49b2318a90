### Coutures qui enferment leurs bords bruts, en coupe : anglaise, rabattue, à recouvrement.
### $upper et $lower : les pièces de l’épaisseur du dessus et de celle du dessous.

## Anglaise

figure-french-second = La seconde couture, à la machine
figure-french-trimmed = recoupée à { $trim }
figure-french-first = première couture
# $upper-label, $lower-label (texte) : les noms que l’auteur donne aux pièces.
figure-french-plies = { $upper-label } dessus, { $lower-label } dessous
figure-french-alt = Coupe d’une couture anglaise, endroit contre endroit : la première couture de { $first } est sur la pliure, sa marge recoupée à { $trim } entre les épaisseurs ; la seconde piqûre est à { $second } de la pliure.
figure-french-caption = Les bords bruts sont dans la seconde couture.{ figure-hatched }

## Rabattue

figure-felled-seen = Envers dessus
figure-felled-alt = Coupe d’une couture rabattue, envers dessus : une marge de { $seam-width } repliée autour d’une autre recoupée à { $trim }, couchée à plat sur { $fell } de large et piquée le long de sa pliure.
figure-felled-caption = La marge large se referme sur l’étroite.{ figure-hatched }

## À recouvrement

figure-lapped-upper = { $upper-label }, dessus
figure-lapped-lower = { $lower-label }, dessous
figure-lapped-alt = { $turned ->
    [yes] Coupe d’une couture à recouvrement, endroit dessus : { PIECE($upper) } sur { PIECE($lower) } de { $lap }, piquée à { $from-fold } de la pliure.
   *[no] Coupe d’une couture à recouvrement, endroit dessus : { PIECE($upper) }, sans repli, sur { PIECE($lower) } de { $lap }, piquée à { $from-fold } de son bord.
 }
figure-lapped-caption = Le bord du dessus est posé sur celui du dessous.{ figure-hatched }
