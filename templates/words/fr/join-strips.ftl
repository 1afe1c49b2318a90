### Raccorder en une seule bande les tronçons dans lesquels une pièce est coupée.
### $piece : la pièce, dont il y a $copies bandes. $pieces : toutes les pièces de l’étape qui sont coupées en tronçons.

join-strips-title = Raccorder les bandes { PIECE($pieces, case: "of") }
join-strips-aim = Chaque bande est d’une seule longueur.

# Les étiquettes sont celles du plan de coupe.
join-strips-lay = Étaler les tronçons { PIECE($piece, case: "of") } dans l’ordre de leurs étiquettes, longs bords alignés. { pin-start } endroit contre endroit les petits côtés qui se font face.
    .check = { $copies ->
        [one] Tous les tronçons de la bande sont dans le même sens.
       *[other] Chaque bande a les tronçons qui portent son numéro, tous dans le même sens.
     }
join-strips-sew = Piquer chaque raccord à { $seam-width } du bord, { $stitch }, point d’arrêt au début et à la fin. Coucher à l’ongle les deux marges du même côté, l’un ou l’autre.
    .check = Toutes les marges sont sur l’envers.
    .remedy = Découdre un raccord dont la marge est sur l’endroit, retourner un tronçon et repiquer.
join-strips-measure = { $copies ->
    [one] Mesurer la bande raccordée : { $whole }.
   *[other] Mesurer chaque bande raccordée : { $whole }.
 }
    .check = { $copies ->
        [one] La bande { PIECE($piece, case: "of") } mesure { $whole } d’un bout coupé à l’autre.
       *[other] Chaque bande { PIECE($piece, case: "of") } mesure { $whole } d’un bout coupé à l’autre.
     }
    .tolerance = { $off } de plus ou de moins
    .remedy = Trop longue : recouper un bout d’équerre. Trop courte : découdre le raccord qui est trop large et le repiquer. Si aucun raccord n’est trop large, rallonger la bande avec un morceau des chutes et la recouper.

## Derrière une étape, entre parenthèses

join-strips-joins-for = { $copies ->
    [one] { chain-joins }
   *[other] { chain-joins } pour { $copies } bandes
 }
