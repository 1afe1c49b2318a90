### Was die Vorschau neben einem Stück sagt, dessen Wahl gerade probiert wird.

preview-choices = Die Wahl probieren
preview-size = Größe
preview-as-written = Wie in der Vorgabe
preview-command = Der Befehl, der es macht
preview-copy = Kopieren
preview-copied = Kopiert.
preview-not-sound = So lässt es sich nicht nähen:
preview-cost = Material
preview-hours = Arbeit
preview-weight = Gewicht
preview-proofs = Nachweise
preview-proved = { $proofs ->
    [one] 1 hält
   *[other] alle { $proofs } halten
 }
