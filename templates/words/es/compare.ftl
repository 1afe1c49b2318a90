### Lo que cambia en el trabajo de una prenda a otra; lo dice `furbelow compare`, y `furbelow amend` de una guía nueva.

compare-alike = nada cambia en el trabajo

## Títulos

compare-numbers = números
compare-materials = materiales
compare-totals = en total
compare-steps = pasos

## Filas; detrás va lo que era y lo que es

compare-bought = { $material } que comprar
compare-finished = largo terminado
compare-cost = coste
compare-hours = horas
compare-layouts = veces que se prepara la mesa
compare-joins = uniones en las tiras
compare-actions = acciones
compare-price = precio que pedir

compare-came = nuevo: { $after }
compare-went = desaparece, era { $before }

compare-step = { $kind ->
    [new] nuevo: { $title }
    [gone] desaparece: { $title }
   *[changed] cambia: { $title }
 }
