### Mises en garde : chacune se tient devant la première étape qu’elle concerne.

caution-pins = Retirer chaque épingle avant qu’elle n’arrive sous l’aiguille, et les recompter dans la boîte.
caution-clips = Retirer chaque pince à tissu avant qu’elle n’arrive sous l’aiguille, et les recompter dans la boîte.
caution-hand-needle = Pour coudre à la main : porter un dé à coudre, et piquer l’aiguille au repos dans un pique-aiguilles, jamais dans ses vêtements.
caution-fingers = Garder les doigts à côté du pied-de-biche, jamais devant l’aiguille.
caution-knives = Les couteaux de la surjeteuse coupent les doigts comme le tissu : garder les mains à côté du pied-de-biche, jamais devant.
caution-needle-teeth = Une aiguille qui heurte les dents ou un arrêt de la fermeture casse et saute : tourner là le volant à la main et porter des lunettes. Avant le curseur, s’arrêter aiguille piquée, lever le pied, faire passer le curseur et continuer.
caution-ripper = Un découseur dérape : mettre une épingle en travers à chaque bout de la fente et couper vers une épingle, jamais vers sa main.
caution-ripper-row = Un découseur dérape : poser l’ouvrage sur la table et le pousser le long de la piqûre, jamais vers sa main.
caution-awl = Un poinçon traverse une main comme un tissu : le pousser dans du liège ou une serviette pliée sur la table, jamais vers la paume ni sur les genoux.
caution-cutting = Couper en s’éloignant du corps et de l’autre main, et fermer ou couvrir ciseaux et cutter rotatif chaque fois qu’on les pose.
caution-shears = Les ciseaux coupent les doigts comme le tissu : tenir l’autre main bien loin des lames.
caution-iron = Le fer et sa vapeur brûlent : tenir les doigts loin de la pliure, et poser le fer debout entre deux coups de fer, et l’éteindre quand on passe à autre chose.
caution-iron-marks = La chaleur fixe pour de bon certains feutres et craies grasses : essayer d’abord craie, feutre et fer sur une chute, et ôter chaque repère avant que le fer n’en approche, sauf dans les marges de couture.
# Le tissu fond : nylon, acétate, ou une fibre inconnue.
caution-iron-melts = { caution-iron } Le nylon et le tulle fondent sous un fer chaud et collent à la peau : peu de chaleur, pas de vapeur, une pattemouille sèche, et ne jamais repasser sur le corps.

## Épingles et cordons à la taille

caution-safety-pin = Fermer l’épingle à nourrice avant de la lâcher.
caution-safety-pin-last = Fermer l’épingle à nourrice avant de la lâcher, et retirer de la coulisse jusqu’à la dernière épingle.
caution-no-flame-on-ends = Ne jamais faire fondre les bouts à la flamme : nylon et polyester gouttent, brûlent la peau et enflamment le tulle. Des points, un repli ou de la colle textile tiennent aussi bien. La colle textile dégage des vapeurs : ouvrir une fenêtre, la tenir loin des flammes et la laisser sécher.
caution-cords = Les cordons se prennent dans les portes, les ascenseurs et les toboggans. Pour les enfants jusqu’à 14 ans, les bouts à la taille ne peuvent pendre que de { $open } quand le vêtement est à plat et ouvert, et de { $drawn-in } quand il est resserré (EN 14682:2007 ; une édition plus récente est en vigueur). Aucun cordon sous l’entrejambe, et aucun à l’encolure ni noué dans le dos. Aux États-Unis, les bouts des vestes et des hauts ne peuvent dépasser que de { $united-states } quand la coulisse est à sa pleine largeur, sans nœud ni arrêt-cordon (ASTM F1816-18). Les règles de sécurité locales passent avant ce guide.
caution-tight-elastic = Un élastique trop serré coupe la circulation. Deux doigts doivent passer dessous, et il ne doit laisser aucune marque profonde. Un enfant ne le dira pas toujours : regarder au bout de quelques minutes, et l’ôter tout de suite là où la peau blanchit ou picote.
caution-loops = Les brides ne pendent qu’à l’intérieur du vêtement, à plat contre lui : sur un enfant, une bride libre s’accroche.
caution-small-parts = Un petit enfant peut s’étouffer avec une attache mal cousue. Coudre chacune de sorte qu’une forte traction ne la déplace pas, ou prendre des liens ou un élastique.
caution-steam = La vapeur ébouillante : tenir l’autre main à l’écart, et poser le fer debout entre deux rangs. Le nylon et le tulle rétrécissent et fondent : les essayer d’abord sur la bande d’essai, de plus loin.

## Arcs et cerceaux

caution-arc = Couper un arc à petits coups, les ciseaux à plat sur la table, l’autre main bien en arrière des lames.
caution-short-bites = Couper à petits coups, les ciseaux à plat sur la table, l’autre main bien loin des lames.
caution-boning = Porter des lunettes de protection pour couper une baleine : les bouts volent. Coiffer ou arrondir chaque bout avant de l’enfiler ; un bout nu traverse le tissu et la peau. Un cerceau se relève quand on s’assoit, fait trébucher dans l’escalier et balance vers les flammes : l’essayer avant de le porter.

## Avant le travail : mises en garde pour le vêtement entier

caution-garment-flame-sheer = Le tulle et les autres tissus transparents prennent feu en un instant et brûlent en quelques secondes, plus encore après lavage. Une jupe ample s’écarte du corps et peut atteindre une flamme sans que l’on s’en aperçoive. Tenir le vêtement loin des bougies, des feux ouverts, des radiateurs, des flammes de gaz et des cigarettes, pendant qu’on le coud comme quand on le porte. Y coudre une étiquette : TENIR ÉLOIGNÉ DU FEU. { caution-garment-finish } { caution-garment-local }
caution-garment-flame-light = Le coton, le lin et la viscose légers prennent feu aussi vite que le tulle et brûlent aussi vite. Une jupe ample s’écarte du corps et peut atteindre une flamme sans que l’on s’en aperçoive. Tenir le vêtement loin des bougies, des feux ouverts, des radiateurs, des flammes de gaz et des cigarettes, pendant qu’on le coud comme quand on le porte. Y coudre une étiquette : TENIR ÉLOIGNÉ DU FEU. { caution-garment-finish } { caution-garment-local }
caution-garment-flame = Une jupe ample s’écarte du corps et peut atteindre une flamme sans que l’on s’en aperçoive : se tenir loin des bougies, des feux et des radiateurs. { caution-garment-local }
# Dits seulement dans les trois ci-dessus.
caution-garment-finish = Un apprêt ignifuge part au lavage : demander combien de lavages il tient, et le faire refaire à temps.
caution-garment-local = Les règles locales et l’avis d’une personne agréée, d’un responsable de la sécurité incendie pour une scène ou une salle, passent avant ce guide.
caution-garment-blades = Ciseaux et cutter rotatif : couper en s’éloignant du corps, fermer ou couvrir la lame chaque fois qu’on les pose, et garder ses chaussures aux pieds.
caution-garment-needles = Compter les épingles et les aiguilles en les sortant et en les rangeant. Chercher les épingles oubliées dans le vêtement fini avant que quiconque ne l’enfile. Ôter le pied de la pédale avant d’enfiler ou de changer une aiguille.
caution-garment-needles-clips = Compter épingles, pinces et aiguilles en les sortant et en les rangeant. Chercher celles qu’on a oubliées avant que quelqu’un n’enfile l’ouvrage fini. Ôter le pied de la pédale avant d’enfiler ou de changer une aiguille.
caution-garment-hem = Un ourlet long fait trébucher dans les escaliers et sur scène, et une traîne balaie les feux. Monter et descendre un escalier avec avant de le porter la première fois.
caution-garment-dye = Suivre la notice du fabricant de la teinture et les règles locales pour manipuler la teinture et vider le bain. Teinture en poudre : ne pas la respirer. Masque et gants ; mouiller la poudre avant qu’elle ne vole. Ne prendre ni casserole, ni cuillère, ni mesure qui serve à la nourriture. Un bain de teinture ébouillante. Soulever le tissu mouillé avec des pinces, éloigner les enfants, aérer la pièce.
caution-garment-child = Pour un enfant de moins de 14 ans : ne laisser pendre ni cordon, ni bout de ruban, ni bride à la taille ou sous l’ourlet, et coudre solidement les petites pièces. Les vêtements et les vêtements de nuit pour enfants ont leurs propres règles ; se renseigner avant d’en vendre ou d’en prêter.
caution-train = Une traîne fait trébucher qui la porte et qui marche derrière. La relever ou la porter avant un escalier, sur une scène sombre et près de machines.
caution-bustle-cords = Des cordons au dos d’une jupe se prennent dans les portes et sous les roues. Pas sur une jupe d’enfant ; y accrocher plutôt de courtes brides.
