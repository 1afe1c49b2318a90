### La mejor elección dentro de unos límites; la dice `furbelow fit`. $limit, $limits, $aims, $choices, $options: tal como se escriben.

fit-asked = { $garment }: { $aims }, de modo que { $limits }
fit-asked-no-limit = { $garment }: { $aims }, sin límite
fit-make = hazla con { $options }
fit-no-better = nada mejor: con { $choices } no puede ser, porque { $why }
fit-none = ninguna prenda con estas opciones cumple eso
fit-nearest = la más cercana: { $choices }
fit-would-do-all = bastaría con { $limits } en lugar de todo lo que no se cumple
fit-would-do = { COUNT($kept) ->
    [0] bastaría con { $instead } en lugar de `{ $limit }`, con { $choices }
   *[other] bastaría con { $instead } en lugar de `{ $limit }`, manteniendo { $kept }, con { $choices }
 }

## Lo que hace falta

fit-amount = { $what }: { $amount }
fit-amount-of = { $side ->
    [under] { $what }: { $amount } de { $limit }, { $spare } de menos
   *[over] { $what }: { $amount } de { $limit }, { $spare } de más
 }
fit-cost = coste
fit-hours = horas
# $fault: un mensaje de las pruebas, en inglés.
fit-refused-by = no se puede hacer: { $fault }
fit-missed = { $side ->
    [under] { $what } llega a { $came-to }, { $by } de menos
   *[over] { $what } llega a { $came-to }, { $by } de más
 }
fit-missed-at-least = { $side ->
    [under] { $what } llega al menos a { $came-to }, { $by } de menos
   *[over] { $what } llega al menos a { $came-to }, { $by } de más
 }

## Cuántas prendas había; van en una fila

fit-garments = { $garments ->
    [one] { $garments } prenda para elegir
   *[other] { $garments } prendas para elegir
 }
fit-refused = { $garments ->
    [one] { $garments } rechazada por las pruebas
   *[other] { $garments } rechazadas por las pruebas
 }
fit-ruled-out = { $garments ->
    [one] { $garments } descartada solo por la superficie de sus piezas
   *[other] { $garments } descartadas solo por la superficie de sus piezas
 }
fit-planned = { $garments ->
    [one] { $garments } cortada hasta la última tira
   *[other] { $garments } cortadas hasta la última tira
 }
fit-unsure = { $garments ->
    [one] { $garments } no alcanzada con el trabajo permitido, así que podría ser mejor
   *[other] { $garments } no alcanzadas con el trabajo permitido, así que una de ellas podría ser mejor
 }
