### Une fente et son godet.

figure-godets-slit = La fente
figure-godets-set-in = Le godet posé
figure-godets-alt = Une fente de { $slit } depuis le bord, une piqûre autour de sa pointe ; à côté, le godet posé, pointu en haut et large de { $wide } à l’ourlet.
figure-godets-caption = Une fente et son godet.
