### Froncer un bord à une longueur plus courte.

gather-title = Froncer { EDGE($edge) }
    .number = { $cloth } → { $short }
gather-aim = { $cloth } de tissu tiennent sur { $short } : { $ratio } pour 1.

## Repères

# $marked : les épaisseurs portent déjà leurs repères.
gather-hold-layers = { $layers ->
    [2] { $marked ->
        [yes] Tenir les deux épaisseurs ensemble, bord à bord, et les travailler toutes deux à la fois. Les repères des épaisseurs sont ceux des fronces.
       *[no] Tenir les deux épaisseurs ensemble, bord à bord, et les travailler toutes deux à la fois.
    }
   *[other] { $marked ->
        [yes] Tenir les { $layers } épaisseurs ensemble, bord à bord, et les travailler toutes à la fois. Les repères des épaisseurs sont ceux des fronces.
       *[no] Tenir les { $layers } épaisseurs ensemble, bord à bord, et les travailler toutes à la fois.
    }
 }

# Le bord est un rond : le pliage commence à sa couture de côté.
gather-fold-ring = { $parts ->
    [8] Plier trois fois en deux { EDGE($edge) }, à partir de { side-seam }. Marquer les pliures sur les deux faces : tous les { $cloth-part } de tissu à plat.
   *[4] Plier deux fois en deux { EDGE($edge) }, à partir de { side-seam }. Marquer les pliures sur les deux faces : tous les { $cloth-part } de tissu à plat.
 }
gather-fold-flat = { $parts ->
    [8] Plier trois fois en deux { EDGE($edge) }, bout contre bout. Marquer les pliures sur les deux faces : tous les { $cloth-part } de tissu à plat.
   *[4] Plier deux fois en deux { EDGE($edge) }, bout contre bout. Marquer les pliures sur les deux faces : tous les { $cloth-part } de tissu à plat.
 }
# Il va plus de tissu derrière que devant : les repères réguliers d’une étape précédente ne valent plus.
gather-old-marks = Effacer les repères { EDGE($edge, case: "of") }.
# Le tulle est repéré par des boucles de fil ; une partie des épaisseurs est en tulle, ou toutes.
gather-old-loops = { $seam ->
    [bright] Couper et ôter les boucles de fil qui repèrent { EDGE($edge) }. Le fil vif de la couture de côté reste.
   *[plain] Couper et ôter les boucles de fil qui repèrent { EDGE($edge) }.
 }
gather-old-both = { $seam ->
    [bright] Effacer les repères { EDGE($edge, case: "of") } et couper les boucles de fil qui repèrent le tulle. Le fil vif de la couture de côté reste.
   *[plain] Effacer les repères { EDGE($edge, case: "of") } et couper les boucles de fil qui repèrent le tulle.
 }
gather-mark-ring = Marquer { EDGE($edge) } sur les deux faces à { $marks } de { side-seam }, mesurés sur le tissu à plat. Cette couture va au milieu du dos.
    .check = { $behind } du tissu sont dans la moitié arrière, la couture au milieu du dos.
    .remedy = Si le devant a plus d’ampleur, les repères partent du mauvais endroit : mesurer à nouveau depuis la couture.
gather-mark-flat = Marquer { EDGE($edge) } sur les deux faces à { $marks } du bout gauche, mesurés sur le tissu à plat.
    .check = { $behind } du tissu sont dans la moitié arrière, les bouts au milieu du dos.
    .remedy = Si le devant a plus d’ampleur, les repères partent du mauvais endroit : mesurer à nouveau depuis les bouts.

## Au plisseur

gather-set-by-swatch = Monter le plisseur, réglé pour plisser à chaque point, profondeur au repère { $mark }, avec la longueur de point des échantillons : d’après eux, le tissu se réduit ainsi à 1/{ $ratio }.
gather-set-half = Monter le plisseur. Le régler pour plisser à chaque point, profondeur au repère 6 : le tissu se réduit ainsi à la moitié environ.
gather-set-begin = Monter le plisseur, réglé pour plisser à chaque point, et commencer par la profondeur 6, qui réduit le tissu à la moitié environ ; ici, il doit se réduire à 1/{ $ratio }.
gather-try = L’essayer sur une bande de chute de { $strip } de long.
    .check = Elle ressort longue de { $strip-short }.
    .tolerance = { $strip-off }
    .remedy = Plus longue : augmenter un peu la profondeur ; plus courte : la réduire un peu. Essayer à nouveau.
gather-pleat = Plisser { EDGE($edge) } à { $first-row } du bord coupé, endroit dessus, { $cloth } d’un seul trait.

## Avec deux rangs

gather-thread-needle = Enfiler une aiguille à main d’un fil double, pour des points devant de { $hand-stitch } environ.
gather-set-machine = { rows-set-machine }
gather-first-row = Faire un rang de fronces à { $first-row } du bord coupé. { rows-runs }
gather-second-row = Piquer de même un second rang, à { $second-row } du bord coupé, à { $apart } du premier.
    .check = Les rangs ne se croisent pas.
gather-wind-tails = { $in-runs ->
    [yes] À un bout de chaque section, piquer une épingle en travers et enrouler les bouts de fil autour, en huit.
   *[no] À un bout des rangs, piquer une épingle en travers et enrouler les bouts de fil autour, en huit.
 }
gather-knot-tails = { $in-runs ->
    [yes] À un bout de chaque section, nouer ensemble les deux fils du dessus sur leur face, et les deux fils du dessous sur la leur. Les couper à { $knot }.
   *[no] À un bout des rangs, nouer ensemble les deux fils du dessus sur leur face, et les deux fils du dessous sur la leur. Les couper à { $knot }.
 }
    .check = En tirant légèrement à l’autre bout, ils ne rentrent pas.
    .remedy = Les nouer encore une fois.
gather-pull-machine = { $parts ->
    [8] À l’autre bout, tirer ensemble les deux fils de canette jusqu’à ce que chaque huitième mesure { $short-part } le long des rangs. Enrouler ces bouts de fil autour d’une épingle.
   *[4] À l’autre bout, tirer ensemble les deux fils de canette jusqu’à ce que chaque quart mesure { $short-part } le long des rangs. Enrouler ces bouts de fil autour d’une épingle.
 }
gather-pull-hand = { $parts ->
    [8] À l’autre bout, tirer ensemble les deux fils jusqu’à ce que chaque huitième mesure { $short-part } le long des rangs. Enrouler ces bouts de fil autour d’une épingle.
   *[4] À l’autre bout, tirer ensemble les deux fils jusqu’à ce que chaque quart mesure { $short-part } le long des rangs. Enrouler ces bouts de fil autour d’une épingle.
 }

## Mesurer et répartir

gather-measure-ring = Mesurer tout le tour du bord froncé : { $short }.
    .check = { gather-measure.check }
    .tolerance = { gather-measure.tolerance }
    .remedy = { gather-measure.remedy }
gather-measure-flat = Mesurer le bord froncé : { $short }.
    .check = { gather-measure.check }
    .tolerance = { gather-measure.tolerance }
    .remedy = { gather-measure.remedy }
# Dit seulement comme partie des deux ci-dessus.
gather-measure =
    .check = { $has-target ->
        [yes] { $at-cut ->
            [yes] Il mesure { $short }, la longueur { EDGE($target, case: "of") }.
           *[no] Il mesure { $short }, la longueur { EDGE($target, case: "of") } sur la ligne de couture.
        }
       *[no] Il mesure { $short }.
     }
    .tolerance = { $has-target ->
        [yes] jusqu’à { $ease } trop court en tout : l’embu du bord plat se résorbe à l’épinglage
       *[no] jusqu’à { $ease } trop court en tout
     }
    .remedy = Plus de { $ease } trop court : relâcher les fronces. Trop long : resserrer les fronces.
gather-spread = { $parts ->
    [8] Répartir les fronces également avec les doigts, huitième par huitième.
   *[4] Répartir les fronces également avec les doigts, quart par quart.
 }
gather-knot-pulled = Retirer les épingles qui tiennent les bouts de fil et nouer ces bouts comme aux autres bouts : dessus avec dessus sur une face, dessous avec dessous sur l’autre. Les couper à { $knot }.
    .check = Le bord mesure toujours { $short }.
    .remedy = Si un nœud a glissé, resserrer les fronces et nouer plus près du tissu.
gather-set-back = { rows-set-back }
