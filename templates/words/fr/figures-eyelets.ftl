### Deux trous dans une coulisse à venir, vus de l’endroit.

figure-eyelets-head = Vu de l’endroit, avant que la coulisse soit repliée
figure-eyelets-front = milieu du devant
figure-eyelets-note = À l’échelle. En pointillé : les carrés derrière.
figure-eyelets-alt = { PIECE($piece, at: "start") }, vu de l’endroit : deux { cord-holes } de { $hole }, à { $apart } l’un de l’autre, la moitié de chaque côté du milieu du devant, à { $from-edge } du bord.
figure-eyelets-caption = Les deux sont à { $from-edge } du bord, à la moitié de { $apart } du milieu du devant.
