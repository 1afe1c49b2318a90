### Ce qui est posé sur un bord pour être pris dans sa couture.

figure-caught-edges = bords coupés
figure-caught-dotted = en pointillé : la couture à venir
figure-caught-alt = Coupe { EDGE($in, case: "of") }, endroit dessus : { EDGE($strip) } est posé dessus, bords coupés au même niveau, bâti à { $row } d’eux ; la couture vient à { $seam-width } des bords.
figure-caught-caption = La bande est bâtie dans la marge, juste à côté de la couture à venir.{ figure-hatched }
figure-piping-alt = Coupe { EDGE($in, case: "of") }, endroit dessus : { PIECE($strip) }, plié autour d’un cordon de { $thick } d’épaisseur, ses bords coupés au ras du bord, est bâti tout contre le cordon ; la couture vient à { $seam-width } des bords.
figure-piping-caption = Le cordon est juste à l’intérieur de la couture à venir.{ figure-hatched }
