### La liste des outils ; `.why` dit à quoi chacun sert.

## Machines

tool-machine = machine à coudre avec point droit
    .why = coutures, rangs de fronces, surpiqûres
tool-zigzag = point zigzag
    .why = { $uses }
# Dits seulement dans le message ci-dessus.
tool-zigzag-neatening = surfiler
tool-zigzag-elastic = joindre l’élastique
tool-zigzag-bars = petites brides d’arrêt
tool-zigzag-buttonhole = la boutonnière
tool-zigzag-own = là où une étape le dit
tool-overlocker = surjeteuse, enfilée
    .why = surfiler
tool-attachment = plisseur
    .why = froncer
tool-hand-needle = aiguille à main et dé à coudre
    .why = coudre à la main
tool-iron = fer à repasser, planche à repasser
    .why = repasser coutures et pliures
tool-press-cloth = deux pattemouilles : coton fin et propre
    .why = entre le fer et un tissu qui craint la chaleur ; l’une reste sèche
tool-zip-foot = pied pour fermeture à glissière
    .why = piquer le long des dents
tool-hemming-foot = pied ourleur
    .why = rouler l’ourlet
tool-fire-label = ruban de coton, feutre rouge qui ne part pas au lavage
    .why = l’étiquette qui met en garde contre le feu
tool-label = ruban de coton, feutre qui ne part pas au lavage
    .why = l’étiquette
# $size : la taille métrique et, entre parenthèses, l’ancien numéro.
tool-needle = aiguille à machine { $size }, neuve
    .why = passer le tissu le plus épais et la couture la plus épaisse

## Petit outillage

tool-pinking-shears = ciseaux à cranter
    .why = surfiler
tool-pins = épingles, { $number } environ
    .why = tenir les bords ; les compter
tool-clips = pinces à tissu, { $number } environ
    .why = tenir les bords ; les compter
# Là où des pinces tiennent les bords, les bouts de fil s’enroulent quand même autour d’épingles.
tool-tail-pins = épingles, { $number } environ
    .why = tenir les bouts de fil ; les compter
# Les pinces tiennent les bords ; un repli au milieu du tissu s’épingle.
tool-flat-pins = épingles, { $number } environ
    .why = tenir les replis que les pinces n’atteignent pas ; les compter
tool-tape-measure = mètre ruban
    .why = mesurer
tool-markers = craie tailleur, marqueur textile lavable
    .why = marquer dans la marge de couture ; sur un filet, que la craie traverse, le marqueur, ou une boucle de fil vif ; les essayer tous deux sur une chute et la laver
tool-shears = ciseaux à tissu, petits ciseaux
    .why = couper le tissu, couper les fils
tool-ruler = longue règle, quelque chose qui ait un angle droit
    .why = lignes droites et bouts d’équerre
tool-tape = ruban adhésif en papier, étiquettes de papier, stylo et papier
    .why = lignes de coupe sur la table, étiquettes des pièces, nombres à noter
tool-weights = poids, comme des boîtes de conserve pleines
    .why = tenir le tissu en place pendant la coupe
tool-seam-ripper = découseur
    .why = découdre
tool-blunt-needle = aiguille à main à bout rond, fil d’une couleur vive
    .why = arrêter les fils, marquer les coutures de côté
tool-blunt-stick = baguette à bout rond, comme une aiguille à tricoter
    .why = pousser les coins
tool-safety-pins = deux épingles à nourrice
    .why = enfiler l’élastique, tenir son recouvrement
tool-safety-pin = épingle à nourrice ou passe-lacet
    .why = enfiler le cordon
tool-small-safety-pins = petites épingles à nourrice, une par ruban de relevage
    .why = tenir les bouts des cordons
tool-bodkin = passe-lacet
    .why = enfiler dans une coulisse ou une dentelle
tool-awl = poinçon, liège
    .why = percer les trous
tool-eyelet-tool = outil de pose des œillets
    .why = fermer œillet et rondelle
tool-glue = colle textile
    .why = bouts coupés qui ne doivent pas s’effilocher
tool-large-paper = grande feuille de papier
    .why = le centre d’un arc à côté du tissu

## Pour les baleines

tool-eye-protection = lunettes de protection
    .why = couper les baleines
tool-bone-cutters = pince coupante solide, qui convienne aux baleines
    .why = couper les baleines
tool-bone-caps = embouts ou ruban solide pour les bouts des baleines
    .why = des bouts qui ne traversent pas

## Pour l’amidon

tool-brush = large brosse douce, bol
    .why = amidonner
tool-spray = vaporisateur ou bombe
    .why = amidonner
tool-bowl = bassine ou cuve où tient la pièce
    .why = amidonner
tool-pan = casserole, longue cuillère
    .why = cuire l’amidon
tool-measuring-jug = verre doseur
    .why = mesurer les liquides
tool-scale = balance au dixième de gramme
    .why = peser la teinture
tool-dye-pan = casserole, tasse, cuillère et pinces réservées à la teinture, jamais à la nourriture
    .why = teindre
tool-gloves = gants et masque antipoussière
    .why = teinture en poudre et bain chaud
tool-sheet = vieux drap, linge sec
    .why = recueillir et tamponner ce qui goutte
tool-hair-dryer = sèche-cheveux à main
    .why = souffler de l’air tiède entre les épaisseurs
tool-form = mannequin, ou panier et pied
    .why = laisser sécher le vêtement en forme
tool-board = planche rigide
    .why = sécher le galon sans plis
# Whatever is made is hung up and measured at the end.
tool-hanger = cintre à pinces
    .why = suspendre le vêtement
