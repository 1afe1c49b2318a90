### Ce que le guide dit autour du travail : à la machine avant une étape, où s’arrêter, et le regard de la fin.

# Le titre des étapes auxquelles l’auteur n’en donne pas.
part = Le travail
# Au-dessus du premier travail derrière une lettre sautée.
letters-skip = { $many ->
    [one] Pas de { $letters } ? Les lettres sont les mêmes pour toutes les tailles. Une lettre absente est celle d’un travail dont ce guide n’a pas besoin.
   *[other] { $letters } manquent ? Les lettres sont les mêmes pour toutes les tailles. Celles qui manquent sont celles de travaux dont ce guide n’a pas besoin.
 }
letters-skip-run = { $first } à { $last }

## Avant une étape

# $bobbins : combien de pleines il faut pour tous les rangs ; 0 si l’on ne sait pas ce qu’une canette contient. $bobbin-thread : le fil de toutes ensemble.
machine-wind = { $bobbins ->
    [0] Remplir deux canettes : tous les rangs prennent environ { $bobbin-thread } de fil de canette, donc remplir celle qui se vide.
    [one] Remplir { $bobbins } canette : tous les rangs prennent environ { $bobbin-thread } de fil de canette.
   *[other] Remplir { $bobbins } canettes : tous les rangs prennent environ { $bobbin-thread } de fil de canette.
 }
machine-trial = Monter l’aiguille neuve. { machine-wind } À titre d’essai, piquer { $trial } sur une chute en double, { $stitch }.
    .check = Les points sont pareils sur les deux faces, et le tissu reste à plat.
    .remedy = Enfiler à nouveau le fil supérieur et celui de canette. Boucles dessous : monter la tension du fil supérieur d’un chiffre ; boucles dessus : la baisser d’un chiffre.
overlocker-trial = À titre d’essai, surjeter { $trial } sur le bord d’une chute en double.
    .check = Les boucles des deux faces se rejoignent sur le bord coupé, et le bord reste plat.
    .remedy = Bord ondulé : augmenter l’entraînement différentiel d’un cran ; bord froncé : le baisser d’un cran. Boucles qui dépassent du bord : serrer les deux boucleurs d’un cran.
machine-straight = Revenir du zigzag au point droit, { $stitch }.
machine-zip-open = Ouvrir la fermeture d’une largeur de main, de sorte que le curseur soit au-dessous des piqûres à venir.
marks-on-net = La craie passe à travers { $net }. Là où un bord est marqué, nouer deux fois un fil vif autour d’une maille à { $clear } du bord coupé, hors de portée de la couture et de la surjeteuse. Le couper avant qu’un pli ne le cache, ou à la fin.
lines-on-net = Aucune ligne ne se voit sur { $net }. Là où il faut en tracer une, y poser du ruban de papier le long d’une règle, ou un fil tenu par des épingles, et l’ôter quand la ligne a servi.
# $flat : d’une chute ; on la resserre autant que le sera l’ouvrage.
practise-gathering = S’exercer sur une chute du même tissu : noter le chiffre de la tension du fil supérieur pour les coutures, puis régler le point le plus long et la tension un chiffre plus bas. Sur { $flat } piquer deux rangs, à { $first-row } et { $second-row } du bord. Tirer les deux fils de canette jusqu’à ce qu’elle mesure { $short }.
    .check = Les fils glissent sans casser, et les plis sont réguliers.
    .remedy = Si un fil casse, desserrer un peu la tension du fil supérieur, ou piquer des tronçons plus courts.
# $left : le fil qui reste sur l’ancienne canette, de la longueur d’une pleine.
bobbin-fresh = Commencer avec une canette pleine.
    .check = Il reste environ { $left } des { $full } sur l’ancienne : trop peu pour le rang suivant.
bobbin-fresh-within = { $sewn ->
    [one] Préparer une canette pleine : elle se met en place quand le premier des { $rows } rangs qui suivent est piqué.
   *[other] Préparer une canette pleine : elle se met en place quand { $sewn } des { $rows } rangs qui suivent sont piqués.
 }
    .check = Il reste alors environ { $left } des { $full } sur l’ancienne : trop peu pour le rang suivant.
bobbin-spare = { $spare ->
    [one] Remplir { $spare } canette d’avance : chacun de ces longs rangs prend plus de fil qu’une seule n’en contient.
   *[other] Remplir { $spare } canettes d’avance : chacun de ces longs rangs prend plus de fil qu’une seule n’en contient.
 }

## Après une étape

stop = Un bon endroit pour s’arrêter et ranger l’ouvrage.
stop-sitting = Fin de la séance { $sitting }. Ranger l’ouvrage ici, épingles comptées.

## Le dernier regard

last-look = Dernier regard
last-look-title = Examiner le vêtement
last-look-aim = Il peut s’enfiler sans danger.
# Là où ni ceinture ni coulisse n’a pris l’étiquette qui met en garde contre le feu.
last-look-label = Poser l’étiquette à l’intérieur, près du bord supérieur et à côté d’une couture, le texte visible. Replier ses deux bouts et les coudre à la main, à une marge de couture ou à la seule épaisseur intérieure.
    .check = Elle tient aux deux bouts, et aucun de ses points ne se voit sur l’endroit.
last-look-pins = Compter les épingles et les aiguilles.
    .check = Il y en a autant dans la boîte qu’au début.
    .remedy = Tâter chaque couture et la taille jusqu’à retrouver la dernière. Personne n’enfile le vêtement avant.
last-look-threads = Couper tous les fils qui dépassent et ôter les fils vifs du tissu.
# Les fils vifs ont été ôtés avant l’amidon.
last-look-loose-threads = Couper tous les fils qui dépassent.
last-look-marks = Ôter toutes les marques : brosser la craie, faire partir le marqueur à l’eau comme l’indique son fabricant.
    .check = Aucune marque ne se voit sur l’endroit.
    .remedy = La laver avant de repasser à cet endroit : la chaleur fixe certains marqueurs pour toujours.
last-look-length = Suspendre le vêtement et mesurer du bord supérieur à l’ourlet : { $to-hem }.
    .check = La mesure est la même devant, derrière et sur les côtés.
    .tolerance = { $off } de plus ou de moins
    .remedy = Si un côté tombe plus bas, y chercher une couture piquée trop étroite, et la repiquer.
# L’ourlet est coupé plus haut devant que derrière.
last-look-dips = { $train ->
    [yes] Lâcher la traîne. Suspendre le vêtement et mesurer du bord supérieur à l’ourlet : { $front } devant, { $side } le long des deux coutures de côté, { $back } derrière.
   *[no] Suspendre le vêtement et mesurer du bord supérieur à l’ourlet : { $front } devant, { $side } le long des deux coutures de côté, { $back } derrière.
 }
    .check = La mesure est la même à gauche et à droite, et l’ourlet descend régulièrement vers le dos.
    .tolerance = { $off } de plus ou de moins
    .remedy = Là où la gauche et la droite diffèrent, chercher une couture piquée trop étroite, et la repiquer.
# La taille a été mise de niveau : le vêtement est plus long à certains endroits.
last-look-lengths = Suspendre le vêtement et mesurer du bord supérieur à l’ourlet : { $front } devant, { $side } sur les côtés, { $back } derrière.
    .check = Les trois mesures sont justes.
    .tolerance = { $off } de plus ou de moins
    .remedy = Là où il est plus long, découdre la taille et y reprendre le bord supérieur.
last-look-height = Demander à la personne qui le porte de se tenir droite, sans chaussures. Mesurer du sol à l’ourlet : { $above }.
    .check = La mesure est la même devant, derrière et sur les côtés.
    .tolerance = { $off } de plus ou de moins
    .remedy = Là où l’ourlet tombe plus bas, y reprendre le bord supérieur, sans jamais recouper l’ourlet.
last-look-edges = Mettre le vêtement à l’envers et regarder le long de chaque bord.
    .check = Aucun bord ne s’effiloche, aucune épaisseur n’est prise où elle ne doit pas l’être.
    .remedy = Surfiler ou repiquer ce qui en a besoin.
# Des rubans relèvent une traîne.
last-look-drawn-up = Relever de nouveau la traîne, chaque cordon noué à son repère. L’enfiler avec les chaussures qui vont avec. Faire quelques pas.
    .check = L’ourlet ne touche le sol nulle part.
    .remedy = L’ôter, tirer tous les cordons un peu plus, d’autant chacun, et marquer l’endroit sur chaque cordon.
