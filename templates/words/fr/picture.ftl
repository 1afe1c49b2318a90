### Le vêtement tel qu’il sera, dessiné d’après ses cotes sur un mannequin simple.

picture-view = { $view ->
    [side] de côté
    [left] de la gauche de la personne qui le porte
    [back] de dos
    [peeled] avec les épaisseurs écartées
   *[front] de face
 }
picture-caption = { $view ->
    [side] De côté.
    [left] De la gauche de la personne qui le porte, où il se ferme.
    [back] De dos.
    [peeled] Avec les épaisseurs écartées.
   *[front] Une impression de face : les longueurs sont justes, l’ampleur dépend du tissu.
 }
# Sous la légende, là où un modèle du tissu trouve qu’un ourlet ample s’évase et remonte au-dessus de ce qu’il doit cacher.
picture-shows = Évasée comme sur le dessin, { PIECE($outer, form: "short") } s’arrête environ { $lower } au-dessus de { PIECE($inner, form: "short") } ; d’après les longueurs seules, elle s’arrêterait { $longer } au-dessous. Si cela ne doit pas dépasser, couper sur { $cut } de hauteur au plus, au lieu de { $now } : { PIECE($inner, form: "short") }.

## En mots

picture-alt = { $title } sur un mannequin simple, { picture-view } : { $long } de long, environ { $across } de large à l’ourlet. { picture-made } { picture-closed }
# Les poches plaquées et les bretelles.
picture-not-drawn = Non dessiné : { PIECE($pieces, form: "bare") }.
picture-made = { $count ->
    [one] De haut en bas : { $layers }.
   *[other] De l’extérieur vers l’intérieur : { $layers }.
 }
picture-layer = { $alike ->
    [one] { $tiers }
   *[other] { $alike } épaisseurs pareilles, chacune : { $tiers }
 }
picture-tier-plain = { PIECE($piece, form: "bare") } ({ $deep } de haut)
picture-tier-gathered = { PIECE($piece, form: "bare") } ({ $deep } de haut, froncé { $full } : 1)
picture-tier-pleated = { PIECE($piece, form: "bare") } ({ $deep } de haut, plissé)
picture-closed = { $closed ->
    [elastic] Un élastique resserre la taille.
    [cord] Un cordon resserre la taille, ses bouts pendent.
    [ties] { $at-left ->
        [yes] Le côté gauche est ouvert et se noue.
       *[no] Le dos est ouvert et se noue.
    }
    [button] { $at-left ->
        [yes] Au côté gauche, une fente se ferme par un bouton.
       *[no] Au dos, une fente se ferme par un bouton.
    }
    [zip] { $at-left ->
        [yes] Une fermeture à glissière le ferme au côté gauche.
       *[no] Une fermeture à glissière le ferme au dos.
    }
    [slit] { $at-left ->
        [yes] Au côté gauche, une fente laisse passer les hanches.
       *[no] Au dos, une fente laisse passer les hanches.
    }
   *[band] La taille garde sa largeur.
 }
