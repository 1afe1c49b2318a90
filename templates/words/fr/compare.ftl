### Ce qui change au travail d’un vêtement à l’autre, dit par `furbelow compare`, et par `furbelow amend` d’un nouveau guide.

compare-alike = rien ne change au travail

## Titres

compare-numbers = nombres
compare-materials = matériaux
compare-totals = en tout
compare-steps = étapes

## Lignes ; ce que c’était et ce que c’est suit

compare-bought = { $material } à acheter
compare-finished = longueur finie
compare-cost = coût
compare-hours = heures
compare-layouts = nombre de fois que la table est préparée
compare-joins = raccords dans les bandes
compare-actions = gestes à faire
compare-price = prix à demander

compare-came = nouveau{ "\u00A0" }: { $after }
compare-went = disparaît, était { $before }

compare-step = { $kind ->
    [new] nouveau{ "\u00A0" }: { $title }
    [gone] disparaît{ "\u00A0" }: { $title }
   *[changed] changé{ "\u00A0" }: { $title }
 }
