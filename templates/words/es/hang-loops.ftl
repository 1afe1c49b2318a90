### Hilvanar trabillas de cinta en un borde para colgar la prenda.
### $loops: cuántas en un borde.

hang-loops-title = Hilvana trabillas para colgar { EDGE($edge, case: "to") }
    .number = { $tape-each }
hang-loops-aim = { $loops ->
    [one] { $loops } trabilla quedará sujeta en la próxima costura.
   *[other] { $loops } trabillas quedarán sujetas en la próxima costura.
 }

hang-loops-cut = { $all-loops ->
    [one] Corta { $tape-each } de cinta ({ $tape }).
   *[other] Corta { $all-loops } trozos de cinta ({ $tape }), de { $tape-each } cada uno.
 }
hang-loops-fold = { $all-loops ->
    [one] Dóblala por la mitad en una trabilla sin retorcerla, con los extremos uno junto a otro.
   *[other] Dobla cada uno por la mitad en una trabilla sin retorcerlo, con los extremos uno junto a otro.
 }
hang-loops-lay-ring = { $loops ->
    [one] Coloca la trabilla por dentro { EDGE($edge, case: "of") }, en el centro de la espalda, con los extremos a ras del borde cortado, y { pin } ahí.
   *[other] Coloca las trabillas por dentro { EDGE($edge, case: "of") }, la primera en { side-seam } y después cada { $apart }, con los extremos a ras del borde cortado, y { pin } ahí.
 }
    .check = { hang-loops-hang.check }
    .tolerance = { hang-loops-hang.tolerance }
    .remedy = { hang-loops-hang.remedy }
hang-loops-lay-flat = { $loops ->
    [one] Coloca la trabilla por dentro { EDGE($edge, case: "of") }, en el centro, con los extremos a ras del borde cortado, y { pin } ahí.
   *[other] Coloca las trabillas por dentro { EDGE($edge, case: "of") }, la primera a { $half-apart } de un extremo y después cada { $apart }, con los extremos a ras del borde cortado, y { pin } ahí.
 }
    .check = { hang-loops-hang.check }
    .tolerance = { hang-loops-hang.tolerance }
    .remedy = { hang-loops-hang.remedy }
# Se dicen solo como partes de los dos de arriba.
hang-loops-hang =
    .check = { $loops ->
        [one] La trabilla cuelga { $hangs } y queda plana.
       *[other] Cada trabilla cuelga { $hangs } y queda plana.
     }
    .tolerance = { $hangs-off } de más o de menos
    .remedy = Corre sus extremos antes de coser.
hang-loops-sew = { $loops ->
    [one] Cose dos veces a través de sus extremos, a { $row } del borde, { $stitch }. Los pespuntes quedan dentro de la costura que vendrá.
   *[other] Cose dos veces a través de los extremos de cada una, a { $row } del borde, { $stitch }. Los pespuntes quedan dentro de la costura que vendrá.
 }
