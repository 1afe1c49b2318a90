### Froncer un rang sous son bord et le coudre sur une ligne en travers d’une pièce, une tête au-dessus des piqûres.

figure-headed-row = Cousu, endroit dessus
figure-headed-frill = tête
figure-headed-row-alt = { PIECE($on, at: "start") }, endroit dessus, avec { PIECE($row) } : deux piqûres, celle du haut sur une ligne à { line-place }, et une tête de { $heading } au-dessus.
figure-headed-row-caption = Le rang avec sa tête.
