### Bandes coupées en tronçons : chacune avec ses tronçons et ses raccords, comme au plan de coupe.
### $mark : le numéro de la pièce au plan de coupe. $label (texte) : le nom que l’auteur lui donne.
### $strips : les bandes coupées de même, telles que « A1 et A2 ».

figure-strips-piece = Pièce { $mark }, { $label }
figure-strips-alike = { $joins ->
    [0] { $strips } : entière, sans raccord
    [one] { $strips } : { $joins } raccord
   *[other] { $strips } : { $joins } raccords
 }
figure-strips-note = Longueurs à la même échelle, coutures comprises ; les hauteurs, non.
# Une phrase pour toutes les bandes coupées de même.
figure-strips-alt = { $joins ->
    [0] { $strips } { PIECE($piece, case: "of") } : entière, sans raccord, { $segments }.
    [one] { $strips } { PIECE($piece, case: "of") } : { $joins } raccord, { $segments }.
   *[other] { $strips } { PIECE($piece, case: "of") } : { $joins } raccords, { $segments }.
 }
figure-strips-caption = Les tronçons de chaque bande : coudre les bouts qui se font face.
