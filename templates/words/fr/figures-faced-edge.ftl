### Bords parementés ou doublés par retournement, en coupe : deux tissus, leurs marges rentrées entre eux.

# Noms de deux pièces, sans articles.
figure-faced-pieces = { $inner } à l’intérieur, { $outer } à l’extérieur
figure-faced-alt = Coupe du bord parementé, intérieur dessus : { PIECE($facing) } est à l’intérieur, les deux marges de { $seam-width } sont dessous et piquées à elle à { $understitch } du bord.
figure-faced-caption = Le bord parementé, en coupe.{ figure-hatched }
figure-bagged-alt = Coupe d’un bord doublé ({ $outer }), intérieur dessus : { PIECE($lining) } est à l’intérieur, les deux marges de { $seam-width } entre les deux.
figure-bagged-caption = Le bord retourné, en coupe.{ figure-hatched }
