### La légende des figures : chaque motif et chaque signe une fois, avec son nom.

## Bords du tissu

figure-legend-edges = Bords du tissu
figure-legend-raw = brut : fils libres
figure-legend-selvedge = lisière
figure-legend-neatened = surfilé : zigzag
figure-legend-hemmed = ourlé
figure-legend-trimmed = à galon : bande grise
figure-legend-gathered = froncé : ondulé, plis
figure-legend-sewn = dans une couture
figure-legend-enclosed = enfermé : gros points
figure-legend-fold = pliure : trait et point

## Faces du tissu

figure-legend-faces = Faces du tissu
figure-legend-right-side = endroit : uni
figure-legend-wrong-side = envers : hachuré
figure-legend-left-over = reste : croisillons
figure-legend-behind = derrière : pointillé

## En coupe

figure-legend-cut = En coupe, vu de côté
figure-legend-stitch = deux tissus, un point
figure-legend-half = hachuré : envers
figure-legend-gathers = tissu froncé
figure-legend-overcast = bords coupés surfilés

## Points et objets

figure-legend-things = Points et objets
figure-legend-seam = couture, surpiqûre
figure-legend-longest = point le plus long
figure-legend-elastic = élastique
figure-legend-pin = épingle

## Signes

figure-legend-signs = Signes
figure-legend-changed = rouge, épais : cette étape
figure-legend-callout = voir cette phrase
figure-legend-mark = repère d’assemblage
figure-legend-length = une longueur
figure-legend-left-out = milieu omis

figure-legend-alt = Les { $count } motifs et signes des figures, chacun avec son nom : { $names }.
figure-legend-scale = Dans les coupes, les largeurs sont à l’échelle ; le tissu est dessiné plus épais qu’il ne l’est.
figure-legend-caption = Comment lire les figures. Chaque couleur est doublée d’un motif ou d’un mot.
