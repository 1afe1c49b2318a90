# Un livret : un seul guide pour toutes les tailles d’un modèle.

booklet-whose = Tailles { $sizes }
booklet-range = { $first } à { $last }
# Devant un texte qui vaut pour certaines tailles.
# $count (number) : combien de tailles.
booklet-version = { $count ->
    [1] Taille { $sizes }{ "\u00A0" }:
   *[other] Tailles { $sizes }{ "\u00A0" }:
}
booklet-only = { $count ->
    [1] Pour la taille { $sizes } seulement.
   *[other] Pour les tailles { $sizes } seulement.
}

booklet-how = Choisis ta taille d’après tes mesures et entoure-la dans chaque tableau. Là où une phrase porte une lettre, ton nombre se trouve derrière cette lettre dans le tableau «{ "\u00A0" }Tes nombres{ "\u00A0" }» de la même opération, dans la colonne de ta taille. Les lettres recommencent à chaque opération. Écris ton nombre sur la ligne avant de commencer.
booklet-measure-told = Sur des vêtements fins, le mètre à l’horizontale et sans serrer, une autre personne lisant. Prends la taille dont tes mesures sont le plus proches ; si elles s’en écartent de plus d’un travers de doigt, fais faire un guide pour toi.
booklet-ring = Entoure ta taille
booklet-numbers = Tes nombres
booklet-in-head = en-tête
booklet-in-drawing = dessin, { $sentence }
# How far a number may be off. $what: which number.
booklet-off = { $what }, tolérance
booklet-part-of-drawing = dans le dessin « { $drawing } »

booklet-cut-for = { $count ->
    [1] Coupe, taille { $sizes }
   *[other] Coupe, tailles { $sizes }
}
booklet-cut-all = Coupe, toutes les tailles
booklet-cut-told = Chaque taille se coupe d’après son propre plan. Cherche le tien et passe les autres.
booklet-plan-for = { $count ->
    [1] Plan des séances, taille { $sizes }
   *[other] Plan des séances, tailles { $sizes }
}
booklet-width = { $cloth }, en { $width } de large
booklet-widths = Le même tissu selon sa largeur
booklet-widths-told = La coupe est prévue pour la largeur de la liste ci-dessus. Pour une autre largeur, fais faire le guide de ta taille.

booklet-drawn-for = Dessiné pour la taille { $size }.
booklet-drawn-of = { $count ->
    [1] Ceci vaut pour la taille { $sizes }.
   *[other] Ceci vaut pour les tailles { $sizes }.
}

booklet-drawn-each = Le même pour chaque taille
booklet-drawings-for = Dessins, taille { $size }

booklet-proved = Chaque taille a été prouvée avant d’être écrite.

# À l’écran, où l’on choisit une taille et où ses nombres entrent dans les phrases.
booklet-choose = Ta taille
booklet-every = Toutes les tailles
booklet-chosen = Taille { $size }{ "\u00A0" }: ses nombres sont dans les phrases, et ce qui n’est pas pour elle est caché.
booklet-not-chosen = Choisis ta taille, et ses nombres entrent dans les phrases. Ce choix ne reste que sur cet appareil.
