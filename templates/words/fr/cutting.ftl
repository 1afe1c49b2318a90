### La coupe : la liste des pièces, et chaque étape du rouleau à la dernière pièce.
### $cloth : le nom que l’auteur donne au tissu. $mark : l’étiquette d’une pièce, telle que 2b.

## La liste

cut-whole = entière
cut-joins = { $joins ->
    [one] { $joins } raccord
   *[other] { $joins } raccords
 }
# De plusieurs exemplaires ensemble.
cut-joins-in-all = { $joins ->
    [one] { $joins } raccord en tout
   *[other] { $joins } raccords en tout
 }
cut-finished = { $length } × { $depth }
cut-finished-folded = { $length } × { $depth }, pliée
cut-finished-gores = { $gores } lés, { $depth } de haut

## Avant le premier coup de ciseaux

cutting-title = Couper : { $cloth }
    .number = { $length }
cutting-aim = { $sections ->
    [one] { $sections } coupon. Les cotes de coupe comprennent toutes les marges : ne rien ajouter.
   *[other] { $sections } coupons. Les cotes de coupe comprennent toutes les marges : ne rien ajouter.
 }

# $trims : dentelles, rubans et cordons que les étapes cousent.
cutting-wash-trims = Laver et sécher les fournitures suivantes comme le vêtement sera lavé, avant d’en mesurer quoi que ce soit, car une garniture qui rétrécit plus tard fait froncer son bord : { $trims }.
    .check = { COUNT($trims) ->
        [one] Tout est sec à cœur et à plat.
       *[other] Tout est sec à cœur et à plat.
     }
    .remedy = Repasser à un point, à travers un linge, ce qui rebique, et laisser refroidir.
# Dit seulement dans les messages qui suivent. Points des étiquettes d’entretien : ISO 3758.
cutting-dots = { $dots ->
    [1] un point, 110 °C, sans vapeur
    [2] deux points, 150 °C
   *[3] trois points, 200 °C, avec vapeur
 }
cutting-wash = Laver et sécher le tissu ({ $cloth }) avant de couper : il rétrécit de { $shrinks } environ. Le repasser, fer à { cutting-dots }.
    .check = Il est sec à cœur et à plat.
    .remedy = Le sécher plus longtemps, et le repasser à nouveau dans la longueur.
# Aucun retrait n’est indiqué, et la fibre est connue pour rétrécir.
cutting-wash-unknown = Laver et sécher le tissu ({ $cloth }) avant de couper, comme le vêtement sera lavé : un tissu neuf rétrécit, et de combien n’est pas indiqué. Le repasser, fer à { cutting-dots }.
    .check = { cutting-wash.check }
    .remedy = { cutting-wash.remedy }
# Dit seulement dans les messages qui suivent.
cutting-straighten = { $made ->
    [net] Redresser le bout par où l’on commence : couper en travers le long d’une rangée de trous.
    [woven] Redresser le bout par où l’on commence : tirer un fil qui court en travers, et couper le long du vide qu’il laisse.
   *[close] Redresser le bout par où l’on commence : tracer une ligne d’équerre avec le long bord, et couper dessus.
 }
cutting-selvedges = Couper les lisières du tissu ({ $cloth }). { cutting-straighten }
    .check = Il reste au moins { $length } de longueur.
    .remedy = S’il est trop court, acheter ce qui manque avant de rien couper.
# Le plan prend presque toute la largeur.
cutting-selvedges-wide = { cutting-selvedges }
    .check = Il reste au moins { $width } de largeur, et { $length } de longueur.
    .remedy = { $eked ->
        [yes] S’il est plus étroit de { $hair } au plus, couper { $shorter } aussi longs que le tissu est large, et { $longer } plus long de tout ce qui leur manque. S’il est encore plus étroit, l’acheter plus large. S’il est trop court, acheter ce qui manque avant de rien couper.
       *[no] S’il est plus étroit que { $width }, l’acheter plus large, ou faire refaire le plan pour sa largeur. S’il est trop court, acheter ce qui manque avant de rien couper.
     }
# Des pièces ont un bord sur la lisière.
cutting-selvedges-kept = Ne pas couper les lisières du tissu ({ $cloth }) : certaines sont des bords de pièces. { cutting-straighten }
    .check = { cutting-selvedges.check }
    .remedy = { cutting-selvedges.remedy }
cutting-selvedges-kept-wide = { cutting-selvedges-kept }
    .check = { cutting-selvedges-wide.check }
    .remedy = { cutting-selvedges-wide.remedy }
# Là où une partie précédente de la coupe s’est arrêtée sur ce tissu. $kept (yes ou no) : si les lisières restent.
cutting-goes-on = { $kept ->
    [yes] Continuer le tissu ({ $cloth }) là où la partie précédente s’est arrêtée : ce bout est droit. Les lisières restent.
   *[no] Continuer le tissu ({ $cloth }) là où la partie précédente s’est arrêtée : ce bout est droit. Couper les lisières là où elles y sont encore.
 }
    .check = { cutting-selvedges-wide.check }
    .remedy = { cutting-selvedges-wide.remedy }
cutting-fold = Plier le tissu ({ $cloth }) dans la longueur, endroit contre endroit, de sorte que ses deux longs bords se rejoignent.
    .check = Les deux épaisseurs sont à plat, et la pliure est droite.
    .remedy = L’ouvrir, redresser le bout à nouveau et le replier.
# Les deux faces du tissu sont pareilles.
cutting-fold-alike = Plier le tissu ({ $cloth }) dans la longueur, de sorte que ses deux longs bords se rejoignent.
    .check = { cutting-fold.check }
    .remedy = { cutting-fold.remedy }

## Un coupon

# Dit seulement dans les messages suivants. $net : la craie passe au travers.
cutting-line-put = { $net ->
    [yes] piquer une rangée d’épingles
   *[no] tracer une ligne à la craie
 }
cutting-chalk = { $made ->
    [net] Piquer une rangée d’épingles bien droite en travers du tissu ({ $cloth }), le long des trous, à { $length } de son bout coupé : la craie passe au travers.
   *[close] Tracer à la craie une ligne droite en travers du tissu ({ $cloth }), à { $length } de son bout coupé.
 }
    .check = Les deux bouts de la ligne sont à { $length } du bout coupé.
    .tolerance = { $off }
    .remedy = { $made ->
        [net] Repiquer les épingles avant de couper.
       *[close] Effacer la ligne et la retracer avant de couper.
     }
cutting-section = Couper le long de la ligne : c’est le coupon { $number } sur { $sections }.
cutting-section-only = Couper le long de la ligne : c’est l’unique coupon.
# D’autres coupons de ce tissu gardent les leurs.
cutting-selvedges-here = Couper les lisières de ce coupon : aucune de ses pièces n’en garde.
# $taped : si des rubans sont sur la table, qui ont leur propre dessin.
cutting-tags = Écrire une étiquette de papier pour chaque pièce, comme elle s’appelle sur le dessin du coupon. Épingler chacune dès que sa pièce est coupée : près du bord qui est en haut sur ce dessin{ $taped ->
    [yes] { " " }(non sur celui des rubans)
   *[no] { "" }
 }, son bord supérieur, sur l’envers : la face la plus mate. Si les deux se ressemblent, choisir maintenant.
    .check = { $tags ->
        [one] { $tags } étiquette. Une étiquette s’ôte quand sa pièce est cousue.
       *[other] { $tags } étiquettes. Une étiquette s’ôte quand sa pièce est cousue.
     }
# Les deux faces du tissu sont pareilles.
cutting-tags-alike = Écrire une étiquette de papier pour chaque pièce, comme elle s’appelle sur le dessin du coupon. Épingler chacune dès que sa pièce est coupée : près du bord qui est en haut sur ce dessin{ $taped ->
    [yes] { " " }(non sur celui des rubans)
   *[no] { "" }
 }, son bord supérieur. Ce tissu n’a pas d’endroit : la face à l’étiquette est désormais l’envers.
    .check = { cutting-tags.check }
# Comment, c’est dit au premier coupon du tissu.
cutting-tags-again = Écrire aussi les étiquettes de ce coupon et épingler chacune comme auparavant, dès que sa pièce est coupée.
    .check = { cutting-tags.check }
# Rectangles dans lesquels des pièces sont coupées plus tard.
cutting-tags-cut-again = À recouper plus tard{ "\u00A0" }: { PIECE($pieces) }. L’étiquette y dit seulement quelle pièce c’est{ "\u00A0" }; l’étape qui la coupe dit quel bord est en haut.

## Bandes de coupe, par-dessus des rubans adhésifs sur la table

# $tapes : les distances des rubans.
cutting-tapes-along = { COUNT($tapes) ->
    [one] Coller un ruban adhésif en papier le long de la table. Son côté éloigné est à { $tapes } du bord proche de la table.
   *[other] Coller des rubans adhésifs en papier le long de la table. Leurs côtés éloignés sont à { $tapes } du bord proche de la table.
 }
    .check = { $beyond ->
        [yes] Chaque ruban va d’un bout à l’autre de la table et redescend aux deux bouts, où on le voit quand le tissu cache le reste. Le dernier y est à sa distance.
       *[no] Chaque ruban dépasse le coupon d’une main aux deux bouts, et le dernier y est à sa distance.
     }
    .tolerance = { $tape-off }
    .remedy = Mesurer à nouveau depuis le même bord, jamais de ruban à ruban. Si la table est trop petite, travailler par terre, où un ruban de plus tient lieu de bord de devant.
# Des rubans d’un coupon précédent sont sur la table.
cutting-tapes-along-anew = { cutting-tapes-along } Décoller les rubans qui sont ailleurs.
    .check = { cutting-tapes-along.check }
    .tolerance = { cutting-tapes-along.tolerance }
    .remedy = { cutting-tapes-along.remedy }
cutting-tapes-across = { COUNT($tapes) ->
    [one] Coller un ruban adhésif en papier en travers de la table. Son côté éloigné est à { $tapes } du bout gauche de la table.
   *[other] Coller des rubans adhésifs en papier en travers de la table. Leurs côtés éloignés sont à { $tapes } du bout gauche de la table.
 }
    .check = { cutting-tapes-along.check }
    .tolerance = { cutting-tapes-along.tolerance }
    .remedy = Mesurer à nouveau depuis le même bout, jamais de ruban à ruban. Si la table est trop petite, travailler par terre, où un ruban de plus tient lieu de bout gauche.
cutting-tapes-across-anew = { cutting-tapes-across } Décoller les rubans qui sont ailleurs.
    .check = { cutting-tapes-along.check }
    .tolerance = { cutting-tapes-along.tolerance }
    .remedy = { cutting-tapes-across.remedy }
# Un coupon précédent a les mêmes rubans.
cutting-tapes-stay = Laisser les rubans où ils sont, à { $tapes } du { $from ->
    [end] bout gauche
   *[edge] bord proche
 } de la table.
    .check = Aucun ne s’est décollé.
cutting-draw-along = Tirer le tissu ({ $cloth }) par-dessus les rubans, droit et sans tension, un côté qui avait une lisière au ras du bord proche. Y poser des poids.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# La bande de coupe la plus proche garde sa lisière.
cutting-draw-along-kept = Tirer le tissu ({ $cloth }) par-dessus les rubans, droit et sans tension, une lisière au ras du bord proche. Y poser des poids.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
cutting-draw-along-folded = Tirer le tissu ({ $cloth }) par-dessus les rubans, droit et sans tension, la pliure au ras du bord proche. Y poser des poids.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Du tissu plié, seul est coupé ce qui est aux lisières.
cutting-draw-no-tapes = Poser le tissu ({ $cloth }) sur la table, droit et sans tension, la pliure au ras du bord proche. Y poser des poids.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Bandes de coupe dans la largeur du tissu.
cutting-draw-turned = Tourner le tissu ({ $cloth }) d’un quart de tour et le tirer par-dessus les rubans, droit et sans tension, son bout coupé au ras du bord proche. Y poser des poids.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
cutting-draw-across = Tirer le tissu ({ $cloth }) le long de la table par-dessus les rubans, droit et sans tension, son bout coupé au ras du bout gauche. Y poser des poids.
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Les autres coupons de ce tissu se coupent pliés.
cutting-draw-across-open = Ouvrir la pliure : ce coupon se coupe en une seule épaisseur. { cutting-draw-across }
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
cutting-draw-turned-open = Ouvrir la pliure : ce coupon se coupe en une seule épaisseur. { cutting-draw-turned }
    .check = { cutting-draw.check }
    .remedy = { cutting-draw.remedy }
# Dits seulement comme parties des quatre ci-dessus.
cutting-draw =
    .check = Il est à plat, et ne glisse pas quand on le pousse.
    .remedy = Lever les poids, le tirer droit à nouveau et en poser davantage.
# Dit seulement dans les messages ci-dessous.
cutting-lane-count = { $lanes ->
    [one] { $lanes } bande de coupe
   *[other] { $lanes } bandes de coupe
 }
cutting-slit = { COUNT($tapes) ->
    [one] Couper le long du côté éloigné du ruban : { cutting-lane-count }. Là où le tissu cache un ruban, { cutting-line-put } d’un bout à l’autre.
   *[other] Couper le long du côté éloigné de chaque ruban : { cutting-lane-count }. Là où le tissu cache un ruban, { cutting-line-put } d’un bout à l’autre.
 }
# Le coupon est plus long que la table.
cutting-slit-beyond = { cutting-slit } Au bout de la table, faire avancer le tissu et continuer le long des mêmes rubans.
# Bandes de coupe à la lisière éloignée, ou, sur le tissu plié, aux deux, qui s’y superposent.
cutting-slit-selvedge = { $folded ->
    [yes] Épingler les deux lisières ensemble. À { $depth } d’elles, { cutting-line-put } d’un bout à l’autre, et couper le long de celle-ci à travers les deux épaisseurs : bandes de coupe { $lanes }.
   *[no] À { $depth } de la lisière éloignée, { cutting-line-put } d’un bout à l’autre, et couper le long de celle-ci : bande de coupe { $lanes }.
 }
    .check = Elle est à { $depth } de la lisière aux deux bouts et au milieu.
    .tolerance = { $off }
    .remedy = Mesurer encore une fois depuis la lisière avant de couper.
# $pieces : les marques des pièces.
cutting-selvedge-stays = Laisser la lisière sur { $pieces } : c’est le bord { $edge ->
    [top] supérieur
   *[bottom] inférieur
 }, fini tel quel.
# Bandes de coupe l’une sur l’autre, à côté de la pliure.
cutting-slit-fold = Couper aussi le long de la pliure : les bandes de coupe { $lanes } s’y tiennent.
# $layer : d’un tissu plié, où est la bande ; fold : elle contient la pliure, et sa hauteur est celle d’une fois ouverte.
cutting-lane-whole = { $layer ->
    [flat] La bande de coupe { $lane }, { $depth } de hauteur, est { $piece } : ne pas la couper.
    [fold] Ouvrir la bande de coupe { $lane }, qui contient la pliure. Elle a { $depth } de hauteur : c’est { $piece } : ne pas la couper.
    [upper] La bande de coupe { $lane }, épaisseur du dessus, { $depth } de hauteur, est { $piece } : ne pas la couper.
   *[under] La bande de coupe { $lane }, épaisseur du dessous, { $depth } de hauteur, est { $piece } : ne pas la couper.
 }
# Several lanes of one layer, each a piece as it comes off the table.
cutting-lanes-whole = Étiqueter ces bandes de coupe, qui ne se coupent pas davantage : { $lanes }.
# Said only inside the message above.
cutting-lane-named = la bande de coupe { $lane } est { $piece }
cutting-lane = { $layer ->
    [flat] Dans la bande de coupe { $lane }, { $depth } de hauteur, couper d’équerre, à partir d’un bout : { $cuts }.
    [fold] Ouvrir la bande de coupe { $lane }, qui contient la pliure. Elle a { $depth } de hauteur : y couper { $cuts }.
    [upper] Dans la bande de coupe { $lane }, épaisseur du dessus, { $depth } de hauteur, couper { $cuts }.
   *[under] Dans la bande de coupe { $lane }, épaisseur du dessous, { $depth } de hauteur, couper { $cuts }.
 }
# Un coupon court qui n’est qu’une bande : une règle suffit, sans ruban sur la table.
cutting-strip-off = Mesurer { $length } le long du bout coupé du coupon { $number }, y { cutting-line-put } d’équerre et couper le long de celle-ci : c’est { $piece }.
    .check = Il a { $length } de long à ses deux longs bords.
    .tolerance = { $off }
    .remedy = Rectifier le bout d’équerre.
cutting-lane-over = { $layer ->
    [flat] La bande de coupe { $lane }, { $depth } de hauteur, reste.
    [fold] La bande de coupe { $lane }, qui contient la pliure, reste.
    [upper] La bande de coupe { $lane }, épaisseur du dessus, { $depth } de hauteur, reste.
   *[under] La bande de coupe { $lane }, épaisseur du dessous, { $depth } de hauteur, reste.
 }
# Dits seulement dans les trois ci-dessus.
cutting-length-for = { $length } pour { $piece }

## Pièces placées librement

cutting-lay = Poser le tissu ({ $cloth }) à plat sur la table, envers dessus, un bout coupé à gauche et un côté qui avait une lisière devant soi : le côté proche. Y poser des poids.
    .check = Il est sans pli et sans tension.
cutting-lay-alike = Poser le tissu ({ $cloth }) à plat sur la table, n’importe quelle face dessus, un bout coupé à gauche et un côté qui avait une lisière devant soi : le côté proche. Y poser des poids.
    .check = { cutting-lay.check }
# Dit seulement dans les deux ci-dessous.
cutting-measure-on = Là où la table finit, { cutting-line-put } en travers et noter sa distance au bout coupé : puis faire avancer le tissu et continuer à mesurer depuis cette ligne.
cutting-lay-beyond = { cutting-lay } { cutting-measure-on }
    .check = { cutting-lay.check }
cutting-lay-alike-beyond = { cutting-lay-alike } { cutting-measure-on }
    .check = { cutting-lay.check }
cutting-panel = { $net ->
    [yes] Marquer { $mark } par des rangées d’épingles le long d’une règle :
   *[no] Tracer { $mark } à la craie et à la règle :
 } de { $near-end } à { $far-end } du bout coupé, de { $near-side } à { $far-side } du côté proche.
    .check = La pièce mesure { $length } de long des deux côtés et { $width } de large aux deux bouts.
    .tolerance = { $off }
    .remedy = Mesurer à nouveau depuis le bout et le côté, jamais de pièce à pièce.
cutting-round = Couper chaque pièce aux ciseaux le long de ses lignes, la plus à l’extérieur d’abord.
    .check = { $panels ->
        [one] { $panels } pièce coupée. Aucune coupe droite d’un côté à l’autre ne les sépare toutes.
       *[other] { $panels } pièces coupées. Aucune coupe droite d’un côté à l’autre ne les sépare toutes.
     }
cutting-part-end = { COUNT($marks) ->
    [one] Couper tout droit le long de la ligne à { $at } du bout coupé : { $marks } se détache.
   *[other] Couper tout droit le long de la ligne à { $at } du bout coupé : { $marks } se détachent.
 }
cutting-part-side = { COUNT($marks) ->
    [one] Couper tout droit le long de la ligne à { $at } du côté proche : { $marks } se détache.
   *[other] Couper tout droit le long de la ligne à { $at } du côté proche : { $marks } se détachent.
 }
cutting-over-end = Couper tout droit le long de la ligne à { $at } du bout coupé : ce qui est à côté de { $marks } reste.
cutting-over-side = Couper tout droit le long de la ligne à { $at } du côté proche : ce qui est à côté de { $marks } reste.
cutting-over-end-all = Couper tout droit le long de la ligne à { $at } du bout coupé : ce qui est à côté des pièces reste.
cutting-over-side-all = Couper tout droit le long de la ligne à { $at } du côté proche : ce qui est à côté des pièces reste.
cutting-trim = Couper ce qui reste à côté de { $marks }, le long des lignes.

## Après le dernier coup de ciseaux

# Nothing that is left is large enough for other work.
cutting-keep-small = Garder ce qui reste du tissu ({ $cloth }) jusqu’à la fin du vêtement : on y essaie les points et le fer, et on y taille de quoi raccommoder.
cutting-keep = Garder pour plus tard les chutes assez grandes du tissu ({ $cloth }), chacune étiquetée avec ses dimensions.
    .check = À garder : { $sizes }. Garder les plus petites jusqu’à la fin du vêtement, pour essayer les points et pour raccommoder.
# Dits seulement dans le message ci-dessus.
cutting-size = { $length } × { $width }
cutting-sizes = { $number } de { $length } × { $width }
