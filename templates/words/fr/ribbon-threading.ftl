### Passer un ruban dans le galon d’un bord.

ribbon-threading-title = Passer un ruban dans le galon { PIECE($edge, case: "of") }
ribbon-threading-aim = Le ruban est dans le galon.

ribbon-threading-cut = Couper le ruban ({ $ribbon }) : { $ribbon-length }.
ribbon-threading-seal = Empêcher ses deux bouts de s’effilocher : y mettre un peu de colle textile et laisser sécher, ou les replier et les coudre.
# Les bouts se cousent l’un sur l’autre.
ribbon-threading-thread = L’enfiler sur une aiguille à bout rond ou un passe-lacet et le passer dessus dessous dans les trous le long { EDGE($edge, case: "of") }, à partir de { side-seam }.
    .check = Le ruban n’est pas vrillé et aucun trou n’est oublié.
    .remedy = Le retirer jusqu’à cet endroit et reprendre de là.
ribbon-threading-thread-bow = L’enfiler sur une aiguille à bout rond ou un passe-lacet et le passer dessus dessous dans les trous le long { EDGE($edge, case: "of") }, à partir du milieu du devant.
    .check = { ribbon-threading-thread.check }
    .remedy = { ribbon-threading-thread.remedy }
ribbon-threading-sew = Superposer les bouts de { $overlap } derrière le galon et les coudre ensemble à la main.
    .check = Le galon est à plat et ne se resserre pas.
    .remedy = Découdre les bouts et relâcher le ruban.
ribbon-threading-bow = Égaliser les bouts et faire un nœud ; { $ends } pendent de chaque côté avant de le nouer.
    .check = { ribbon-threading-sew.check }
    .remedy = Relâcher le ruban avant de le nouer.
