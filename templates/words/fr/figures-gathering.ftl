### Les fronces : où sont les rangs et de quel côté ils se tirent, et comment le tissu se répartit entre les repères.

figure-gathering-pleated = Plissé au plisseur, endroit dessus
figure-gathering-rows = Deux rangs de points longs, endroit dessus
figure-gathering-second-row = à { $second-row } du bord
figure-gathering-tails = bouts de fil
figure-gathering-pull = { $parts ->
    [8] Tirer les fils jusqu’à ce que chaque huitième soit assez court
   *[4] Tirer les fils jusqu’à ce que chaque quart soit assez court
 }
# $knotted: whether the tails of that end are knotted, not wound round a pin.
figure-gathering-held = { $knotted ->
    [yes] noués sur les deux faces
   *[no] tenus par une épingle
 }
figure-gathering-then-pin = puis enrouler sur une épingle
figure-gathering-lengths = À plat et froncé, à la même échelle
figure-gathering-short = { $short } froncé, un repère tous les { $part }
# Ce que sont les bouts du bord dessiné ; puis, là où le tissu est inégalement réparti, combien il y en a derrière.
figure-gathering-ends = { $ring ->
    [yes] le bord est un rond : les deux bouts sont la même couture
   *[no] 0 et le dernier repère sont les bouts
 }
figure-gathering-ends-behind = { figure-gathering-ends } ; { $behind } du tissu sont derrière
figure-gathering-pleated-alt = Plis au plisseur, endroit dessus : un rang à { $first-row } du bord.
figure-gathering-rows-alt = Deux rangs de points longs, endroit dessus, à { $first-row } et { $second-row } du bord. Des fils de { $tail } dépassent.
figure-gathering-pulled-alt = { $knotted ->
    [yes] Les fils d’un bout sont noués sur les deux faces et coupés, on tire sur ceux de l’autre bout jusqu’à { $part } d’un repère à l’autre, puis on les enroule autour d’une épingle.
   *[no] Les fils d’un bout sont enroulés autour d’une épingle, on tire sur ceux de l’autre bout jusqu’à { $part } d’un repère à l’autre, puis on les enroule aussi autour d’une épingle.
 }
figure-gathering-alt = { $method ->
    [attachment] Fronces par un rang du plisseur, à { $first-row } du bord : { $cloth } de tissu à plat réduits à { $short }, marqués à { $marks } du tissu à plat et tous les { $part } du bord froncé.
    [hand] Fronces par deux rangs de points devant, à { $first-row } et { $second-row } du bord : { $cloth } de tissu à plat réduits à { $short }, marqués à { $marks } du tissu à plat et tous les { $part } du bord froncé.
   *[machine] Fronces par deux rangs de points longs, à { $first-row } et { $second-row } du bord : { $cloth } de tissu à plat réduits à { $short }, marqués à { $marks } du tissu à plat et tous les { $part } du bord froncé.
 }
figure-gathering-caption = { $cloth } de tissu se réduisent à { $short }.
