### Le plan de coupe de chaque tissu et les autres façons de le couper, dits par `furbelow cutting`.

# $usable : de la laize, sans les lisières.
ways-cloth = { $cloth }{ "\u00A0" }: { $length } en { $width } de laize, dont { $usable } utiles
ways-cloth-folded = { $cloth }{ "\u00A0" }: { $length } en { $width } de laize, dont { $usable } utiles, plié dans la longueur
ways-spare = réserve sur la laize{ "\u00A0" }: { $spare }

## Le plan

ways-section = { $across ->
    [yes] coupon { $number }, { $length } du rouleau, bandes de coupe en travers de la laize
   *[no] coupon { $number }, { $length } du rouleau
 }
ways-tapes = { $edge ->
    [start] rubans adhésifs depuis le début{ "\u00A0" }: { $tapes }
    [fold] rubans adhésifs depuis la pliure{ "\u00A0" }: { $tapes }
   *[edge] rubans adhésifs depuis le long bord{ "\u00A0" }: { $tapes }
 }
# $cuts : les marques et les longueurs de ce qui y est coupé.
ways-lane = { $layer ->
    [flat] bande de coupe { $number }, hauteur { $depth }{ "\u00A0" }: { $cuts }
    [fold] bande de coupe { $number }, hauteur { $depth }, sur la pliure{ "\u00A0" }: { $cuts }
    [upper] bande de coupe { $number }, hauteur { $depth }, épaisseur du dessus{ "\u00A0" }: { $cuts }
   *[under] bande de coupe { $number }, hauteur { $depth }, épaisseur du dessous{ "\u00A0" }: { $cuts }
 }
# Son bord extérieur est la lisière.
ways-lane-selvedge = { $layer ->
    [upper] bande de coupe { $number }, hauteur { $depth }, à la lisière de l’épaisseur du dessus{ "\u00A0" }: { $cuts }
    [under] bande de coupe { $number }, hauteur { $depth }, à la lisière de l’épaisseur du dessous{ "\u00A0" }: { $cuts }
   *[flat] bande de coupe { $number }, hauteur { $depth }, à une lisière{ "\u00A0" }: { $cuts }
 }
ways-over = reste
ways-panels = { $how ->
    [sides] coupon { $number }, { $length } du rouleau, lés tracés un par un, coupes droites d’un côté à l’autre
   *[cut] coupon { $number }, { $length } du rouleau, lés tracés un par un, découpés aux ciseaux
 }
ways-panel = { $mark }{ "\u00A0" }: de { $from-end } à { $to-end } du bout, de { $from-edge } à { $to-edge } du long bord

## Le coût

ways-cost = coût { $cost }
ways-costs = { $all }: tissu { $cloth }, { ways-joins } { $joins-cost }, { ways-set-ups } { $set-ups-cost }, { ways-cuts } { $cuts-cost }
ways-joins = { $joins ->
    [one] { $joins } raccord
   *[other] { $joins } raccords
 }
ways-set-ups = { $set-ups ->
    [one] { $set-ups } préparation de la table
   *[other] { $set-ups } préparations de la table
 }
ways-cuts = { $marked ->
    [yes] { $cuts ->
        [one] { $cuts } coupe et tracés
       *[other] { $cuts } coupes et tracés
     }
   *[no] { $cuts ->
        [one] { $cuts } coupe
       *[other] { $cuts } coupes
     }
 }
ways-unpriced = le tissu n’a pas de prix, un mètre compte donc pour 1
ways-bound = Aucun plan ne coûte moins de { $bound }, { $share } au-dessous.

## Ce qui reste, et les autres façons

ways-offcuts = chutes à garder{ "\u00A0" }: { $offcuts }
ways-offcut = { $length } × { $width } du coupon { $section }
ways-none = aucune
ways-least = le moins de tissu pour chaque nombre de raccords et de coupons{ "\u00A0" }:
ways-way = { $joins ->
    [0] { $length } sans raccord en { $sections }, coût { $cost }
    [one] { $length } avec { $joins } raccord en { $sections }, coût { $cost }
   *[other] { $length } avec { $joins } raccords en { $sections }, coût { $cost }
 }
ways-sections = { $sections ->
    [one] { $sections } coupon
   *[other] { $sections } coupons
 }
ways-chosen = choisi
ways-not-proven = non prouvé

## Comment choisir une façon ; les clés sont celles d’un fichier d’atelier

ways-pick-here = Pour moins de raccords ou de coupons, donner --most-joins N et --most-sections N, ici et avec `make`,
ways-pick-room = ou écrire `most joins: N` et `most sections: N` dans l’atelier. Dans ces limites, la façon la moins chère est prise{ "\u00A0" }:
ways-pick-within = pour moins de tissu et plus de raccords, baisser `join price` et `setup price` de l’atelier.
