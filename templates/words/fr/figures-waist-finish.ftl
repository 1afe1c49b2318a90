### Entoilage, et tailles finies par ruban ou élastique.

figure-interfacing-name = entoilage, colle dessous
figure-ribbon-name = ruban
figure-elastic-name = élastique
figure-interfacing-head = Envers de la pièce
figure-interfacing-alt = { PIECE($piece, at: "start") }, envers dessus, avec un entoilage de { $long } sur { $deep } ; les marges sont nues.
figure-interfacing-caption = L’entoilage s’arrête avant les coutures.
figure-petersham-alt = Coupe de la taille, intérieur dessus : le ruban est à l’intérieur, piqué à { $close } de son bord sur une marge de { $lap }.
figure-petersham-caption = Le ruban tourné vers l’intérieur.{ figure-hatched }
figure-sewn-elastic-alt = Coupe du bord, intérieur dessus : élastique de { $turn-width }, replié avec le tissu vers l’intérieur, un zigzag à ses deux bords.
figure-sewn-elastic-caption = L’élastique replié vers l’intérieur.{ figure-hatched }
