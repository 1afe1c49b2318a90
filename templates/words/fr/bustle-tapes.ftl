### Rubans à anneaux et cordons à l’intérieur du dos, qui relèvent une traîne.

bustle-tapes-title = Poser les rubans de relevage
    .number = { $up }
bustle-tapes-aim = { $tapes ->
    [one] Un ruban relève l’ourlet de { $up } au dos.
   *[other] { $tapes } rubans relèvent l’ourlet de { $up } au dos.
 }

## Tracer

bustle-tapes-middle = { $ring ->
    [yes] Retourner { PIECE($piece) } sur l’envers. Mesurer un quart du tour, { $quarter }, depuis { side-seam } vers le dos : c’est le milieu du dos. De là, tracer une ligne droit vers le bas.
   *[no] Retourner { PIECE($piece) } sur l’envers. Plier en deux à { side-seam } et chercher le milieu de la moitié dos. De là, tracer une ligne droit vers le bas.
 }
bustle-tapes-mark = { $middle ->
    [yes] { $tapes ->
        [one] Cette ligne est la place du ruban. Y marquer { $below } sous le bord supérieur, puis { $long } plus bas.
       *[other] Tracer les autres lignes à { $apart } d’elle et l’une de l’autre, autant de chaque côté. Sur chacune, marquer { $below } sous le bord supérieur, puis { $long } plus bas.
    }
   *[no] Tracer les lignes des rubans à { $first } de chaque côté, les autres à { $apart } de celles-ci. Sur chacune, marquer { $below } sous le bord supérieur, puis { $long } plus bas.
 }
    .check = Les repères du bas sont de niveau, { $long } sous ceux du haut.
    .tolerance = { $off } de plus ou de moins
    .remedy = Mesurer à nouveau depuis le bord supérieur fini.

## Coudre et enfiler

bustle-tapes-sew = Couper { $cut } de { $tape } et rentrer { $turn } aux deux bouts. Épingler sur la ligne d’un repère à l’autre et piquer les deux longs bords, { $stitch }.
bustle-tapes-rings = Coudre à la main { $rings } anneaux sur le ruban, à { $every } l’un de l’autre, le premier au bout du haut et le dernier au bout du bas : huit points chacun, dans le ruban et non dans la jupe.
    .check = Tiré d’un coup sec, aucun anneau ne bouge.
    .remedy = Le recoudre avec du fil double.
bustle-tapes-thread = Couper { $cord-long } de { $cord }. Nouer deux fois un bout à l’anneau du bas et passer l’autre dans tous les anneaux jusqu’à celui du haut.
bustle-tapes-draw = Une fois la jupe finie, l’enfiler. Tirer chaque cordon jusqu’à ce que son ruban mesure { $left } et le nouer en boucle à l’anneau du haut.
    .check = L’ourlet est { $up } plus haut au dos et ne touche pas le sol en marchant.
    .tolerance = { $off } de plus ou de moins
    .remedy = Tirer tous les cordons un peu plus, d’autant chacun, et marquer l’endroit sur chaque cordon.
