### Monter une poche plaquée sur une pièce. Monter une poche dans l’ouverture d’une couture.

figure-pocket-head = Endroit dessus
figure-pocket-head-inside = Intérieur dessus
figure-pocket-front = Les deux sacs repassés vers le devant
figure-patch-pocket-alt = { PIECE($pocket, at: "start") } sur { PIECE($on) }, endroit dessus : { $wide } de large et { $high } de haut, son bord supérieur à { $from-edge } sous le bord supérieur de la pièce ; piquée des deux côtés et en bas, avec un triangle aux deux coins du haut.
figure-patch-pocket-caption = Comment la poche est posée et piquée.
figure-side-pocket-alt = Un sac de { $wide } de large et { $high } de haut à côté d’une couture, piqué aux deux marges d’une ouverture de { $gap } et fermé en haut, sur le côté et en bas ; une bride aux deux bouts de l’ouverture.
figure-side-pocket-caption = Le sac de poche dans sa couture.
