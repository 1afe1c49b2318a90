### Ce que vaut un plan de coupe, dit par `furbelow cutting`. $gap : la part de son coût qu’un autre plan pourrait épargner, en centièmes.

plan-by-area = Par la seule surface, qu’elle puisse se placer ou non.
plan-first-fit = Placé du plus long au plus court, chaque pièce au premier endroit où elle tient.
plan-proven = Prouvé : aucun plan de { $sections } coupons au plus le long du rouleau ne coûte moins à ces prix.
plan-proven-straight = Prouvé : aucun plan de { $sections } coupons au plus le long du rouleau, en bandes de coupe ou avec des pièces placées librement et séparées par des coupes droites, ne coûte moins à ces prix.
plan-proven-panels = Prouvé : aucun plan de { $sections } coupons au plus le long du rouleau, en bandes de coupe ou avec des pièces placées librement, ne coûte moins à ces prix.
# L’atelier limite les raccords et les coupons.
plan-proven-within = Prouvé : dans ces limites, aucun plan de { $sections } coupons au plus le long du rouleau ne coûte moins à ces prix.
plan-proven-within-straight = Prouvé : dans ces limites, aucun plan de { $sections } coupons au plus le long du rouleau, en bandes de coupe ou avec des pièces placées librement et séparées par des coupes droites, ne coûte moins à ces prix.
plan-proven-within-panels = Prouvé : dans ces limites, aucun plan de { $sections } coupons au plus le long du rouleau, en bandes de coupe ou avec des pièces placées librement, ne coûte moins à ces prix.
plan-best-found = Le meilleur plan trouvé dans le calcul alloué ; un autre pourrait épargner { $gap } % au plus.
plan-best-of-class = Le meilleur de plusieurs plans pour toute la classe ; un autre pourrait épargner { $gap } % au plus.
plan-after-each-other = Des plans l’un après l’autre sur un même rouleau : aucun plan commun trouvé ne coûte moins.
plan-shortest-proven = Prouvé : avec aussi peu de raccords et de coupons, aucun plan n’est plus court.
plan-shortest-found = Le plan le plus court trouvé dans le calcul alloué ; un autre pourrait épargner { $gap } % au plus.
