### Deux ronds cousus ensemble : l’un enfilé sur l’autre.
### $over : les pièces du rond extérieur, $inside : celles du rond sur lequel il s’enfile.

figure-rings-over = { PIECE($over, at: "start") }
# $side : quel bord du rond extérieur se coud ; un bord réuni n’a pas de côté.
figure-rings-over-how = { $side ->
    [top] à l’envers, tête en bas : son bord supérieur est en haut
    [bottom] à l’envers, tête en bas : son bord inférieur est en haut
   *[stack] à l’envers, tête en bas : son bord à coudre est en haut
 }
figure-rings-inside = { PIECE($inside, at: "start") }
figure-rings-inside-how = à l’endroit

figure-rings-level = Les deux bords coupés bord à bord, endroit contre endroit
figure-rings-wrong-side = envers { PIECE($over, case: "of") }
figure-rings-right-side = endroit { PIECE($inside, case: "of") }

figure-rings-note = Sans échelle. Les traits qui descendent sont les coutures de côté.
figure-rings-alt = { PIECE($over, at: "start") }, à l’envers et tête en bas, s’enfile sur { PIECE($inside) }, à l’endroit, jusqu’à ce que les deux bords, de { $length } de tour chacun, soient bord à bord : à l’extérieur se voit l’envers { PIECE($over, case: "of") }, en dessous l’endroit { PIECE($inside, case: "of") } ; les coutures de côté se rejoignent.
figure-rings-caption = Comment { PIECE($over) } et { PIECE($inside) } se placent avant de les épingler.
