### Le meilleur choix dans des limites, dit par `furbelow fit`. $limit, $limits, $aims, $choices, $options : tels qu’ils sont tapés.

fit-asked = { $garment }{ "\u00A0" }: { $aims }, avec { $limits }
fit-asked-no-limit = { $garment }{ "\u00A0" }: { $aims }, sans limite
fit-make = à faire avec { $options }
fit-no-better = rien de mieux{ "\u00A0" }: avec { $choices }, c’est manqué, car { $why }
fit-none = aucun vêtement de ces choix ne respecte cela
fit-nearest = le plus proche{ "\u00A0" }: { $choices }
fit-would-do-all = il suffirait de { $limits } au lieu de tout ce qui est manqué
fit-would-do = { COUNT($kept) ->
    [0] il suffirait de { $instead } au lieu de `{ $limit }`, avec { $choices }
   *[other] il suffirait de { $instead } au lieu de `{ $limit }`, en gardant { $kept }, avec { $choices }
 }

## Ce qu’il faut

fit-amount = { $what }{ "\u00A0" }: { $amount }
fit-amount-of = { $side ->
    [under] { $what }{ "\u00A0" }: { $amount } sur { $limit }, { $spare } de moins
   *[over] { $what }{ "\u00A0" }: { $amount } sur { $limit }, { $spare } de plus
 }
fit-cost = coût
fit-hours = heures
# $fault : un message des preuves, en anglais.
fit-refused-by = le vêtement ne peut pas être fait{ "\u00A0" }: { $fault }
fit-missed = { $side ->
    [under] { $what } arrive à { $came-to }, { $by } de trop peu
   *[over] { $what } arrive à { $came-to }, { $by } de trop
 }
fit-missed-at-least = { $side ->
    [under] { $what } arrive à { $came-to } au moins, { $by } de trop peu
   *[over] { $what } arrive à { $came-to } au moins, { $by } de trop
 }

## Combien de vêtements il y avait ; ils se suivent sur une ligne

fit-garments = { $garments ->
    [one] { $garments } vêtement à choisir
   *[other] { $garments } vêtements à choisir
 }
fit-refused = { $garments ->
    [one] { $garments } refusé par les preuves
   *[other] { $garments } refusés par les preuves
 }
fit-ruled-out = { $garments ->
    [one] { $garments } écarté par la seule surface de ses pièces
   *[other] { $garments } écartés par la seule surface de leurs pièces
 }
fit-planned = { $garments ->
    [one] { $garments } coupé jusqu’à la dernière bande
   *[other] { $garments } coupés jusqu’à la dernière bande
 }
fit-unsure = { $garments ->
    [one] { $garments } non atteint dans le travail permis, il pourrait donc être meilleur
   *[other] { $garments } non atteints dans le travail permis, l’un d’eux pourrait donc être meilleur
 }
