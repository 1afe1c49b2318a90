### Rubans à anneaux et cordons à l’intérieur du dos, qui relèvent une traîne.

bustle-tapes-title = Poser les rubans de relevage
    .number = { $up }
bustle-tapes-aim = { $tapes ->
    [one] Un ruban relève l’ourlet de { $up } au dos.
   *[other] { $tapes } rubans relèvent l’ourlet de { $up } au dos.
 }

## Tracer

bustle-tapes-middle = { $from ->
    [seam] Retourner { PIECE($piece) } sur l’envers. Mesurer un quart du tour, { $quarter }, depuis { side-seam } vers le dos : c’est le milieu du dos. De là, tracer une ligne droit vers le bas.
    [fold] Retourner { PIECE($piece) } sur l’envers. Plier en deux à { side-seam } et chercher le milieu de la moitié dos. De là, tracer une ligne droit vers le bas.
    [back] Retourner { PIECE($piece) } sur l’envers. Plier le lé du dos en deux dans sa longueur, côté sur côté : le pli est le milieu du dos. Y tracer une ligne droite.
   *[front] Retourner { PIECE($piece) } sur l’envers. Plier en deux au milieu du lé de devant : l’autre pli est le milieu du dos. Y tracer une ligne droit vers le bas.
 }
bustle-tapes-mark-one = Cette ligne est la place du ruban. Y marquer { $below } sous le bord supérieur, puis { $long } plus bas.
    .check = Le repère du bas est à { $long } sous celui du haut.
    .tolerance = { $off } de plus ou de moins
    .remedy = Mesurer à nouveau depuis le bord supérieur fini.
bustle-tapes-mark-upper = { $middle ->
    [yes] Marquer où commencent les rubans, le mètre à plat sur le tissu : à { $below } du bord supérieur vers le bas, sur la ligne et à { $upper } d’elle de chaque côté.
   *[no] Marquer où commencent les rubans, le mètre à plat sur le tissu : à { $below } du bord supérieur vers le bas, à { $upper } de la ligne de chaque côté.
 }
bustle-tapes-mark-lower = { $middle ->
    [yes] Mesurer de même et marquer à { $foot } du bord supérieur vers le bas : sur la ligne, et à { $lower } d’elle de chaque côté.
   *[no] Mesurer de même et marquer à { $foot } du bord supérieur vers le bas : à { $lower } de la ligne de chaque côté.
 }
    .check = À gauche et à droite de la ligne, les repères sont placés de même.
    .remedy = Mesurer à nouveau depuis la ligne et depuis le bord supérieur fini.
bustle-tapes-lines = Tracer { $tapes } lignes droites, de chaque repère du haut vers celui du bas qui est dessous. Arrêter chacune au bout de { $long }, mesurés sur elle.
    .check = Chaque ligne mesure { $long }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Mesurer à nouveau la ligne depuis son repère du haut.

## Coudre et enfiler

bustle-tapes-sew = Couper { $cut } de { $tape } et rentrer { $turn } aux deux bouts. Épingler sur la ligne, du repère du haut vers le bas.
bustle-tapes-stitch = Poser l’ouvrage pour que seul le dos soit sous l’aiguille. Piquer les deux longs bords du ruban, { $stitch }. Les piqûres se voient sur l’endroit.
    .check = Rien d’autre que le dos n’est pris sous le ruban.
    .remedy = Découdre là où autre chose est pris et refaire ce passage.
bustle-tapes-rings = Coudre à la main { $rings } anneaux sur le ruban, à { $every } l’un de l’autre, le premier au bout du haut et le dernier au bout du bas : huit points chacun, dans le ruban et non dans la jupe.
    .check = Tiré d’un coup sec, aucun anneau ne bouge.
    .remedy = Le recoudre avec du fil double.
bustle-tapes-thread = Couper { $cord-long } de { $cord }. Nouer deux fois un bout à l’anneau du bas et passer l’autre dans tous les anneaux jusqu’à celui du haut.
bustle-tapes-draw = Poser la jupe sur la table. Tirer chaque cordon jusqu’à ce que son ruban mesure { $left }. Nouer le cordon à l’anneau du haut en ne passant qu’une boucle dans le nœud, pour qu’un coup sec sur le bout lâche la traîne.
    .check = En tirant sur l’ourlet, le ruban garde ses { $left }.
    .tolerance = { $off } de plus ou de moins
    .remedy = Défaire le nœud, tirer à nouveau le cordon et y marquer la place du nœud.
bustle-tapes-draw-each = Poser la jupe sur la table. Tirer chaque cordon jusqu’à ce que son ruban ait cette longueur, du milieu du dos vers l’extérieur, à gauche comme à droite : { $lefts }.
bustle-tapes-knot = Nouer le cordon à l’anneau du haut en ne passant qu’une boucle dans le nœud, pour qu’un coup sec sur le bout lâche la traîne.
    .check = Si l’on tire sur l’ourlet, chaque ruban garde sa longueur.
    .tolerance = { $off } de plus ou de moins
    .remedy = { bustle-tapes-draw.remedy }
bustle-tapes-mark-cord = Marquer le cordon à son nœud de deux points d’une autre couleur, qui restent{ "\u00A0" }: on le noue là chaque fois que la traîne est relevée.
bustle-tapes-tuck = Enrouler autour de deux doigts le bout qui reste et épingler ce petit rouleau au ruban avec une petite épingle à nourrice fermée, pour que rien ne pende.
