### La chaînette que laisse une surjeteuse, et comment elle s’arrête.

figure-tail-chain = La chaînette au bout de la couture
figure-tail-length = { $tail } environ
figure-tail-back = La ramener sous les points
figure-tail-needle = aiguille à bout rond
figure-tail-alt = Un bord surjeté avec une chaînette de { $tail } environ à son bout, ramenée sous les points avec une aiguille à bout rond.
figure-tail-caption = La chaînette retourne sous ses propres points ; le reste se coupe.
