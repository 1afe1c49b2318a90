### Ce que dit l’aperçu à côté d’un vêtement dont on essaie les choix.

preview-choices = Essayer les choix
preview-size = Taille
preview-as-written = Comme dans la fiche
preview-command = La commande qui le réalise
preview-copy = Copier
preview-copied = Copié.
preview-not-sound = Il ne peut pas se faire ainsi :
preview-cost = Fournitures
preview-hours = Travail
preview-weight = Poids
preview-proofs = Preuves
preview-proved = { $proofs ->
    [one] { $proofs } tient
   *[other] toutes tiennent ({ $proofs })
 }
