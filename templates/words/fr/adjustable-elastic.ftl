### Passer dans une coulisse un élastique à boutonnières ; son bout se boutonne à l’intérieur et se rallonge.
### $piece : la ceinture, ou la pièce dont le bord a été replié.

adjustable-elastic-title = Enfiler l’élastique qui se boutonne
    .number = { $first }
adjustable-elastic-aim = L’élastique fait d’abord { $first } de tour, et peut être rallongé à { $out }.

adjustable-elastic-bars = Piquer une petite bride d’arrêt au point zigzag aux deux bouts de l’ouverture de { $gap } : elle reste ouverte.
    .check = En tirant, on ne l’ouvre pas davantage.
adjustable-elastic-try = Avant de couper, épingler l’élastique en une boucle de { $first } avec une épingle à nourrice. La passer autour de la taille, s’asseoir et inspirer.
    .check = Elle tient et ne serre pas trop. Deux doigts passent dessous.
    .remedy = Épingler plus long ou plus court jusqu’à ce que ce soit le cas, prendre cette longueur au lieu de { $first }, et couper d’autant plus ou moins.
adjustable-elastic-cut = Couper l’élastique ({ $elastic }) à { $cut } : { $out } de tour, { $reach } pour atteindre le bouton, { $fast } pour le bout fixe et { $hem } pour l’autre. Couper entre deux boutonnières.
    .check = Il mesure { $cut }, posé sans tension à côté du mètre ruban.
adjustable-elastic-lay-end = Replier { $half-fast } d’un bout. Vu de l’intérieur, le poser dans la coulisse à gauche de l’ouverture, sa pliure au ras du bout gauche, l’élastique s’en éloignant.
adjustable-elastic-fast = Le coudre d’un carré de zigzag à travers l’élastique et la seule épaisseur intérieure.
    .check = Tirer fort : rien ne cède. Aucun point ne se voit à l’extérieur.
    .remedy = Repiquer le carré.
adjustable-elastic-thread = Fixer une épingle à nourrice ou un passe-lacet à l’autre bout et lui faire faire le tour de la coulisse, jusqu’à sortir par l’ouverture. Repousser le tissu sur l’élastique au fur et à mesure.
    .check = L’élastique est à plat tout autour.
    .remedy = S’il est vrillé, revenir en arrière d’une main, le détordre et continuer.
adjustable-elastic-hem = Replier ce bout deux fois, de { $half-hem } à chaque fois, et piquer en travers.
adjustable-elastic-button = Coudre un bouton plat de { $button } de large à l’intérieur de la coulisse, à { $reach } à gauche de l’ouverture : le bout libre passe sur le bout fixe. Ne prendre que l’épaisseur intérieure.
    .check = Une forte traction ne le bouge pas, et aucun point ne se voit à l’extérieur.
    .remedy = Le recoudre encore une fois.
adjustable-elastic-close = Resserrer l’élastique à { $first } et le boutonner là. Les boutonnières suivantes, tous les { $slots }, le rallongent jusqu’à { $more }.
    .check = Le bout est à plat à l’intérieur, et l’ampleur est la même tout autour.
    .remedy = Répartir l’ampleur avec les doigts le long de l’élastique.
