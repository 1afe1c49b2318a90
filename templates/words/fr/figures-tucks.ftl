### Plis religieuse : les lignes de pliure sur le tissu à plat, et une coupe des plis cousus.

figure-tucks-lines = Lignes de pliure sur le tissu à plat
figure-tucks-sewn = Piqués, { $depth } de profondeur, repassés vers le bord
figure-tucks-edge = bord inférieur
figure-tucks-alt = { $tucks } plis religieuse de { $depth }, lignes de pliure à { $lines } au-dessus du bord inférieur ; piqués, la pliure la plus basse est à { $from-edge } au-dessus et { $space } se voient entre eux.
figure-tucks-caption = Les plis religieuse en coupe, endroit dessus.{ figure-hatched }
