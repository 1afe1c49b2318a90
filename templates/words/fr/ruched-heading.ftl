### Froncer un volant sous son bord, pour qu’une tête se dresse au-dessus des rangs, et le coudre à travers eux.

ruched-heading-title = Coudre { PIECE($flounce) } avec une tête au-dessus de la couture
ruched-heading-aim = { $cloth } de tissu tiennent sur { $length } : { $ratio } pour 1.

ruched-heading-mark = Marquer les quarts { EDGE($edge, case: "of") } et { EDGE($to, case: "of") } : tous les { $cloth-part } sur { PIECE($flounce, form: "short") }, tous les { $part } sur { PIECE($to, form: "short") }.

## Froncer

ruched-heading-first-row = Piquer un rang de fronces au point le plus long à { $heading } sous { EDGE($edge) } ; sans point d’arrêt, laisser { $tail } de fil aux deux bouts.
ruched-heading-second-row = Piquer un second rang à { $apart } sous le premier.
    .check = Les deux rangs courent côte à côte.
ruched-heading-pull = Tirer les deux fils de canette jusqu’à ce que chaque quart mesure { $part }.
    .check = La ligne froncée mesure { $length } ; la tête au-dessus est libre.
    .tolerance = jusqu’à { $ease } trop court : l’embu se résorbe
    .remedy = Plus de { $ease } trop court : relâcher les fronces. Trop long : resserrer.

## Coudre

ruched-heading-mark-line = Tracer sur l’endroit une ligne à { $lap } au-dessus { EDGE($to, case: "of") }.
ruched-heading-lay = Y poser { PIECE($flounce) }, endroit dessus, le rang supérieur sur la ligne, et { pin } aux quarts, puis tous les { $spacing }.
ruched-heading-sew = Piquer sur les deux rangs de fronces depuis l’endroit, { $length } chacun, { $stitch }.
    .check = La tête se dresse de { $heading } au-dessus de la couture sur toute la longueur.
    .tolerance = { $frill-off } de plus ou de moins
    .remedy = Découdre là où la piqûre a quitté les fronces et repiquer.
