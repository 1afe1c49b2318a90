### Thermocoller une pièce avant de la coudre.
### $cover : toute la pièce, ou la moitié extérieure d’une ceinture pliée.

interface-title = Entoiler { PIECE($piece) }
interface-aim = L’entoilage ({ $interfacing }) donne de la tenue à { PIECE($piece) } et s’arrête avant les coutures.
interface-cut = { $pieced ->
    [yes] Couper l’entoilage ({ $interfacing }) en bandes larges de { $deep } qui se posent bord à bord sur { $long }.
   *[no] Couper l’entoilage ({ $interfacing }) à { $long } de long et { $deep } de large.
 }
# $dots : ce que le tissu supporte, sans plus que la colle ne demande.
interface-iron = { $dots ->
    [1] Régler le fer sur un point, 110 °C, sans vapeur : { PIECE($piece) } n’en supporte pas plus. Coller d’abord un bout d’entoilage sur une chute. Ce que dit sa notice passe avant tout cela.
   *[2] Régler le fer sur deux points, 150 °C, sa vapeur coupée : la pattemouille humide donne celle qu’il faut. Coller d’abord un bout d’entoilage sur une chute. Ce que dit sa notice passe avant tout cela.
 }
    .check = Le bout ne se décolle pas et le tissu n’a pas changé.
    .remedy = Presser plus longtemps ; si cela n’aide pas, demander un entoilage qui convient à ce tissu.
interface-crease = Plier { PIECE($piece) } en deux dans la longueur, envers contre envers, sur { $half } de haut. Repasser légèrement la pliure et rouvrir : elle marque la pliure à venir.
interface-lay = { $cover ->
    [half] Poser { PIECE($piece) }, envers dessus. Poser l’entoilage sur une moitié, son long bord le long de la pliure marquée, la colle, rugueuse, dessous ; les marges restent nues.
   *[whole] Poser { PIECE($piece) }, envers dessus. Poser l’entoilage au milieu, la colle, rugueuse, dessous ; les marges restent nues.
 }
    .check = Les marges sont nues tout autour.
    .remedy = Recouper l’entoilage jusqu’en deçà des lignes de couture.
interface-fuse = { $dots ->
    [1] Poser une pattemouille sèche. Presser chaque endroit { $seconds } secondes sans glisser, en débordant sur le précédent. Laisser refroidir à plat.
   *[2] Poser une pattemouille humide. Presser chaque endroit { $seconds } secondes sans glisser, en débordant sur le précédent. Laisser refroidir à plat.
 }
    .check = Aucun coin ne se décolle quand on plie.
    .remedy = Presser cet endroit encore un peu.
