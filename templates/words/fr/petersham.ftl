### Finir une taille par un ruban gros-grain tourné vers l’intérieur.

petersham-title = Finir { EDGE($edge) } par un ruban ({ $ribbon })
petersham-aim = Le ruban est à l’intérieur et tient la taille à { $length }.
petersham-cut = Couper { $cut } du ruban ({ $ribbon }).
petersham-lay = Poser le ruban sur l’endroit, le long { EDGE($edge, case: "of") }, son bord inférieur à { $lap } en deçà du bord coupé, de sorte qu’il dépasse au-dessus.
petersham-ends-ring = Replier { $end } au début, poser la fin sur le début au milieu du dos, et épingler.
    .check = { petersham-held.check }
    .tolerance = { petersham-held.tolerance }
    .remedy = { petersham-held.remedy }
petersham-ends-flat = Replier { $end } aux deux bouts, au ras des bouts du bord, et épingler.
    .check = { petersham-held.check }
    .tolerance = { petersham-held.tolerance }
    .remedy = { petersham-held.remedy }
# Dit seulement comme parties des deux ci-dessus.
petersham-held =
    .check = Sur le bord, le ruban mesure { $length }.
    .tolerance = { $off } de plus ou de moins
    .remedy = { $gathered ->
        [yes] Resserrer ou relâcher les fronces.
       *[no] Répartir la différence entre les coutures.
     }
petersham-sew = Piquer à { $close } du bord inférieur du ruban, { $length }, { $stitch }, point d’arrêt aux deux bouts.
    .check = La marge est prise sous le ruban sur toute la longueur.
    .remedy = Découdre là où elle s’est échappée et repiquer ce passage.
petersham-turn = Tourner le ruban vers l’intérieur et repasser la taille sur la piqûre, le tissu roulé d’un cheveu vers l’intérieur.
    .check = Le ruban ne se voit pas de l’extérieur.
    .remedy = Rouler le bord vers l’intérieur entre les doigts et repasser.
petersham-catch = À la main, fixer les bouts du ruban et son bord libre à chaque marge de couture qu’il croise.
