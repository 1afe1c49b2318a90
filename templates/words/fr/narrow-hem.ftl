### Replier un bord deux fois sur l’envers et piquer le long de la pliure intérieure.
### $edge : le bord ourlé.

narrow-hem-title = Ourler { EDGE($edge) }
    .number = { $first-turn } + { $second-turn }
narrow-hem-aim = Aucun bord brut ne se voit à l’ourlet.

narrow-hem-first-turn = Replier { EDGE($edge) } de { $first-turn } sur l’envers et marquer la pliure au fer.
narrow-hem-second-turn = Le replier encore de { $second-turn }, de sorte que le bord coupé soit à l’intérieur. Marquer la nouvelle pliure au fer, et { pin } l’ourlet.
    .check = L’ourlet a { $second-turn } de hauteur sur toute la longueur.
    .tolerance = { $off } de plus ou de moins
    .remedy = Déplier et repasser à nouveau là où il dévie.
narrow-hem-sew-ring = Commencer à { side-seam }, envers dessus. Piquer l’ourlet à { $from-fold } de sa pliure intérieure, { $length } tout autour, { $stitch }. Finir en repiquant trois points sur le début.
    .check = Les points prennent partout le repli.
    .remedy = Là où ils le manquent, repiquer ce passage.
narrow-hem-sew-flat = Envers dessus, piquer l’ourlet à { $from-fold } de sa pliure intérieure, { $length }, { $stitch }, point d’arrêt aux deux bouts.
    .check = { narrow-hem-sew-ring.check }
    .remedy = { narrow-hem-sew-ring.remedy }
