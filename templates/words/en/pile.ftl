### A guide of a class that cuts together: the pile of cut pieces in the place of cutting, and what is given out.
### $number: of the person in the class, on every tag of hers.

pile-title = The pile of cut pieces, number { $number }
pile-aim = All your pieces are there, and each has its size.
# $pieces (number): how many lie in the pile.
pile-take = Take pile { $number } from the cutting of the class. The tag of every piece in it begins with { $number }.
    .check = { $pieces ->
        [one] { $pieces } piece lies in it.
       *[other] { $pieces } pieces lie in it.
     }
    .remedy = If a piece is missing or bears another number, ask whoever leads the class before you go on.
# $cuts (a list): each tag with its length. $count: how many there are.
pile-piece = Measure { PIECE($piece) } along its long edge: { $cuts }.
    .check = { $count ->
        [one] It is as long as that, and { $depth } deep at both ends.
       *[other] Each is as long as that, and { $depth } deep at both ends.
     }
    .tolerance = { $off }
    .remedy = Lay a piece that is longer on a table and trim it. For one that is too short ask for another; never pull it long.
# Said only inside the message above. $mark: a tag of her pile, such as 5-2a.
pile-tag = { $mark } { $length }
# In the place of how much cloth there is to buy.
pile-cloth = in pile { $number }
