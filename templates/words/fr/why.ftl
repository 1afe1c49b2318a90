### D’où vient un nombre, dit par `furbelow why`, avec ce qui est dans reasons.ftl. Nombres et noms sont ceux du fichier.

# Une règle de la couturière.
why-holds = est respectée
why-fails = n’est pas respectée
why-above = voir plus haut
why-ask = à demander par son nom
why-place = { $file }, ligne { $line }
