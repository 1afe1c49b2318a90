### Coucher une marge de couture d’un côté et la surpiquer.
### $onto : la pièce contre laquelle la marge est couchée à plat.

# $seams : où vont les coutures, chacune dite par `turn-seam-between`.
turn-seam-title = { COUNT($seams) ->
    [one] Surpiquer la couture { $seams }
   *[other] Surpiquer les coutures { $seams }
 }
    .number = { $from-seam }
turn-seam-between = entre { PIECE($pieces) }
turn-seam-aim = La marge est tenue et ne gratte pas.

# $gathered : l’un des deux bords est froncé.
turn-seam-press = { $way ->
    [up] { $gathered ->
        [yes] Coucher la marge vers le haut, à plat contre l’envers { PIECE($onto, case: "of") }, et la repasser ainsi. Ne repasser que la marge : le fer écrase les fronces.
       *[no] Coucher la marge vers le haut, à plat contre l’envers { PIECE($onto, case: "of") }, et la repasser ainsi.
    }
   *[down] { $gathered ->
        [yes] Coucher la marge vers le bas, à plat contre l’envers { PIECE($onto, case: "of") }, et la repasser ainsi. Ne repasser que la marge : le fer écrase les fronces.
       *[no] Coucher la marge vers le bas, à plat contre l’envers { PIECE($onto, case: "of") }, et la repasser ainsi.
    }
 }
    .check = Sur l’endroit, aucun pli n’est repassé le long de la couture.
    .remedy = Écarter les deux pièces à la couture et repasser à nouveau.
turn-seam-sew-ring = Endroit dessus, surpiquer { PIECE($onto) } à { $from-seam } de la couture, { $stitch }, { $length } tout autour, à partir d’une couture de côté. Finir en repiquant trois points sur le début. { turn-seam-feel }
    .check = { turn-seam-feel.check }
    .remedy = { turn-seam-feel.remedy }
turn-seam-sew-flat = Endroit dessus, surpiquer { PIECE($onto) } à { $from-seam } de la couture, { $stitch }, { $length }, point d’arrêt aux deux bouts. { turn-seam-feel }
    .check = { turn-seam-feel.check }
    .remedy = { turn-seam-feel.remedy }
# Dit seulement dans les deux ci-dessus.
turn-seam-feel = { $way ->
    [up] Sentir du bout des doigts que la marge est vers le haut.
   *[down] Sentir du bout des doigts que la marge est vers le bas.
 }
    .check = La marge est prise sur toute la longueur et aucun pli n’est sous la piqûre.
    .remedy = Découdre le passage où elle a glissé, recoucher la marge et repiquer.
