### Fixer à un bord des brides de ruban pour suspendre le vêtement.
### $loops : combien sur un bord.

hang-loops-title = Fixer des brides de suspension { EDGE($edge, case: "to") }
    .number = { $tape-each }
hang-loops-aim = { $loops ->
    [one] { $loops } bride sera prise dans la couture suivante.
   *[other] { $loops } brides seront prises dans la couture suivante.
 }

hang-loops-cut = { $all-loops ->
    [one] Couper le ruban ({ $tape }) : { $tape-each }.
   *[other] Couper le ruban ({ $tape }) : { $all-loops } morceaux de { $tape-each } chacun.
 }
hang-loops-fold = { $all-loops ->
    [one] Le plier en boucle sans le vriller, ses bouts côte à côte.
   *[other] Plier chacun en boucle sans le vriller, ses bouts côte à côte.
 }
hang-loops-lay-ring = { $loops ->
    [one] Poser la bride à l’intérieur { EDGE($edge, case: "of") }, au milieu du dos, ses bouts au ras du bord coupé, et { pin } là.
   *[other] Poser les brides à l’intérieur { EDGE($edge, case: "of") }, la première à { side-seam }, puis tous les { $apart }, leurs bouts au ras du bord coupé, et { pin } là.
 }
    .check = { hang-loops-hang.check }
    .tolerance = { hang-loops-hang.tolerance }
    .remedy = { hang-loops-hang.remedy }
hang-loops-lay-flat = { $loops ->
    [one] Poser la bride à l’intérieur { EDGE($edge, case: "of") }, en son milieu, ses bouts au ras du bord coupé, et { pin } là.
   *[other] Poser les brides à l’intérieur { EDGE($edge, case: "of") }, la première à { $half-apart } d’un bout, puis tous les { $apart }, leurs bouts au ras du bord coupé, et { pin } là.
 }
    .check = { hang-loops-hang.check }
    .tolerance = { hang-loops-hang.tolerance }
    .remedy = { hang-loops-hang.remedy }
# Dit seulement comme partie des deux ci-dessus.
hang-loops-hang =
    .check = { $loops ->
        [one] La bride pend de { $hangs } et reste à plat.
       *[other] Chaque bride pend de { $hangs } et reste à plat.
     }
    .tolerance = { $hangs-off } de plus ou de moins
    .remedy = Déplacer ses bouts avant de piquer.
hang-loops-sew = { $loops ->
    [one] Piquer deux fois en travers de ses bouts, à { $row } du bord, { $stitch }. Les piqûres restent dans la couture à venir.
   *[other] Piquer deux fois en travers des bouts de chacune, à { $row } du bord, { $stitch }. Les piqûres restent dans la couture à venir.
 }
