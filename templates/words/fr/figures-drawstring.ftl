### Un cordon dans sa coulisse.

figure-cord-through = Le cordon dans sa coulisse
figure-cord-front = milieu du devant
figure-cord-lengths = Longueurs, à la même échelle
figure-cord-casing = coulisse { $casing }
figure-cord-length = cordon { $cut }
figure-cord-behind = Au milieu du dos, le cordon est cousu à la ceinture.
figure-cord-alt = { $knotted ->
    [yes] Un cordon de { $cut } dans une coulisse de { $casing }, les deux bouts hors d’une ouverture de { $gap } au milieu du devant, un nœud à chaque bout, une bride d’arrêt au zigzag aux deux bouts de l’ouverture.
   *[no] Un cordon de { $cut } dans une coulisse de { $casing }, les deux bouts hors d’une ouverture de { $gap } au milieu du devant, chaque bout replié et cousu, une bride d’arrêt au zigzag aux deux bouts de l’ouverture.
 }
figure-cord-caption = Les deux bouts sortent de l’ouverture et ne peuvent pas rentrer : le cordon est tenu derrière.
