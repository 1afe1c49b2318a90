### Surfiler des bords bruts ou des marges de couture pour qu’ils ne s’effilochent pas.
### Une étape travaille en un endroit ou plusieurs : $pieces ou $edge disent lesquels, $length leur longueur.

## Ce qui est surfilé

neaten-title-joins = Surfiler { neaten-joins }
neaten-title-ends = Surfiler { neaten-ends }
neaten-title-between = Surfiler { neaten-between }
neaten-title-edge = Surfiler { EDGE($edge) }
neaten-title-all-joins = Surfiler les marges de tous les raccords
neaten-title-margins = Surfiler { $places } marges de couture { PIECE($pieces, case: "of") }
neaten-title-edges = Surfiler { $places } bords { PIECE($pieces, case: "of") }
neaten-title-several = Surfiler { $places } bords et marges de couture { PIECE($pieces, case: "of") }
neaten-aim = Les bords coupés ne peuvent pas s’effilocher.
# Ciseaux à cranter : les dents retiennent les fils, mais pas toujours.
neaten-aim-pinked = Les bords coupés s’effilochent moins.
# Un tissu qui ne s’effiloche pas.
neaten-aim-firm = Les bords coupés sont tenus et ne grattent pas.

# Dits seulement dans d’autres messages de ce fichier.
neaten-joins = les marges des raccords { PIECE($pieces, case: "of") }
# $several : le rond est fermé de plusieurs lés, il y a donc plus d’une couture.
neaten-ends = { $several ->
    [yes] les marges des coutures de côté { PIECE($pieces, case: "of") }
   *[no] la marge de la couture de côté { PIECE($pieces, case: "of") }
 }
neaten-between = { $where ->
    [edge] la marge { EDGE($beside, case: "of") }
    [round] la marge autour { PIECE($pieces, case: "of") }
   *[between] la marge entre { PIECE($pieces) }
 }

# Comme $place dans les actions ci-dessous.
neaten-place-joins = { neaten-joins }, toutes épaisseurs ensemble, { $length } chacune
neaten-place-ends = { $several ->
    [yes] { neaten-ends }, toutes épaisseurs ensemble, { $length } chacune
   *[no] { neaten-ends }, toutes épaisseurs ensemble, { $length }
 }
neaten-place-between = { neaten-between }, toutes épaisseurs ensemble, { $length }
# $layers : celles d’une pile ou d’une ceinture pliée sont surfilées ensemble.
neaten-place-edge = { $layers ->
    [1] { EDGE($edge) }, { $length }
    [2] { EDGE($edge) }, les deux épaisseurs ensemble, { $length }
   *[other] { EDGE($edge) }, toutes les épaisseurs ensemble, { $length }
 }
# $longest : des lés qui diffèrent ont des côtés de plusieurs longueurs.
neaten-place-sides = { EDGE($edge) }, de { $length } à { $longest }

# $side : lequel des deux côtés d’une pièce, qui est encore seule.
neaten-side = { $side ->
    [start] { $each ->
        [gore] Poser un lé { PIECE($piece, case: "of") } endroit dessus, son bout étroit loin de soi. Le bord de début est le côté à gauche.
        [panel] Poser un exemplaire { PIECE($piece, case: "of") } endroit dessus, le bord supérieur loin de soi. Le bord de début est le côté à gauche.
       *[piece] Poser { PIECE($piece) } endroit dessus, le bord supérieur loin de soi. Le bord de début est le côté à gauche.
    }
   *[end] { $each ->
        [gore] Poser un lé { PIECE($piece, case: "of") } endroit dessus, son bout étroit loin de soi. Le bord de fin est le côté à droite.
        [panel] Poser un exemplaire { PIECE($piece, case: "of") } endroit dessus, le bord supérieur loin de soi. Le bord de fin est le côté à droite.
       *[piece] Poser { PIECE($piece) } endroit dessus, le bord supérieur loin de soi. Le bord de fin est le côté à droite.
    }
 }

## À la surjeteuse

neaten-overlock-ring = Commencer à une couture verticale. Surjeter { $place }. Dépasser le début de { $past }, puis sortir du bord avec une chaînette de { $tail }.
    .check = { neaten-overlock-flat.check }
    .remedy = { neaten-overlock-flat.remedy }
neaten-overlock-flat = Surjeter { $place }. Sortir du bord aux deux bouts avec une chaînette de { $tail }.
    .check = { $ravels ->
        [yes] Toutes les épaisseurs sont prises, et le couteau a ôté les effilochures sans entamer le tissu.
       *[no] Toutes les épaisseurs sont prises, et le couteau n’a ôté que ce qui dépassait.
     }
    .remedy = Repasser à la surjeteuse là où une épaisseur a échappé.
neaten-chain = Enfiler chaque chaînette sur une aiguille à bout rond, la glisser sous les points et couper le reste.
    .check = Aucune chaînette ne pend.
neaten-chain-back = Rabattre chaque chaînette sur sa piqûre et la prendre sur { $catch } avec un petit zigzag. Couper le reste.
    .check = Aucune chaînette ne pend, le zigzag la tient.

## Au point zigzag

neaten-try-zigzag = { zigzag-set } L’essayer sur le bord d’une chute.
    .check = L’aiguille pique tour à tour dans le tissu et au-delà de son bord, et le bord reste plat.
    .remedy = Si le bord roule, réduire la largeur du point.
neaten-zigzag-ring = Commencer à une couture verticale. Surfiler au point zigzag { $place }. Dépasser le début de { $past } et faire un point d’arrêt. Couper les fils à ras.
    .check = { neaten-zigzag-flat.check }
    .remedy = { neaten-zigzag-flat.remedy }
neaten-zigzag-flat = Surfiler au point zigzag { $place }. Faire un point d’arrêt aux deux bouts. Couper les fils à ras.
    .check = Toutes les épaisseurs sont prises.
    .remedy = Repiquer là où une épaisseur a échappé.

## Aux ciseaux à cranter

neaten-pink = Cranter { $place }. N’ôter que les pointes.
    .check = Les dents sont régulières.
    .remedy = Recranter là où un passage a été oublié.

## Au fer

# Une longue couture verticale : ses marges vont d’un côté.
neaten-press = Repasser sur l’envers les marges des coutures verticales { PIECE($pieces, case: "of") }, à plat d’un seul côté, à toutes les coutures dans le même sens.
    .check = Sur l’endroit, aucun pli ne longe une couture.
    .remedy = Tirer les deux pièces de part et d’autre de la couture et repasser.
