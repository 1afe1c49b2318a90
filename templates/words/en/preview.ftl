### What the preview says beside a garment whose choices are being tried.

preview-choices = Try the choices
preview-size = Size
preview-as-written = As the spec has it
preview-command = The command that makes it
preview-copy = Copy
preview-copied = Copied.
preview-not-sound = It can’t be made so:
preview-cost = Materials
preview-hours = Work
preview-weight = Weight
preview-proofs = Proofs
preview-proved = { $proofs ->
    [one] 1 holds
   *[other] all { $proofs } hold
 }
