### Coudre un bord à un autre de même longueur.
### $edge et ses pièces pendent dessous, $to est le bord du dessus.

attach-title = Assembler { PIECE($edge) } à { PIECE($to) }
    .number = { $seam-width }
attach-aim = { COUNT($edge) ->
    [one] { PIECE($edge, at: "start") } pend sous { PIECE($to) }, couture de { $seam-width }.
   *[other] { PIECE($edge, at: "start") } pendent sous { PIECE($to) }, couture de { $seam-width }.
 }

## Poser

attach-turn = Mettre { PIECE($edge) } à l’endroit et { PIECE($to) } à l’envers.
attach-slip = Enfiler { PIECE($to) }, tête en bas, sur { PIECE($edge) }, jusqu’à ce que { EDGE($to, form: "short") } soit au ras { EDGE($edge, form: "short", case: "of") }.
    .check = Les endroits se font face et les deux bords coupés coïncident.
attach-slip-tails = Enfiler { PIECE($to) }, tête en bas, sur { PIECE($edge) }, jusqu’à ce que { EDGE($to, form: "short") } soit au ras { EDGE($edge, form: "short", case: "of") }. Laisser pendre les bouts de fil par-dessus le bord.
    .check = { attach-slip.check }
attach-lay = Poser { EDGE($edge) } contre { EDGE($to) }, endroit contre endroit et bord à bord.
attach-lay-tails = Poser { EDGE($edge) } contre { EDGE($to) }, endroit contre endroit et bord à bord. Laisser pendre les bouts de fil par-dessus le bord.

## Épingler

attach-pin-gathers = { match-and-pin }
    .check = { $hold ->
        [clips] Les bords coïncident et les fronces ne s’entassent pas aux repères. Là où le bord plat est plus long, son embu est réparti entre les pinces sans faire de pli.
       *[pins] Les bords coïncident et les fronces ne s’entassent pas aux repères. Là où le bord plat est plus long, son embu est réparti entre les épingles sans faire de pli.
     }
    .tolerance = les fronces jusqu’à { $ease } trop courtes en tout
    .remedy = Plus de { $ease } trop court : relâcher les fronces.
attach-pin-pleats = { match-and-pin }
    .check = { $hold ->
        [clips] Les bords coïncident et les plis ne s’entassent pas aux repères. Là où le bord plat est plus long, son embu est réparti entre les pinces sans faire de pli.
       *[pins] Les bords coïncident et les plis ne s’entassent pas aux repères. Là où le bord plat est plus long, son embu est réparti entre les épingles sans faire de pli.
     }
    .tolerance = le bord plissé jusqu’à { $ease } trop court en tout
    .remedy = Plus de { $ease } trop court : relâcher les plis.
attach-pin-flat = { match-and-pin }
    .check = Les bords coïncident.
    .tolerance = un bord plus long de { $off }
    .remedy = Répartir la différence entre les repères.

## Piquer

# Des fronces sur des rangs de fil : chacune se voit avant que l’aiguille n’y arrive.
attach-turn-work-gathers-up = Tourner l’ouvrage, les fronces dessus. On les voit ainsi à temps et on les lisse, machine arrêtée, de la pointe d’une épingle.
attach-turn-work-gathers-up-ring = { attach-turn-work-gathers-up } Piquer depuis l’intérieur du rond.
# Les fronces d’un plisseur sont tenues par sa propre piqûre.
attach-turn-work-gathers = Tourner l’ouvrage, { PIECE($to) } dessus et les fronces dessous. La piqûre du plisseur les tient, et la machine entraîne le tissu le plus ample par-dessous.
attach-turn-work-pleats = Tourner l’ouvrage, { PIECE($to) } dessus et les plis dessous. Là, le pied-de-biche ne peut pas les coucher.
attach-turn-work-flat = Tourner l’ouvrage, { PIECE($to) } dessus.
# Dit seulement dans les messages ci-dessous.
attach-seam = { $ring ->
    [yes] Piquer à { $seam-width } du bord, { $stitch }, { $length } tout autour. Finir en repiquant trois points sur le début.
   *[no] Piquer à { $seam-width } du bord, { $stitch }, { $length }, point d’arrêt aux deux bouts.
 }
attach-sew-gathers = { attach-seam }
    .check = Aucun repli n’est pris dans la couture, aucun rang de fronces ne se voit sur l’endroit.
    .remedy = Découdre sur une largeur de main, lisser et repiquer. Un rang de fronces qui se voit sous la couture se retire.
attach-sew-pleats = { attach-seam }
    .check = Chaque pli est comme il a été bâti, et le bâti ne se voit pas sur l’endroit.
    .remedy = Découdre sur une largeur de main, remettre le pli en place et repiquer.
attach-sew-flat = { attach-seam }
    .check = Les bords coïncident toujours.
    .remedy = Découdre sur une largeur de main, lisser et repiquer.
