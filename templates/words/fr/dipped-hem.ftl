### Couper un bord inférieur plus haut devant que derrière, pour un ourlet plongeant ou une traîne.

dipped-hem-title = Couper en plongeant { EDGE($edge) }
    .number = { $front }
dipped-hem-aim = L’ourlet remonte de { $side } sur les côtés et de { $front } devant.

## Trouver le devant et le dos

dipped-hem-hold = { $front-gore ->
    [yes] Retourner { PIECE($piece) } sur l’endroit et plier cette pièce en deux au milieu du lé de devant : l’autre pli est le milieu du dos.
   *[no] Retourner { PIECE($piece) } sur l’endroit et tenir cette pièce comme on la porte, { side-seam } à gauche de la personne qui la porte.
 }
dipped-hem-mark = { $front-gore ->
    [yes] Marquer les quarts { EDGE($edge, case: "of") }, tous les { $quarter } à partir du milieu du devant : le milieu du devant, un côté, le milieu du dos, l’autre côté.
   *[no] Marquer les quarts { EDGE($edge, case: "of") }, tous les { $quarter } à partir de { side-seam } : le milieu du devant, l’autre côté, le milieu du dos.
 }
    .check = Le dernier quart finit où le premier a commencé.
    .tolerance = { $quarter-off } de plus ou de moins
    .remedy = Répartir la différence entre les quatre.
dipped-hem-tag = Épingler une étiquette de papier au repère du devant et à celui du dos.

## Tracer et couper

dipped-hem-dots = Sur l’endroit, à chaque repère, mesurer tout droit vers le haut depuis le bord : { $front } devant, { $side } des deux côtés, rien au dos. Y faire un point : l’ourlet fini est d’autant plus haut que derrière.
    .check = L’étiquette du point le plus haut dit devant.
    .remedy = Si devant et dos sont intervertis, effacer les points et mesurer à nouveau.
dipped-hem-between = Entre les repères, faire un point tous les { $every }. Du devant à chaque côté, leurs hauteurs sont { $to-side } ; de chaque côté au dos, { $to-back }.
    .check = À gauche et à droite du devant, les points sont à la même hauteur, et vers le dos aucun n’est plus haut que le précédent.
    .remedy = Effacer le point qui sort de la ligne et le mesurer à nouveau.
dipped-hem-line = Tracer une ligne souple par tous les points, à l’horizontale devant et au dos.
    .check = La ligne n’a pas d’angle sur les côtés.
    .remedy = La retracer, un peu plus ronde.
dipped-hem-cut = Couper sur la ligne, une épaisseur à la fois.
    .check = Le nouveau bord mesure { $length } tout autour.
    .tolerance = { $off } de plus ou de moins
    .remedy = Plier au milieu du devant et au milieu du dos, gauche sur droite. Là où les deux diffèrent, recouper le plus long sur l’autre.
