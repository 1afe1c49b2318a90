### Lo que dice la vista previa junto a una prenda cuyas opciones se prueban.

preview-choices = Probar las opciones
preview-size = Talla
preview-as-written = Como en la ficha
preview-command = La orden que la hace
preview-copy = Copiar
preview-copied = Copiado.
preview-not-sound = Así no se puede hacer:
preview-cost = Materiales
preview-hours = Trabajo
preview-weight = Peso
preview-proofs = Pruebas
preview-proved = { $proofs ->
    [one] 1 se cumple
   *[other] se cumplen las { $proofs }
 }
