### Bords finis en coupe : repliés deux fois et piqués, ou relevés sous un galon.

## Repliés deux fois

figure-turned-before = Avant : à plat, envers dessus
figure-turned-after = Après : replié et piqué
figure-turned-alt-machine = Coupe du bord { PIECE($piece, case: "of") } : replié de { $first }, puis de { $second } sur l’envers et piqué le long de la pliure intérieure.
figure-turned-alt-hand = Coupe du bord { PIECE($piece, case: "of") } : replié de { $first }, puis de { $second } sur l’envers et cousu à la main.
# Pas de premier rentré : le bord a été surfilé.
figure-turned-alt-once = Coupe du bord { PIECE($piece, case: "of") } : replié de { $second } sur l’envers et piqué.
figure-turned-caption = Le bord en coupe, avant et après le repli.{ figure-hatched }

## Sous un galon

figure-trimmed-width = { $trim }, { $width }
figure-trimmed-fold = pliure, au ras du galon
figure-trimmed-alt-one-row = Coupe du bord, endroit dessus : { PIECE($piece) } relevée de { $turn } sur l’endroit, le galon ({ $trim }) de { $width } par-dessus, au ras de la pliure, piqué à { $row } de la pliure.
figure-trimmed-alt-two-rows = Coupe du bord, endroit dessus : { PIECE($piece) } relevée de { $turn } sur l’endroit, le galon ({ $trim }) de { $width } par-dessus, au ras de la pliure, piqué à { $row } de la pliure et encore à { $below } du bord intérieur du galon.
figure-trimmed-caption = Le bord en coupe : le galon cache le bord relevé.{ figure-hatched }
figure-trimmed-alt-together = Coupe du bord, endroit dessus : le galon ({ $trim }) de { $width } a été piqué le long du bord vif { PIECE($piece, case: "of") }, à { $row }, puis les deux relevés de { $turn } et surpiqués à { $below } du bord supérieur du galon.
figure-trimmed-caption-together = Le bord en coupe : le bord vif est à l’intérieur, le galon autour de la pliure.{ figure-hatched }
