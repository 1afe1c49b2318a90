### Plier un biais autour d’un cordon et le poser le long d’un bord, pour que sa couture montre un passepoil.
### $strip : la pièce qui couvre le cordon ; $in : le bord sur lequel elle est posée.

piping-title = Passepoiler { EDGE($in) }
    .number = { $thick }
piping-aim = La couture qui suit montre un passepoil de { $thick } d’épaisseur, fait de { $length } de { $cord }.

piping-fold = Plier { PIECE($strip) } en deux dans la longueur, envers contre envers, et poser le cordon ({ $cord }) dans la pliure. { pin-start } les bords coupés au même niveau.
    .check = Le cordon est partout dans la pliure, à { $inside } des bords coupés.
    .remedy = Le pousser de l’ongle dans la pliure et { pin } à nouveau.
piping-cover-ring = Régler le plus long point et le pied à fermeture. Piquer tout contre le cordon, { $length } tout autour. Couper les bouts du cordon de sorte qu’ils se touchent sans se chevaucher.
    .check = Le cordon ne peut pas glisser, et la piqûre ne le traverse pas.
    .remedy = Découdre là où la piqûre a touché le cordon et la refaire à côté.
piping-cover-flat = Régler le plus long point et le pied à fermeture. Piquer tout contre le cordon, { $length }. Couper le cordon à { $seam-width } de chaque bout, pour que la couture de côté ne le rencontre pas.
    .check = Le cordon ne peut pas glisser, et la piqûre ne le traverse pas.
    .remedy = Découdre là où la piqûre a touché le cordon et la refaire à côté.
piping-lay = Poser { PIECE($strip) } sur l’endroit { PIECE($piece, case: "of") }, le cordon vers l’intérieur, tous les bords coupés au ras { EDGE($in, case: "of") }, et { pin } sans tirer. { $ring ->
    [yes] Les coutures de côté se rejoignent.
   *[no] Commencer à un bout.
 }
    .check = Il est à plat et ne resserre pas le bord.
    .remedy = Le détacher, poser la bande lâche et { pin } à nouveau.
piping-baste-ring = Avec le pied à fermeture, piquer sur le premier rang, { $length } tout autour.
    .check = Le cordon suit le bord en ligne régulière.
    .remedy = Découdre là où il ondule et refaire ce tronçon.
piping-baste-flat = Avec le pied à fermeture, piquer sur le premier rang, { $length } d’un bout à l’autre.
    .check = { piping-baste-ring.check }
    .remedy = { piping-baste-ring.remedy }
piping-next = Pour la couture qui suit, garder le pied à fermeture, mettre ce rang dessus et piquer d’un fil plus près du cordon. Puis remettre le pied et le point.
