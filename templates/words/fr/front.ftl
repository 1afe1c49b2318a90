### Les premières pages : l’ouvrage en un coup d’œil, le plan des séances, la prise de mesures, le vocabulaire ; et l’entretien.

## En un coup d’œil

# L'ours : qui a dessiné le vêtement, quelle version du guide c'est, et à quelles conditions il se transmet.
front-author = Création
front-version = Version
front-licence = Licence
front-size = Taille
# $measures : les mesures du corps pour lesquelles le guide est fait.
front-size-with = { $whose } : { $measures }
front-measure = { $name } { $value }
front-length = Longueur
front-length-hem = { $length }, tour d’ourlet { $hem }
front-cloth = Tissu
front-cloth-of = { $cloth } { $amount }
front-cost = Coût des fournitures
front-cost-without = { $cost }, sans { $materials }
front-time = Temps
front-time-waits = { $time }, et en plus { $waits }
front-wait-wash = laver et sécher avant la coupe
front-wait-hang = laisser pendre une nuit avant { $place }
front-wait-dry = { $overnight ->
    [yes] laisser sécher une nuit à { $place }
   *[no] laisser sécher à { $place }
 }
front-weight = Poids
front-skill = Niveau
front-skill-hand = savoir coudre à la main
front-skill-straight = savoir piquer droit à la machine
front-skill-zigzag = savoir piquer droit et au zigzag
front-skill-overlocker = savoir piquer droit et se servir d’une surjeteuse
# $can : l’un de ceux du dessus. $place : la lettre du premier travail de fronces.
front-skill-taught = { $can } ; les fronces s’apprennent à { $place }
front-cutting = Coupe
# $waits: what takes hours in this sitting and is no work.
front-sitting-waits = et en plus { $waits }

## Prendre les mesures

front-how = { $name ->
    [height] du sommet de la tête tout droit jusqu’au sol, sans chaussures
    [neck-girth] autour de la base du cou
    [chest-girth] à l’horizontale, au plus fort de la poitrine, sous les bras
    [waist-girth] à l’horizontale, à mi-distance entre la dernière côte et le haut de l’os de la hanche
    [waist-height] de là tout droit jusqu’au sol, sans chaussures
    [hip-girth] à l’horizontale, au plus fort du bassin
    [hip-height] de là tout droit jusqu’au sol, sans chaussures
    [hip-depth] de la taille au plus fort du bassin
   *[knee-height] du milieu de la rotule tout droit jusqu’au sol
 }
front-floor = sol, sans chaussures
front-drawn = { $number } : { $how }
front-measuring = Où passe le mètre ruban.
front-measuring-alt = Une personne debout, vue de face, avec une ligne numérotée pour chaque mesure. { $lines }.

## Vocabulaire

term-right-side = endroit, envers
    .means = la face du tissu qui se voit quand on porte l’ouvrage, et l’autre
term-margin = marge de couture
    .means = le tissu entre une couture et son bord coupé
term-selvedge = lisière
    .means = le bord ferme des deux côtés du tissu tel qu’il se vend
term-sew-back = point d’arrêt
    .means = deux ou trois points en arrière sur les derniers, pour que la couture ne s’ouvre pas
term-gore = lé évasé
    .means = un panneau de jupe plus large à l’ourlet qu’en haut
term-baste = bâtir
    .means = coudre à longs points qui tiennent un temps et que l’on retire ensuite
term-lap = rabat
    .means = un pli de tissu qui recouvre quelque chose et le cache
term-interfacing = entoilage
    .means = un tissu raide, encollé d’un côté, que l’on fixe au fer derrière une pièce pour lui donner de la tenue
term-bustle = relevage
    .means = les plis du dos dans lesquels une traîne est relevée
term-gather = froncer
    .means = resserrer un long bord sur des fils jusqu’à la longueur d’un bord plus court
term-run = tronçon
    .means = un rang de points longs d’un repère au suivant
term-bobbin-thread = fil de canette
    .means = le fil du dessous d’un rang ; c’est lui que l’on tire
term-ease = soutenir
    .means = répartir un peu de longueur en trop entre les épingles, sans prendre de pli
# So far as a hand is wide: how much of a row is unpicked, and how far a tape goes on. $hand: its width.
term-hand = largeur de main
    .means = environ { $hand }
term-neaten = surfiler
    .means = coudre autour d’un bord coupé pour qu’il ne s’effiloche ni ne gratte
term-topstitch = surpiquer
    .means = piquer sur l’endroit un rang qui maintient ce qui est dessous
term-raw-edge = bord à vif
    .means = un bord tel qu’il a été coupé
term-casing = coulisse
    .means = un passage de tissu pour un élastique ou un cordon
term-strip = bande
    .means = une longue pièce droite, coupée d’un seul tenant ou en segments assemblés
term-offcut = chute
    .means = ce qui reste du tissu une fois les pièces coupées ; on y essaie le point et la chaleur
term-bodkin = passe-lacet
    .means = une aiguille plate et sans pointe que l’on pousse dans une coulisse ; une épingle à nourrice fermée convient aussi
term-ring = rond
    .means = une pièce dont les deux bouts sont cousus ensemble
term-layer = épaisseur
    .means = l’une des pièces posées l’une sur l’autre et cousues comme une seule

## Entretien

# $fibres : celles de ses tissus.
after-wash = Fibres : { $fibres }. Laver comme le demande la plus délicate. Si aucune étiquette ne le dit, à la main à l’eau tiède, sans tordre, et suspendre pour sécher.
    .head = Lavage
# $places : les lettres des travaux d’amidonnage.
after-starch = L’amidon part au lavage. Amidonner de nouveau après chaque lavage, comme à { $places }.
    .head = Amidonner de nouveau
after-store = Suspendre propre et sec, par la taille, loin des radiateurs et des flammes. Ne pas aplatir : ce qui reste longtemps plié garde les plis.
    .head = Rangement
after-label = { $fire ->
    [yes] Écrire sur un second ruban, et le coudre à la main à côté de celui qui met en garde contre le feu : le nom ou la taille, l’année, { $fibres }.
   *[no] Écrire sur un ruban, et le coudre à la main à l’intérieur de la taille : le nom ou la taille, l’année, { $fibres }.
 }
    .head = Étiquette
