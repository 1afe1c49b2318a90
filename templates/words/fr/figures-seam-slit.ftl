### Finir la partie d’une couture ouverte en bas : fente, ou fente avec sous-patte.

figure-slit-head = Endroit dessus
figure-slit-head-vent = Intérieur dessus
figure-slit-end = bout de l’ouverture
figure-slit-alt = Une couture, endroit dessus, ouverte sur { $long } au-dessus de l’ourlet ; des piqûres à { $beside } de l’ouverture se rejoignent en travers de son bout.
figure-slit-alt-vent = Une fente à sous-patte vue de l’intérieur : la marge d’un côté est repliée et piquée, celle de l’autre dépasse dessous de { $margin } ; une piqûre en biais tient les deux au bout de l’ouverture.
figure-slit-caption = Comment l’ouverture du bas est piquée.
