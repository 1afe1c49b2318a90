### Raidir une pièce à l’amidon, acheté prêt ou cuit à partir de fécule de maïs, à la brosse, au vaporisateur ou par trempage.
### $starch : le nom de l’amidon, ou de la fécule.

starch-title = Amidonner { PIECE($pieces) }
    .number = { $liquid }
starch-aim = { COUNT($pieces) ->
    [one] { PIECE($pieces, at: "start") } se tient évasée.
   *[other] { PIECE($pieces, at: "start") } se tiennent évasées.
 }
starch-caution-hot = L’amidon chaud ébouillante et colle : verser le mélange froid dans l’eau chaude, remuer avec une longue cuillère, et éloigner les enfants.
starch-caution-spray = L’amidon en bombe est inflammable : le pulvériser en plein air ou dans une pièce bien aérée, loin des flammes, des veilleuses, des cigarettes et des fers chauds, et ne pas respirer le brouillard.
starch-caution-flame = Un jupon de tulle brûle vite, amidonné ou non. Le sécher à l’air : ni sèche-linge chaud, ni cuisinière, veilleuse, radiateur, bougie ou feu ouvert à proximité. L’en tenir éloigné aussi quand on le porte.
starch-caution-warm-air = Un jupon de tulle brûle vite, amidonné ou non. L’air tiède vient seulement d’un sèche-cheveux tenu à la main, à la chaleur la plus douce, à { $air-far }, jamais laissé en marche : ni radiateur, ni cuisinière, veilleuse, bougie ou feu ouvert à proximité. L’en tenir éloigné aussi quand on le porte. Les règles locales contre le feu passent avant ce guide.

## Préparer l’amidon

starch-ready = Préparer { $liquid } d’amidon ({ $starch }) dans un bol, prêt à l’emploi ; s’il doit être dilué, selon son étiquette.
starch-ready-spray = Préparer { $liquid } d’amidon ({ $starch }), selon son étiquette, et en remplir un vaporisateur. En bombe, il est prêt tel quel.
starch-paste = Délayer { $cornflour } de fécule ({ $starch }) dans { $cold } d’eau froide. Une cuillère à soupe rase contient 15 ml.
    .check = Il ne reste aucun grumeau.
starch-cook = Porter { $hot } d’eau à ébullition et retirer du feu. Y verser lentement le mélange et remuer jusqu’à ce qu’il devienne translucide.
    .check = Il est translucide et sans grumeaux.
    .remedy = Encore blanc : remettre à chauffer et remuer. Des grumeaux : le passer à travers un linge.
starch-cool = Le laisser tiédir jusqu’à la chaleur de la main.
starch-try = L’essayer sur une chute et la laisser sécher.
    .check = Elle est aussi raide que voulu et ne montre aucune trace blanche.
    .remedy = Trop raide ou blanche : ajouter de l’eau. Trop molle : passer une seconde couche quand la première est sèche.

## L’appliquer

# Dite en premier, avant de préparer l’amidon.
# $last : aucune étape ne suit qui mesure depuis un fil vif.
starch-pins = { $last ->
    [yes] Compter les épingles et les aiguilles avant de mouiller le tissu. Ôter les fils vifs et toutes les marques : brosser la craie, faire partir le marqueur à l’eau.
   *[no] Compter les épingles et les aiguilles avant de mouiller le tissu. Ôter toutes les marques : brosser la craie, faire partir le marqueur à l’eau.
 }
    .check = Il y en a autant dans la boîte qu’au début, et aucune marque ne se voit.
    .remedy = Tâter chaque couture jusqu’à retrouver la dernière épingle : dans un tissu raide personne ne la sent, et elle rouille. L’amidon fixe une marque pour toujours.
starch-hang = Suspendre le vêtement tête en bas par son ourlet, ou le poser sur un fil en plein air, un vieux drap dessous.
starch-brush = Enduire { PIECE($pieces) } d’amidon à la brosse, une épaisseur à la fois. Tenir tout le reste à l’écart.
    .check = Le tissu est humide à cœur, sans goutte qui coule.
    .remedy = Tamponner les endroits trop mouillés avec un linge sec : ils sèchent en blanc.
starch-spray = Vaporiser { PIECE($pieces) } d’amidon à { $far } de distance, une épaisseur à la fois. Tenir tout le reste à l’écart.
    .check = { starch-brush.check }
    .remedy = { starch-brush.remedy }
starch-dip = Tremper { PIECE($pieces) } dans une bassine d’amidon, une épaisseur à la fois, jusqu’à ce que le tissu soit mouillé à cœur. Le presser entre les mains sans le tordre. Tenir tout le reste hors de la bassine.
    .check = { starch-brush.check }
    .remedy = { starch-brush.remedy }
starch-hang-wet = Suspendre le vêtement tête en bas par son ourlet, ou le poser sur un fil en plein air, un vieux drap dessous pour recueillir les gouttes.
starch-dry = Secouer les épaisseurs pour les séparer et laisser sécher à l’air, loin de toute chaleur.
    .check = Aucune épaisseur ne colle à une autre.
    .remedy = Les humidifier et les décoller.
starch-form = Mettre le vêtement humide, à l’endroit et debout, sur un mannequin ou sur un panier retourné posé sur un pied, et écarter les épaisseurs tout autour.
    .check = Chaque épaisseur se tient à distance de celle du dessous.
    .remedy = Là où deux se collent, les humidifier et les écarter.
starch-warm-air = Souffler de l’air tiède par le bas entre les épaisseurs, sèche-cheveux à la main, en tournant sans cesse, jusqu’à ce que le tissu ne soit plus mouillé.
    .check = Le tissu n’est jamais chaud au toucher.
    .remedy = Éloigner le sèche-cheveux.
starch-overnight = Le laisser la nuit sur le mannequin, sans chaleur.
    .check = Au matin, il est sec à cœur et garde sa forme quand on l’enlève.
    .remedy = Encore humide ou mou : le laisser plus longtemps, ou passer une seconde couche.
