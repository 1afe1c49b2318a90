### Lo bueno que es un plano de corte, dicho por `furbelow cutting`. $gap: la parte de su coste que otro plano podría ahorrar, en centésimas.

plan-by-area = Solo por superficie, se pueda colocar o no.
plan-first-fit = Colocado de más largo a más corto, cada pieza en el primer sitio donde cabe.
plan-proven = Demostrado: ningún plano de hasta { $sections } cortes a lo largo del rollo cuesta menos a estos precios.
plan-proven-straight = Demostrado: ningún plano de hasta { $sections } cortes a lo largo del rollo, en franjas o con los paños colocados libremente y separados por cortes rectos, cuesta menos a estos precios.
plan-proven-panels = Demostrado: ningún plano de hasta { $sections } cortes a lo largo del rollo, en franjas o con los paños colocados libremente, cuesta menos a estos precios.
# El taller pone límites a las uniones y a los cortes.
plan-proven-within = Demostrado: dentro de los límites, ningún plano de hasta { $sections } cortes a lo largo del rollo cuesta menos a estos precios.
plan-proven-within-straight = Demostrado: dentro de los límites, ningún plano de hasta { $sections } cortes a lo largo del rollo, en franjas o con los paños colocados libremente y separados por cortes rectos, cuesta menos a estos precios.
plan-proven-within-panels = Demostrado: dentro de los límites, ningún plano de hasta { $sections } cortes a lo largo del rollo, en franjas o con los paños colocados libremente, cuesta menos a estos precios.
plan-best-found = El mejor plano hallado en el cálculo permitido; otro podría ahorrar un { $gap } % como máximo.
plan-best-of-class = El mejor de varios planos para toda la clase; otro podría ahorrar un { $gap } % como máximo.
plan-after-each-other = Planos uno tras otro en un mismo rollo: ningún plano común hallado cuesta menos.
plan-shortest-proven = Demostrado: con tan pocas uniones y cortes, ningún plano es más corto.
plan-shortest-found = El plano más corto hallado en el cálculo permitido; otro podría ahorrar un { $gap } % como máximo.
