### Thermocoller une pièce avant de la coudre.
### $cover : toute la pièce, ou la moitié extérieure d’une ceinture pliée.

interface-title = Entoiler { PIECE($piece) }
interface-aim = L’entoilage ({ $interfacing }) donne de la tenue à { PIECE($piece) } et s’arrête avant les coutures.
interface-cut = { $pieced ->
    [yes] Couper l’entoilage ({ $interfacing }) en bandes larges de { $deep } qui se posent bord à bord sur { $long }.
   *[no] Couper l’entoilage ({ $interfacing }) à { $long } de long et { $deep } de large.
 }
interface-lay = { $cover ->
    [half] Poser { PIECE($piece) }, envers dessus. Poser l’entoilage sur une moitié, son long bord le long de la pliure à venir, la colle, rugueuse, dessous ; les marges restent nues.
   *[whole] Poser { PIECE($piece) }, envers dessus. Poser l’entoilage au milieu, la colle, rugueuse, dessous ; les marges restent nues.
 }
    .check = Les marges sont nues tout autour.
    .remedy = Recouper l’entoilage jusqu’en deçà des lignes de couture.
interface-fuse = Poser un linge humide. Presser chaque endroit { $seconds } secondes sans glisser, en débordant sur le précédent, comme le dit la notice de l’entoilage. Laisser refroidir à plat.
    .check = Aucun coin ne se décolle quand on plie.
    .remedy = Presser cet endroit encore un peu.
