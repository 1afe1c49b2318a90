### Ce qui a été prouvé avant la coupe, et comment : une affirmation, et ce que la répétition a montré.

proof-sizes = Les cotes de coupe moins les coutures et les replis sont les cotes finies
proof-sizes-measured = { $pieces ->
    [one] remesuré sur { $pieces } sorte de pièce
   *[other] remesuré sur { $pieces } sortes de pièces
 }

proof-gap = L’ouverture pour l’élastique était ouverte à temps et est fermée
proof-gap-closed = fermé : { $gaps }
proof-gap-none = aucune coulisse n’a d’ouverture
# Dits seulement dans « fermé ».
proof-gap-in = { $gap } dans { PIECE($piece) }
proof-gap-in-cord = { $gap } dans { PIECE($piece) }, là où sort le cordon
proof-gap-in-elastic = { $gap } dans { PIECE($piece) }, là où sort l’élastique
proof-seam-gaps = Une ouverture laissée dans une couture est garnie ou fermée
proof-seam-gap-filled = { $gap } dans la couture { PIECE($piece, case: "of") }

proof-gathers = Chaque bord froncé est tenu par une couture
proof-gathers-sewn = { $edges ->
    [one] { $edges } bord froncé est pris dans une couture
   *[other] { $edges } bords froncés sont pris dans une couture
 }

proof-hem-level = L’ourlet tombe d’aplomb
proof-hem-above-floor = { PIECE($piece) } finit à { $height } du sol
proof-hem-above-floor-places = { PIECE($piece) } finit à { $front } du sol devant, { $side } sur les côtés et { $back } derrière

proof-edges-match = Les bords s’accordent à chaque couture
proof-edges-matched = { $seams ->
    [one] { $seams } couture joint des bords de même longueur
   *[other] { $seams } coutures joignent des bords de même longueur
 }

proof-hidden = Ce qui est dessous reste caché
proof-hidden-above = { PIECE($piece) } finit à { $left } au-dessus de l’ourlet
proof-hidden-layers = de l’extérieur vers l’intérieur, les épaisseurs finissent à { $ends }

proof-one-garment = Chaque pièce sert et le vêtement est d’un seul tenant
proof-one-garment-pieces = { $pieces ->
    [one] l’unique pièce est cousue
   *[other] les { $pieces } pièces se tiennent
 }

proof-opening = Il passe les hanches, et il tient à la taille
proof-opening-flat = { $flat } à plat pour { $girth } de corps
proof-opening-cord = un cordon le resserre
proof-opening-stretch = l’élastique s’étire de { $stretch }
proof-opening-stretch-rated = l’élastique s’étire de { $stretch } sur ses { $rated }
proof-opening-band = ouvert, { $way-in } de tour pour { $passes } ; fermé, { $waist } à la taille
proof-opening-none = le vêtement n’a ni coulisse ni fente

proof-no-raw-edge = Aucun bord ne reste à s’effilocher
proof-edges-finished = { $edges ->
    [one] { $edges } bord est ourlé, surfilé, cousu ou enfermé
   *[other] { $edges } bords sont ourlés, surfilés, cousus ou enfermés
 }
proof-edges-stay-raw = { $edges } peuvent rester bruts, car le tissu ne s’effiloche pas

proof-no-raw-margin = Aucune marge de couture ne reste à s’effilocher
proof-margins = de { $seams } coutures, { $neatened } surfilées, { $enclosed } enfermées et { $free } dans un tissu qui ne s’effiloche pas

proof-used = Tout ce qui s’achète sert
proof-used-materials = { $materials ->
    [one] { $materials } matériau sert
   *[other] { $materials } matériaux servent
 }
proof-used-materials-thread = { $materials ->
    [one] { $materials } matériau et le fil servent
   *[other] { $materials } matériaux et le fil servent
 }

proof-elastic = L’élastique porte le poids du vêtement
proof-elastic-none = sans objet : aucun élastique n’est enfilé à une taille connue
proof-elastic-no-weight = sans réponse : un tissu n’a pas de poids indiqué, celui du vêtement est donc inconnu
proof-elastic-load = { $weight } environ sur un élastique de { $wide } de large, plus court que la taille de { $less }
proof-elastic-limit = jusqu’à { $limit }, tout élastique plus court que la taille convient
proof-elastic-limit-heavy = jusqu’à { $limit }, tout élastique plus court que la taille convient, au-delà, un élastique plus court de { $usual }

proof-thickness = Aucune couture n’est plus épaisse que la machine ne l’admet
proof-thickest = la plus épaisse fait { $thick } environ
proof-thickest-none = rien n’est assemblé

proof-clear = Rien n’est en travers d’autre chose
proof-clear-things = { $things ->
    [one] { $things } chose est posée sur le tissu
   *[other] { $things } choses sont posées sur le tissu, chacune à l’écart des autres
 }

proof-numbers = Chaque nombre peut se coudre et servir
proof-numbers-within = { $numbers ->
    [one] { $numbers } nombre est dans ses limites
   *[other] { $numbers } nombres sont dans leurs limites
 }

proof-fullness = Le tissu se prête à l’ampleur à chaque ligne
proof-fullness-held = { $stretches ->
    [one] { $stretches } passage est tenu comme son tissu le permet
   *[other] { $stretches } passages sont tenus comme leur tissu le permet
 }

proof-length = Les hauteurs ensemble font la longueur finie
proof-length-sum = { $depths } = { $length }

proof-rings = Chaque rond passe le corps et laisse de la place où il est
proof-rings-passed = { $rings ->
    [one] { $rings } rond sous le haut, { $narrowest } une fois ouvert
   *[other] { $rings } ronds sous le haut, le plus étroit { $narrowest } une fois ouvert
 }
proof-rings-none = aucun rond n’est sous le haut
proof-rings-no-hips = sans réponse : le fichier ne mesure pas les hanches

proof-held = Quelque chose le tient en haut
proof-held-ring = { EDGE($edge, at: "start") }, { $rest } au repos
proof-held-cord = un cordon { EDGE($edge, case: "to") }
proof-held-tied = un cordon que l’on noue autour de la taille
proof-held-band = une ceinture qui se ferme
proof-held-straps = des bretelles sur les épaules
proof-held-none = rien de connu

proof-way-round = Le tissu montre son endroit et tombe dans le bon sens
proof-way-round-shown = chaque épaisseur et chaque motif a été regardé

proof-no-bag = Ce qui est cousu ensemble en haut et en bas est de même longueur entre les deux
proof-no-bag-shown = aucune épaisseur ne poche

proof-rows-covered = Un rang qui doit cacher la couture du rang de dessous retombe par-dessus
proof-rows-covered-by = { PIECE($row, at: "start") } retombe de { $over } sur la couture de dessous

proof-measures = Les mesures du corps ne sont pas échangées
proof-measures-shown = taille, hanches et hauteurs ont été comparées

proof-ends = Les bouts libres n’atteignent pas le sol et conviennent à qui les porte
proof-ends-shown = cordons, rubans et nœuds ont été suivis jusqu’à leurs bouts
proof-held-by-maker = autre chose, comme le dit le fichier

# La raison est à côté, dans les mots de qui a écrit le fichier.
proof-accepted = Voulu ainsi

proof-heat = Rien n’est repassé plus chaud qu’il ne le supporte
proof-heat-shown = à chaque fois, le fer est réglé pour le plus fragile de ce qu’il peut toucher
