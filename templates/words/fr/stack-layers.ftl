### Poser des bords les uns dans les autres et les tenir comme un seul bord, épaisseur par épaisseur.

stack-layers-title = Réunir { $count } épaisseurs : { EDGE($stack) }
stack-layers-aim = Un seul bord de { $length }, qui s’appelle désormais { EDGE($stack) }.
# Une seule épaisseur : il n’y a rien de plus à faire.
stack-layers-title-single = Préparer { PIECE($pieces) }
stack-layers-aim-single = L’épaisseur est prête.

## Une bande pliée en deux, ses deux bords posés l’un sur l’autre

stack-layers-title-fold = Plier { PIECE($band) } en deux
stack-layers-fold = Plier { PIECE($band) } en deux dans la longueur, envers contre envers, les deux bords coupés bord à bord, et marquer la pliure au fer.
    .check = Depuis la pliure, la bande a { $deep } de hauteur, plus la largeur de la couture à venir.

## Marquer

# Seulement dans le message ci-dessous. $several : des épaisseurs sans repères.
stack-faces = { $several ->
    [yes] les deux faces de chaque épaisseur
   *[no] les deux faces
 }
# Des exemplaires qui diffèrent : l’écart des repères de chacun, ou sa longueur.
stack-layers-own = { $part } (exemplaire { $letter })
# $marked : les bords qui ne portent pas encore de repères. $seam : comment se dit la place du premier repère.
stack-layers-mark = { $parts ->
    [8] { $seam ->
        [bright] Diviser en huitièmes et marquer sur { stack-faces } { $marked }, tous les { $part }, le premier repère à la couture de côté au fil vif.{ marks-on-line }
        [some] Diviser en huitièmes et marquer sur { stack-faces } { $marked }, tous les { $part }, le premier repère à la couture de côté, celle au fil vif là où il y en a une.{ marks-on-line }
        [plain] Diviser en huitièmes et marquer sur { stack-faces } { $marked }, tous les { $part }, le premier repère à la couture de côté.{ marks-on-line }
       *[ends] Diviser en huitièmes et marquer sur { stack-faces } { $marked }, tous les { $part } à partir d’un bout.{ marks-on-line }
    }
   *[4] { $seam ->
        [bright] Diviser en quarts et marquer sur { stack-faces } { $marked }, tous les { $part }, le premier repère à la couture de côté au fil vif.{ marks-on-line }
        [some] Diviser en quarts et marquer sur { stack-faces } { $marked }, tous les { $part }, le premier repère à la couture de côté, celle au fil vif là où il y en a une.{ marks-on-line }
        [plain] Diviser en quarts et marquer sur { stack-faces } { $marked }, tous les { $part }, le premier repère à la couture de côté.{ marks-on-line }
       *[ends] Diviser en quarts et marquer sur { stack-faces } { $marked }, tous les { $part } à partir d’un bout.{ marks-on-line }
    }
 }

## Poser chaque épaisseur, de la plus extérieure à la plus proche du corps

# Dits seulement dans les messages ci-dessous : quelle face est de quel côté, et comment une épaisseur rejoint la précédente.
stack-layers-way = { $face ->
    [either] marges de couture vers les jambes
    [out] endroit vers l’extérieur
   *[in] endroit vers les jambes, envers vers l’épaisseur précédente
 }
stack-layers-meet = { $ring ->
    [yes] Faire coïncider les coutures de côté et les repères, bords supérieurs bord à bord, et { pin } là.
   *[no] Faire coïncider les bouts et les repères, bords supérieurs bord à bord, et { pin } là.
 }
stack-layers-hold = Tenir { PIECE($layer) } comme sur le corps, { stack-layers-way }.
# Plusieurs pareilles, les premières posées.
stack-layers-nest = { $ring ->
    [yes] { $copies ->
        [2] Mettre les { $copies } ronds { PIECE($layer, case: "of") } l’un dans l’autre, { stack-layers-way }. { stack-layers-meet }
       *[other] Mettre les { $copies } ronds { PIECE($layer, case: "of") } les uns dans les autres, { stack-layers-way }. { stack-layers-meet }
    }
   *[no] { $copies ->
        [2] Poser les { $copies } exemplaires { PIECE($layer, case: "of") } l’un sur l’autre, { stack-layers-way }. { stack-layers-meet }
       *[other] Poser les { $copies } exemplaires { PIECE($layer, case: "of") } les uns sur les autres, { stack-layers-way }. { stack-layers-meet }
    }
 }
    .check = Aucune épaisseur ne poche entre les repères.
    .remedy = { $parts ->
        [8] { $hold ->
            [clips] Ôter les pinces de ce huitième et répartir à nouveau le mou.
           *[pins] Ôter les épingles de ce huitième et répartir à nouveau le mou.
        }
       *[4] { $hold ->
           [clips] Ôter les pinces de ce quart et répartir à nouveau le mou.
          *[pins] Ôter les épingles de ce quart et répartir à nouveau le mou.
       }
     }
# Dit seulement dans les contrôles suivants : où s’arrête une épaisseur à côté de la précédente.
stack-layers-ends = { $ends ->
    [above] { " " }Son bord inférieur s’arrête { $by } au-dessus de celui de l’épaisseur précédente.
    [below] { " " }Son bord inférieur s’arrête { $by } au-dessous de celui de l’épaisseur précédente.
   *[level] { "" }
 }
stack-layers-put-in = { $ring ->
    [yes] Mettre { PIECE($layer) } à l’intérieur, { stack-layers-way }. { stack-layers-meet }
   *[no] Poser { PIECE($layer) } derrière, { stack-layers-way }. { stack-layers-meet }
 }
    .check = { stack-layers-nest.check }{ stack-layers-ends }
    .remedy = { stack-layers-nest.remedy }
stack-layers-lined = { PIECE($layer, at: "start") } pend déjà derrière : lisser à plat. { stack-layers-meet }
    .check = { stack-layers-nest.check }{ stack-layers-ends }
    .remedy = { stack-layers-nest.remedy }
stack-layers-put-in-alike = { $ring ->
    [yes] Mettre les { $copies } ronds { PIECE($layer, case: "of") } à l’intérieur, { stack-layers-way }. { stack-layers-meet }
   *[no] Poser les { $copies } exemplaires { PIECE($layer, case: "of") } derrière, { stack-layers-way }. { stack-layers-meet }
 }
    .check = { stack-layers-nest.check }{ stack-layers-ends }
    .remedy = { stack-layers-nest.remedy }

## Les tenir toutes

stack-layers-share = Les exemplaires n’ont pas la même longueur{ "\u00A0" }: { $lengths }. Répartir ce qui est plus long également de repère en repère, { $gap } en tout.
stack-layers-pin = { pin-start } tous les { $spacing } entre les repères.
# Plus de deux épaisseurs : ces épingles traversaient celles qui étaient là à ce moment.
stack-layers-pin-through = { $hold ->
    [clips] Quand toutes les épaisseurs y sont, les pincer toutes ensemble : d’abord aux repères, puis tous les { $spacing }.
   *[pins] Quand toutes les épaisseurs y sont, faire passer les épingles à travers toutes : d’abord aux repères, puis tous les { $spacing }.
 }
stack-layers-sew = { $count ->
    [2] Piquer les deux épaisseurs ensemble à { $from-edge } du bord, { $length }, au point le plus long. Cette piqûre reste.
   *[other] Piquer les { $count } épaisseurs ensemble à { $from-edge } du bord, { $length }, au point le plus long. Cette piqûre reste.
 }
# Un point court : les fronces des épaisseurs sont tenues pour de bon.
stack-layers-sew-short = { $count ->
    [2] Piquer ensemble les deux épaisseurs à { $from-edge } du bord, { $stitch }, { $length }. Cette piqûre reste.
   *[other] Piquer ensemble les { $count } épaisseurs à { $from-edge } du bord, { $stitch }, { $length }. Cette piqûre reste.
 }
    .check = Toutes les épaisseurs sont prises, et aucune fronce n’est poussée en pli.
    .remedy = Découdre le passage sur une main, épingler plus serré et repiquer.
