### Traiter des pièces avec un produit contre le feu, comme le dit son fabricant.
### $agent : le nom du produit ; $liquid : combien il en faut, prêt à l’emploi.

flame-retardant-title = Traiter contre le feu { PIECE($pieces) }
    .number = { $liquid }
flame-retardant-aim = { PIECE($pieces, at: "start") } : imprégné de { $agent } et séché. Cela brûle moins vite, jusqu’au lavage.
flame-retardant-caution = Aucun traitement ne met un tissu à l’abri du feu : il brûle quand même. L’étiquette et la fiche de sécurité du produit, les règles locales et l’avis du responsable incendie d’une scène ou d’une salle passent avant ce guide. Ne jamais l’essayer soi-même à la flamme : le faire contrôler.
flame-retardant-caution-skin = Ces produits irritent la peau et les yeux : porter des gants et des lunettes, ouvrir une fenêtre, tenir éloignés les enfants et les aliments, et ne rien jeter autrement que le dit l’étiquette.
flame-retardant-caution-mist = Ne pas respirer le brouillard : pulvériser dehors ou dans une pièce bien aérée, avec le masque que demande l’étiquette.
flame-retardant-caution-child = Certains produits ne sont pas faits pour les vêtements, ou pas pour les enfants ni pour la peau : n’employer celui-ci que si son étiquette le permet, et seulement par-dessus d’autres vêtements si elle n’en dit pas plus.

flame-retardant-read = Lire l’étiquette du produit ({ $agent }) : si elle nomme la fibre, comment le mélanger, combien en prend un poids de tissu, et ce qu’il fait aux couleurs. Laver et sécher une dernière fois { PIECE($pieces) }.
    .check = L’étiquette nomme la fibre et permet les vêtements.
    .remedy = Sinon, ne pas l’employer : prendre un produit qui convient.
flame-retardant-mix = Préparer { $liquid } de { $agent } prêts à l’emploi, comme le dit l’étiquette. Traiter d’abord une chute et la laisser sécher.
    .check = Elle n’a pas de taches, ne colle pas et a gardé sa couleur.
    .remedy = Si elle a changé, demander au fabricant avant de continuer.
flame-retardant-dip = Plonger dans le produit { PIECE($pieces) } et chasser tout l’air. Laisser immergé le temps que dit l’étiquette, puis presser également. Ne pas rincer.
    .check = C’est mouillé partout, sans endroit clair.
    .remedy = Replonger là où un endroit est resté sec.
flame-retardant-spray = Suspendre au-dessus d’un drap { PIECE($pieces) } et pulvériser des deux côtés, épaisseur par épaisseur, jusqu’à ce que cela goutte.
    .check = C’est mouillé partout, sans endroit clair.
    .remedy = Pulvériser encore là où un endroit est resté sec.
flame-retardant-dry = Laisser égoutter et sécher suspendu, à l’air, le temps que dit l’étiquette : loin des chauffages et des flammes.
    .check = C’est sec partout et sans croûte blanche.
    .remedy = Brosser légèrement une croûte en plein air.
flame-retardant-keep = Mettre la chute traitée dans un sachet avec le nom du produit ({ $agent }) et la date, pour qui contrôlera le vêtement.
flame-retardant-label = Écrire sur un ruban de coton, au feutre indélébile : traité, la date, { $agent }, NE PAS LAVER. Le coudre à côté de l’autre étiquette.
    .check = Qui le porte ou le range peut la lire. On le traite et le contrôle à nouveau après chaque lavage, et une fois par an.
