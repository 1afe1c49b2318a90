### Coudre un élastique directement au bord et le tourner vers l’intérieur, sans coulisse.

sewn-elastic-title = Coudre l’élastique ({ $elastic }) à { EDGE($edge) }
sewn-elastic-aim = L’élastique resserre { $cloth } de tissu à { $length }.
sewn-elastic-join = Couper { $cut } d’élastique ({ $elastic }). Superposer les bouts de { $overlap } et les joindre par trois rangs de zigzag.
sewn-elastic-mark = { $parts ->
    [8] Marquer les huitièmes de la boucle, tous les { $part }, et ceux { EDGE($edge, case: "of") }, tous les { $cloth-part }, les premiers repères à la jonction et à { side-seam }.
   *[4] Marquer les quarts de la boucle, tous les { $part }, et ceux { EDGE($edge, case: "of") }, tous les { $cloth-part }, les premiers repères à la jonction et à { side-seam }.
 }
sewn-elastic-pin = Poser la boucle sur l’envers, le long { EDGE($edge, case: "of") }, son bord au ras du bord du tissu, et l’épingler aux repères.
    .check = La jonction est à { side-seam } et la boucle n’est pas vrillée.
    .remedy = La détacher là où elle vrille et la retourner.
sewn-elastic-sew = Élastique dessus, l’étirer de repère en repère jusqu’à ce que le tissu soit à plat dessous, et piquer le long du bord du tissu, { $cloth } tout autour. Tirer autant devant que derrière le pied : tirer devant seulement plie l’aiguille.
    .check = Le tissu est réparti également entre les repères.
    .remedy = Découdre de repère en repère et étirer à nouveau.
sewn-elastic-turn = Replier élastique et bord de { $turn-width } vers l’intérieur. Par l’endroit, étiré à plat, piquer tout autour le long du bord inférieur de l’élastique.
    .check = L’élastique est pris tout autour et reste à plat.
    .remedy = Repiquer là où il a été manqué.
sewn-elastic-measure = Mesurer le bord au repos : { $length }.
    .check = Il mesure { $length }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Plus long : tenir le fer à vapeur au-dessus sans toucher, il se resserre. Plus court : l’étirer une fois à fond.
