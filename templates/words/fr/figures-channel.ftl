### Coupe d’une ceinture pliée et piquée pour son élastique.

figure-channel-wide = coulisse { $channel }
figure-channel-fold = pliure
figure-channel-raw = bords coupés
figure-channel-alt = Coupe { PIECE($band, case: "of") }, intérieur dessus : pliée en deux, { $deep } de la pliure aux bords coupés, une piqûre à { $edge-stitch } et une à { $row } de la pliure, la coulisse de { $channel } entre les deux.
figure-channel-caption = La ceinture en coupe, sa coulisse le long de la pliure.{ figure-hatched }
