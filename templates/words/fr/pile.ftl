### Un guide d’une classe qui coupe ensemble : la pile de pièces coupées à la place de la coupe, et ce qui est remis.
### $number : le numéro de la personne dans la classe, sur chacune de ses étiquettes.

pile-title = La pile de pièces coupées, numéro { $number }
pile-aim = Toutes les pièces sont là, et chacune a sa taille.
# $pieces (nombre) : combien il y en a dans la pile.
pile-take = Prendre la pile { $number } de la coupe de la classe. L’étiquette de chaque morceau y commence par { $number }.
    .check = { $pieces ->
        [one] Elle compte { $pieces } morceau.
       *[other] Elle compte { $pieces } morceaux.
     }
    .remedy = S’il manque un morceau ou s’il porte un autre numéro, demander à la personne qui mène la classe avant de continuer.
# $cuts (une liste) : chaque étiquette avec sa longueur. $count : combien il y en a.
pile-piece = Mesurer { PIECE($piece) } le long du grand bord : { $cuts }.
    .check = { $count ->
        [one] La longueur est la bonne, et la hauteur est de { $depth } aux deux bouts.
       *[other] Chaque longueur est la bonne, et la hauteur est de { $depth } aux deux bouts.
     }
    .tolerance = { $off }
    .remedy = Recouper sur la table un morceau trop long. Pour un morceau trop court, en demander un autre ; ne jamais l’étirer.
# Dite seulement dans le message ci-dessus. $mark : une étiquette de sa pile, comme 5-2a.
pile-tag = { $mark } { $length }
# À la place du métrage à acheter.
pile-cloth = dans la pile { $number }
