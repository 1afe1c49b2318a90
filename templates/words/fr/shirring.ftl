### Resserrer un rond par des rangs de fil élastique.

shirring-title = Froncer { EDGE($edge) } au fil élastique
    .number = { $cloth } → { $length }
shirring-aim = { $rows } rangs de fil élastique ({ $thread }) resserrent { $cloth } à { $length }.

## Essayer

shirring-wind = Enrouler le fil élastique ({ $thread }) sur la canette à la main, sans l’étirer. Le fil supérieur reste tel quel.
shirring-iron = Régler le fer sur vapeur : deux points ou plus, jusqu’à ce qu’il fume. On le tient au-dessus des rangs, sans les toucher.
shirring-try = Régler la machine, { $stitch }, et faire un essai : { $rows } rangs sur une bande de { $trial }.
    .check = Après vapeur, elle se resserre à { $trial-short }.
    .tolerance = { $trial-off } de plus ou de moins
    .remedy = Plus longue : allonger le point ou serrer un peu la canette. Plus courte : l’inverse.

## Piquer les rangs

shirring-mark = Tracer { $rows } lignes sur l’endroit : la première à { $from-edge } { EDGE($edge, case: "of") }, les autres à { $spacing } l’une de l’autre.
shirring-sew = Piquer chaque ligne tout autour, { $cloth }, endroit dessus, à partir de { side-seam }. À partir du second rang, tenir le tissu étiré à plat. Sans point d’arrêt ; laisser { $tail } des deux fils au début et à la fin.
    .check = Les rangs courent côte à côte et aucun point n’a sauté.
    .remedy = Un passage sauté : le repiquer par-dessus le vide.
shirring-tails = Tirer les bouts de fil de chaque rang sur l’envers, nouer la fin au début, et les couper à { $knot }.
shirring-steam = Tenir le fer juste au-dessus des rangs et leur donner de la vapeur ; ne pas les toucher avec le fer.
    .check = Le bord mesure { $length } au repos et s’étire à { $cloth }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Trop long : piquer un rang de plus entre deux autres. Trop court : l’étirer une fois et mesurer à nouveau.
