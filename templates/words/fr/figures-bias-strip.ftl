### Couper une longue bande en biais dans un carré.

figure-bias-square = Le carré, coupé en travers
figure-bias-lines = Raccordé et tracé
figure-bias-alt = Un carré de { $side } coupé d’un coin à l’autre, puis ses moitiés raccordées en quadrilatère penché, avec des lignes tous les { $width } le long du bord en biais.
figure-bias-caption = La bande vient d’un seul carré.
