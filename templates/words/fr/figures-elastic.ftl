### L’élastique : en chemin dans la coulisse, ses bouts marqués et superposés, sa longueur ; et l’ouverture fermée.
### $band est la ceinture, ou la pièce dont le bord a été replié.

figure-elastic-through = Dans la coulisse
figure-elastic-bodkin = passe-lacet
figure-elastic-mark = Marquer les bouts
figure-elastic-lap = Superposer les bouts et piquer
figure-elastic-cut-end = bord coupé sur le trait
figure-elastic-shorten = Tracer la ligne, couper le bout du dessous
figure-elastic-cut-here = couper ici le bout du dessous
figure-elastic-lengths = Longueurs au repos, à la même échelle
figure-elastic-casing = coulisse { $casing }
figure-elastic-loop = boucle d’élastique { $loop }
figure-elastic-marked-alt = Un trait est tracé sur l’élastique à { $lap } d’un bout, et une croix à l’autre.
figure-elastic-through-alt = Un élastique de { $width } de large passe par une ouverture de { $gap }, son bout pendant au-dehors, épinglé { PIECE($band, case: "to") } ; un passe-lacet est fixé à l’autre bout.
figure-elastic-alt = Le bout à la croix est sur le trait, { $lap } sur l’autre, piqué au zigzag ; la boucle fermée fait { $loop } dans une coulisse de { $casing }.
figure-elastic-shorten-alt = Le bout du dessus est posé sur celui du dessous comme à l’essayage, tenu par une épingle à nourrice. Une ligne est tracée sur le bout du dessous là où finit celui du dessus, et le bout du dessous est coupé { $lap } plus loin, là où l’autre le couvre.
figure-elastic-alt-long = Le bout du dessus est posé sur celui du dessous jusqu’à la ligne, sur { $lap }, et piqué au zigzag ; l’anneau fermé fait { $loop } dans une coulisse de { $casing }.
figure-elastic-caption = Tenir le bout pour qu’il ne glisse pas à l’intérieur, et superposer les bouts, l’un sur le trait de l’autre.
figure-elastic-caption-lap = Superposer les bouts de sorte que l’un soit sur la ligne de l’autre.

## L’ouverture fermée

figure-gap-seen = Vu du côté où se fait la piqûre, à l’échelle.
figure-gap-alt = L’ouverture de { $gap } fermée par une piqûre qui dépasse la première de { $past } aux deux bouts.
figure-gap-caption = La piqûre de fermeture commence et finit sur la première.
