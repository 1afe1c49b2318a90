### Épaisseurs en coupe du haut à l’ourlet : laquelle est à l’extérieur, jusqu’où va chacune, où les marges sont couvertes.

figure-layers-cut = Coupe du haut à l’ourlet
figure-layers-outside = extérieur
figure-layers-legs = jambes
figure-layers-held = réunies
# Quelle face est de quel côté.
figure-layers-way = { $face ->
    [either] marges vers les jambes
    [out] endroit vers l’extérieur
   *[in] endroit vers les jambes
 }
# $chain : la pièce du haut et celles qui en pendent.
figure-layers-one = { PIECE($chain, form: "bare") }, { figure-layers-way }, { $layer-deep } de haut
figure-layers-more = et { $more } épaisseurs de plus, de même
figure-layers-scale = Hauteurs à la même échelle ; espaces et marges plus larges.
figure-layers-alt = Épaisseurs de l’extérieur vers les jambes : { $layers }. Toutes sont bord à bord en haut et tenues { $from-edge } plus bas.
figure-layers-caption = { $count } épaisseurs, la plus extérieure à gauche.
