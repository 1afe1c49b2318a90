### Bords en coupe qui sont dans une bande : bande de bordure, ceinture plate, ruban plié.

## Une bande de bordure

figure-binding-shows = { $shows } visibles
figure-binding-alt = Coupe du bord bordé, endroit dessus : { PIECE($strip) }, piquée à { $seam-width } du bord, rabattue autour de lui de sorte que { $shows } se voient, son repli de { $turn } pris derrière.
figure-binding-caption = Le bord bordé, en coupe.{ figure-hatched }

## Une ceinture plate

figure-fitted-depth = { $depth } de haut
# Le nom de la ceinture, sans article.
figure-fitted-band = { $band-label }, pliure en haut
figure-fitted-alt = Coupe { PIECE($band, case: "of") }, endroit dessus : piquée à { $seam-width } du bord, rabattue, { $depth } de haut, son bord replié piqué à l’intérieur.
figure-fitted-caption = La ceinture en coupe : tous les bords bruts sont dedans.{ figure-hatched }

## Un ruban plié

figure-tape-alt = Coupe du bord dans le ruban ({ $tape }) plié, qui couvre { $half } des deux côtés, une piqûre à travers tout.
figure-tape-caption = Le bord brut est dans la pliure du ruban ({ $tape }).
figure-band-ends-top = Le bout du dessus
figure-band-ends-beneath = Le bout du dessous
figure-band-ends-alt = La ceinture pliée en deux, endroit contre endroit, au-dessus de la jupe. Au bout du dessus, une piqûre descend à { $seam-width } du bord, au ras de l’ouverture ; au bout du dessous, qui dépasse, elle descend à { $seam-width } du bord, tourne le coin et suit la ligne de couture jusqu’à la jupe.
figure-band-ends-caption = Les deux bouts de la ceinture, envers dessus, et leurs piqûres.
