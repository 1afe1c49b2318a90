### Monter ceinture et doublure sur les épaisseurs froncées, de sorte que la doublure, rentrée, cache toutes les marges.
### $band est la ceinture ; $lining la doublure, $lining-edge son bord supérieur ; $to le bord supérieur des épaisseurs, $layers leurs pièces.

turned-lining-title = Monter { PIECE($band) } et { PIECE($lining) }
turned-lining-aim = { PIECE($band, at: "start") } en haut, toutes les marges entre les épaisseurs et { PIECE($lining) }.

## Marquer

turned-lining-mark-band = { $parts ->
    [8] Marquer les huitièmes des bords vifs { PIECE($band, case: "of") }, tous les { $part }, le premier à la couture qui ferme l’anneau.
   *[4] Marquer les quarts des bords vifs { PIECE($band, case: "of") }, tous les { $part }, le premier à la couture qui ferme l’anneau.
 }
# $marked : un bord qui ne porte pas encore de repères.
turned-lining-mark = { $parts ->
    [8] Marquer les huitièmes { EDGE($marked, case: "of") } sur les deux faces, le premier à la couture de côté.
   *[4] Marquer les quarts { EDGE($marked, case: "of") } sur les deux faces, le premier à la couture de côté.
 }

## La ceinture sur la doublure

turned-lining-lay-band = { $out ->
    [yes] Mettre { PIECE($lining) } à l’envers. Enfiler par-dessus { PIECE($band) }, la pliure vers l’ourlet, les bords vifs bord à bord avec { EDGE($lining-edge) }. La moitié qui a l’ouverture est contre l’envers de la doublure, qui sera du côté des jambes.
   *[no] Mettre { PIECE($lining) } à l’endroit. Enfiler par-dessus { PIECE($band) }, la pliure vers l’ourlet, les bords vifs bord à bord avec { EDGE($lining-edge) }. La moitié qui a l’ouverture est contre l’endroit de la doublure, qui sera du côté des jambes.
 }
    .check = L’ouverture ne se voit pas : elle est entre la ceinture et la doublure.
turned-lining-pin-lining = { pin-start } les coutures, puis les repères, puis tous les { $spacing }.
    .check = Les deux sont bord à bord, sans pli.
    .remedy = Répartir l’ampleur entre les repères.
# La doublure est plus longue que la ceinture de $lining-over.
turned-lining-ease-lining = { pin-start } les coutures, puis les repères, puis tous les { $spacing }. La doublure a { $lining-over } de plus : répartir cette ampleur entre les épingles, en fronces un peu plus serrées, jamais en pli.
    .check = Les deux sont bord à bord ; les fronces sont égales, aucun pli n’est couché.
    .remedy = Retirer les épingles de cette section et pousser les fronces vers la suivante.
turned-lining-sew-band = Piquer à { $inside } du bord, { $stitch }, { $length } tout autour, depuis l’intérieur du rond, la doublure dessus.
    .check = Aucun pli n’est pris et la ceinture n’est pas resserrée.
    .remedy = Découdre le passage sur une main, lisser et repiquer.

## Les deux sur les épaisseurs

turned-lining-slip = { $out ->
    [yes] Remettre { PIECE($lining) } à l’endroit : la ceinture pend maintenant à l’intérieur. Mettre aussi les épaisseurs à l’endroit et enfiler la doublure par-dessus, tous les bords supérieurs bord à bord.
   *[no] Remettre { PIECE($lining) } à l’envers : la ceinture pend maintenant à l’intérieur. Mettre les épaisseurs à l’endroit et enfiler la doublure par-dessus, tous les bords supérieurs bord à bord.
 }
    .check = { $out ->
        [yes] L’endroit de la doublure regarde dehors, la ceinture est entre elle et les épaisseurs, sa pliure vers l’ourlet.
       *[no] L’envers de la doublure regarde dehors, la ceinture est entre elle et les épaisseurs, sa pliure vers l’ourlet.
     }
turned-lining-pin-layers = { pin-start } les coutures de côté, puis les repères, puis tous les { $spacing }, à travers tout.
    .check = Tous les bords sont bord à bord.
    .remedy = Répartir l’ampleur entre les repères.
turned-lining-ease-layers = { pin-start } les coutures de côté, puis les repères, puis tous les { $spacing }, à travers tout. Les épaisseurs ont { $layers-over } de plus : répartir cette ampleur entre les épingles, en fronces un peu plus serrées, jamais en pli.
    .check = Tous les bords sont bord à bord et les fronces sont égales.
    .remedy = Retirer les épingles de cette section et pousser les fronces vers la suivante.
turned-lining-gathers-up = Tourner l’ouvrage pour que les fronces des épaisseurs soient dessus ; on pique alors depuis l’intérieur du rond.
turned-lining-sew = Piquer à { $seam-width } du bord à travers tout, lentement, car c’est épais : { $stitch }, { $length } tout autour. Finir en repiquant trois points sur le début.
    .check = Toutes les épaisseurs sont prises, et la première piqûre est dans la marge.
    .remedy = Repiquer là où une épaisseur a glissé.

## Retourner

# Dit seulement dans le message suivant : où s’arrête la doublure.
turned-lining-ends = { $ends ->
    [above] { " " }Son ourlet s’arrête { $by } au-dessus de celui des épaisseurs.
    [below] { " " }Son ourlet s’arrête { $by } au-dessous de celui des épaisseurs.
   *[level] { "" }
 }
turned-lining-turn = Passer { PIECE($lining) } par-dessus le haut et la laisser tomber à l’intérieur. Tirer la ceinture vers le haut.
    .check = { $out ->
        [yes] Ni bord vif ni rang de fronces ne se voit, dedans comme dehors. L’ouverture de la coulisse est à l’intérieur, et l’endroit de la doublure touche les épaisseurs.
       *[no] Ni bord vif ni rang de fronces ne se voit, dedans comme dehors. L’ouverture de la coulisse est à l’intérieur, et l’endroit de la doublure est du côté des jambes.
     }{ turned-lining-ends }
    .remedy = Si l’ouverture est dehors, la ceinture a été montée dans le mauvais sens : découdre les deux piqûres et la retourner.
turned-lining-press = Repasser légèrement la couture par l’intérieur, les marges vers l’ourlet.
