### De dónde sale un número; lo dice `furbelow why`, con lo que está en reasons.ftl. Números y nombres van como en el archivo.

# Una regla de la autora.
why-holds = se cumple
why-fails = no se cumple
why-above = véase más arriba
why-ask = pregunta por su nombre
why-place = { $file }, línea { $line }
