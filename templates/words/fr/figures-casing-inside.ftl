### Une coulisse vue à plat : ses passages, ou son élastique qui se boutonne.

figure-channels-head = La coulisse et ses piqûres
figure-channels-note = La hauteur est à l’échelle, la longueur non.
figure-channels-alt = La coulisse { PIECE($piece, case: "of") } vue à plat, la pliure en haut : { $channels } passages de { $channel }, { $rows ->
    [one] une nouvelle piqûre
   *[other] { $rows } nouvelles piqûres
 } entre eux{ $open ->
    [yes] , et une ouverture de { $gap } dans chaque piqûre
   *[no] {""}
 }.
figure-channels-caption = { $channels } passages de { $channel } chacun.
figure-buttoned-head = L’intérieur à l’ouverture
figure-buttoned-note = Ce qui est dans la coulisse est en pointillé. Pas à l’échelle.
figure-buttoned-alt = L’intérieur de la coulisse { PIECE($piece, case: "of") } à son ouverture : un bout de l’élastique est cousu à l’intérieur, l’autre sort et se boutonne à { $reach } de l’ouverture.
figure-buttoned-caption = Un bout est fixe, l’autre à son bouton : { $first } de tour, rallongé { $out }.
