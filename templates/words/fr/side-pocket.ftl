### Monter une poche dans l’ouverture d’une couture.
### $bag : le sac de poche, deux exemplaires ; $on : la pièce dont la couture a l’ouverture.

side-pocket-title = Monter une poche dans la couture { PIECE($on, case: "of") }
side-pocket-aim = L’ouverture de { $gap } donne dans un sac de { $wide } de large et { $high } de haut.

side-pocket-mark = Marquer l’ouverture sur les deux marges de la couture, à { $begins } et à { $ends } sous le bord supérieur, et le début du sac { $above } au-dessus de l’ouverture.
side-pocket-lay = Poser un exemplaire { PIECE($bag, case: "of") } sur chaque marge, endroit contre endroit, son bord vertical au ras du bord de la marge, son haut { $above } au-dessus de l’ouverture. Épingler les deux.
    .check = Les deux sont à la même hauteur et tournés à l’opposé de la couture.
    .tolerance = { $close-off } de plus ou de moins
    .remedy = Déplacer l’un d’eux avant de piquer.
side-pocket-sew = Piquer chaque exemplaire à sa seule marge, à { $seam-width } du bord, { $high }, { $stitch }, point d’arrêt aux deux bouts.
    .check = Le tissu extérieur n’est pas pris.
    .remedy = Découdre là où il est pris et repiquer ce passage.
side-pocket-turn = Rabattre les deux exemplaires par-dessus leurs coutures et les repasser ensemble vers le devant, endroit contre endroit.
side-pocket-close = Épingler les deux exemplaires l’un sur l’autre et les piquer ensemble à { $seam-width } du bord, de la couture le long du haut, en descendant le côté et le long du bas jusqu’à la couture, { $around }, { $stitch }.
    .check = Une main atteint les deux coins et rien ne passe au travers.
    .remedy = Piquer un second rang là où le premier a quitté le tissu.
side-pocket-bars = Endroit dessus, faire une bride de { $bar } en travers de la couture aux deux bouts de l’ouverture, quatre piqûres l’une sur l’autre.
