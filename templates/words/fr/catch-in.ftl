### Poser une bande froncée ou plate le long d’un bord, pour que sa couture la prenne.
### $edge : le bord de la bande ; $in : la pièce sur le bord de laquelle elle est posée.

catch-in-title = Prendre { PIECE($edge) } dans la couture { PIECE($in, case: "of") }
    .number = { $seam-width }
catch-in-aim = La couture qui suit prend { EDGE($edge) } ; il en sort alors { $hangs }.

# Elle est posée sur le bord inférieur d’une pièce et retombe sur ce qu’on y coud, ...
catch-in-lay-below = Poser { PIECE($edge) } sur { PIECE($in) }, endroit contre endroit, l’ourlet vers le milieu { PIECE($in, case: "of") }, les deux bords coupés au même niveau.
    .check = L’ourlet est à l’opposé des bords coupés, et l’envers est dessus.
    .remedy = La retourner : cousue dans l’autre sens, elle montre son envers.
# ... ou sur le bord supérieur de la pièce sur laquelle elle retombe.
catch-in-lay-above = Poser { PIECE($edge) } sur { PIECE($in) }, les deux endroit dessus, l’ourlet vers le milieu { PIECE($in, case: "of") }, les deux bords coupés au même niveau.
    .check = L’ourlet est à l’opposé des bords coupés, et l’endroit est dessus.
    .remedy = La retourner : cousue dans l’autre sens, elle montre son envers.
catch-in-pin = Faire coïncider { match-places }, et y { pin } d’abord. Puis { pin } tous les { $spacing } entre eux : { pins-needed } environ.
catch-in-baste-ring = Piquer à { $row } du bord au plus long point, { $length } tout autour. La couture suit { $rest } plus à l’intérieur et cache ce rang.
    .check = { $folds ->
        [gathers] Les fronces sont régulières, et aucun pli n’est tassé aux repères.
       *[flat] La bande est posée sans pli.
     }
    .remedy = Découdre cette largeur de main, répartir à nouveau et repiquer.
catch-in-baste-flat = Piquer à { $row } du bord au plus long point, { $length } d’un bout à l’autre. La couture suit { $rest } plus à l’intérieur et cache ce rang.
    .check = { catch-in-baste-ring.check }
    .remedy = { catch-in-baste-ring.remedy }
