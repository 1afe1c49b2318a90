### Travailler deux trous dans une coulisse à venir, par où sortiront les bouts du cordon.
### $piece : la ceinture, ou la pièce dont le bord sera replié ; $folded : lequel des deux.

eyelets-title = Travailler les trous du cordon dans { PIECE($piece) }
    .number = { $hole }
eyelets-aim = Deux { cord-holes } sont au milieu du devant, à { $apart } l’un de l’autre.

## Tracer

# Dits seulement dans les messages d’ici.
eyelets-along = { $folded ->
    [band] le long d’un grand bord, qui sera rabattu à l’extérieur plus tard
   *[edge] le long du bord qui sera replié plus tard
 }
eyelets-cross = De là, tracer une ligne droite vers l’intérieur : c’est le milieu du devant. Faire une croix à { $half } de chaque côté, à { $from-edge } du bord.
    .check = Les croix sont à { $apart } l’une de l’autre et toutes deux à { $from-edge } du bord.
    .tolerance = { $off } de plus ou de moins
    .remedy = Effacer la croix mal placée et la refaire.
eyelets-mark-ring = Sur l’endroit { PIECE($piece, case: "of") }, à partir de { side-seam }, mesurer { $middle } { eyelets-along }. { eyelets-cross }
    .check = { eyelets-cross.check }
    .tolerance = { eyelets-cross.tolerance }
    .remedy = { eyelets-cross.remedy }
eyelets-mark-flat = Sur l’endroit { PIECE($piece, case: "of") }, à partir d’un petit côté, mesurer { $middle } { eyelets-along }. { eyelets-cross }
    .check = { eyelets-cross.check }
    .tolerance = { eyelets-cross.tolerance }
    .remedy = { eyelets-cross.remedy }
# Deux lés font le tour : l’un est le devant.
eyelets-mark-panel = Prendre le morceau { PIECE($piece, case: "of") } qui sera le devant. Sur son endroit, à partir d’un bord vertical, mesurer { $middle } { eyelets-along }. { eyelets-cross }
    .check = { eyelets-cross.check }
    .tolerance = { eyelets-cross.tolerance }
    .remedy = { eyelets-cross.remedy }

## Renforcer

eyelets-patch-iron = Couper deux carrés d’entoilage ({ $backing }) de { $patch } de côté. En poser un sur l’envers derrière chaque croix, la colle, rugueuse, dessous. Presser { $seconds } secondes à travers un linge humide sans glisser, et laisser refroidir à plat.
    .check = Aucun coin ne se décolle quand on plie.
    .remedy = Presser cet endroit encore un peu.
eyelets-patch-cloth = Couper deux carrés du même tissu, de { $patch } de côté, et en épingler un sur l’envers derrière chaque croix.

## Boutonnières

eyelets-buttonholes = Régler la machine sur boutonnière et en essayer une de { $hole } sur une chute doublée d’un carré. Puis en piquer une sur chaque croix, perpendiculaire au bord, { $half-hole } de chaque côté de la croix.
    .check = Toutes deux ont { $hole } de long et sont côte à côte.
    .remedy = La découdre et la refaire. Ne pas l’ouvrir avant.
eyelets-cut = Les ouvrir toutes deux au découseur, une épingle en travers à chacun de leurs bouts. Recouper les carrés sur l’envers au ras des points, sans les entamer.
    .check = Le bout du cordon passe dans les deux.

## Œillets brodés à la main

eyelets-ring = Tracer un cercle de { $hole } de diamètre autour de chaque croix et y faire de petits points devant à travers les deux épaisseurs.
eyelets-pierce = Percer chaque croix au poinçon, sur du liège ou une serviette pliée, jusqu’à ce que le trou remplisse son cercle.
eyelets-work = Surfiler le bord de chaque trou de { $stitches } points serrés, chacun par-dessus les points devant, et arrêter le fil derrière.
    .check = Le trou a { $hole } de diamètre et aucun bord à cru ne se voit.
    .remedy = Faire un second tour entre les points du premier.

## Œillets de métal

eyelets-pierce-metal = Percer chaque croix au poinçon, sur du liège ou une serviette pliée, juste assez pour que le col d’un œillet ({ $eyelet }) passe en serrant.
eyelets-set = En poser d’abord un sur une chute doublée d’un carré. Puis enfoncer un œillet dans chaque trou par l’endroit, poser sa rondelle derrière et fermer les deux avec l’outil de pose, comme le dit sa notice.
    .check = Il ne tourne pas, et une forte traction ne le bouge pas.
    .remedy = Le refermer encore une fois. S’il sort, le trou est trop large : prendre un œillet plus grand.
