### Résorber un bord un peu plus long, pour qu’il repose à plat sur un plus court.

ease-in-title = Résorber l’embu{ "\u00A0" }: { EDGE($edge) }
    .number = { $cloth } → { $short }
ease-in-aim = { $cloth } de tissu tiennent sur { $short }, sans aucun pli.

# Le bord est un anneau : le pliage commence à sa couture de côté.
ease-in-fold-ring = { $parts ->
    [8] Plier trois fois en deux { EDGE($edge) }, à partir de { side-seam }. Marquer les pliures sur les deux faces{ "\u00A0" }: tous les { $cloth-part } le long du bord coupé.
   *[4] Plier deux fois en deux { EDGE($edge) }, à partir de { side-seam }. Marquer les pliures sur les deux faces{ "\u00A0" }: tous les { $cloth-part } le long du bord coupé.
 }
ease-in-fold-flat = { $parts ->
    [8] Plier trois fois en deux { EDGE($edge) }, bout sur bout. Marquer les pliures sur les deux faces{ "\u00A0" }: tous les { $cloth-part } le long du bord coupé.
   *[4] Plier deux fois en deux { EDGE($edge) }, bout sur bout. Marquer les pliures sur les deux faces{ "\u00A0" }: tous les { $cloth-part } le long du bord coupé.
 }
ease-in-set = { rows-set-machine }
ease-in-row = Piquer un rang à { $row } du bord coupé{ "\u00A0" }: { EDGE($edge) }. { rows-runs }
ease-in-pull = { $parts ->
    [8] Tirer un peu les fils de canette, des deux bouts, jusqu’à ce que chaque huitième mesure { $short-part } le long du rang. Lisser le tissu le long du rang du bout des doigts.
   *[4] Tirer un peu les fils de canette, des deux bouts, jusqu’à ce que chaque quart mesure { $short-part } le long du rang. Lisser le tissu le long du rang du bout des doigts.
 }
    .check = Le tissu s’arrondit un peu le long du rang, et aucun pli ne se forme.
    .remedy = Où un pli se forme, y relâcher le fil et lisser le tissu des deux côtés.
ease-in-measure-ring = Mesurer tout le tour du bord résorbé, le long du rang{ "\u00A0" }: { $short }.
    .check = { ease-in-measure.check }
    .tolerance = { ease-in-measure.tolerance }
    .remedy = { ease-in-measure.remedy }
ease-in-measure-flat = Mesurer le bord résorbé, le long du rang{ "\u00A0" }: { $short }.
    .check = { ease-in-measure.check }
    .tolerance = { ease-in-measure.tolerance }
    .remedy = { ease-in-measure.remedy }
# Dit seulement comme parties des deux messages ci-dessus.
ease-in-measure =
    .check = { $has-target ->
        [yes] Il mesure { $short }, la longueur { EDGE($target, case: "of") } sur la ligne de couture.
       *[no] Il mesure { $short }.
     }
    .tolerance = { $ease }
    .remedy = Trop long{ "\u00A0" }: tirer un peu plus. Trop court{ "\u00A0" }: relâcher le fil.
ease-in-knot = { $in-runs ->
    [yes] Aux deux bouts de chaque section, nouer ensemble les deux fils. Les couper à { $knot }.
   *[no] Aux deux bouts du rang, nouer ensemble les deux fils. Les couper à { $knot }.
 }
    .check = Le bord mesure toujours { $short }.
    .remedy = Si un nœud a glissé, tirer de nouveau le fil et nouer plus près du tissu.
ease-in-set-back = { rows-set-back }
