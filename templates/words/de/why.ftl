### Woher eine Zahl kommt, gesagt von `furbelow why`, mit dem, was in reasons.ftl steht. Zahlen und Namen stehen wie in der Datei.

# Eine Regel der Näherin.
why-holds = gilt
why-fails = gilt nicht
why-above = siehe oben
why-ask = mit dem Namen danach fragen
why-place = { $file }, Zeile { $line }
